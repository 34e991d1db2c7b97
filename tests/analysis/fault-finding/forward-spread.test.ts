/** What tolerances do to figures, against circuits that are drawn off by them. */
import { describe, expect, it } from 'vitest';
import type { AskedFigure, ConcreteFault } from '#analysis/fault-finding/forward/contract';
import type { ToleranceInput } from '#analysis/results';
import { copperResistivity } from '#physics/wire/round-wire';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';
import { fault, figure, number, preparedOf } from './support/prepared';

const drawn = (over: { readonly side?: number; readonly length?: number; readonly wire?: number } = {}) => {
  const { side = 1.8, length = 60, wire = 0.0038 } = over;
  return siteOf({
    loops: [loop('L1', square(0, 0, side)), loop('L2', square(0, 4, side), { turns: 4 })].map((each) => ({
      ...each,
      wire: 'own'
    })),
    wires: [{ id: 'own', name: '', conductorDiameter: 0.0016, insulatedDiameter: wire, insulationPermittivity: 2.3 }],
    circuits: [
      circuit('C1', ['L1', 'L2'], {
        leadIn: { cable: 'pair-14', length },
        channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 2 })
      })
    ],
    units: [unit('U1')],
    tolerances: { dimensions_m: 0.02, leadInLength_m: 2, wirePitch_m: 0.0004 }
  });
}; // prettier-ignore
const prepared = preparedOf(drawn());
const shorted = [fault('shorted turns', 'L2', { shortedTurns: 1, resistance_ohm: 0.05 })];
const l = figure('cabinet', 'inductance_H');
const alone = figure('loop', 'inductance_H', { loop: 'L2' });
/** Standard deviations in a plus-or-minus that holds nineteen times in twenty. */
const DEVIATIONS = 1.96;

const told = (input: ToleranceInput, faults: readonly ConcreteFault[], asked: AskedFigure): number => {
  const { inputs, derivatives } = prepared.spread(faults, [asked]);
  return derivatives[0]![inputs.indexOf(input)]!;
};

const off = (site: ReturnType<typeof drawn>, faults: readonly ConcreteFault[], asked: AskedFigure): number =>
  Math.log(number(preparedOf(site), faults, asked) / number(prepared, faults, asked)) / DEVIATIONS;

describe('the spread of figures', () => {
  it.each([
    ['dimensions', drawn({ side: 1.82 })],
    ['leadInLength', drawn({ length: 62 })],
    ['wirePitch', drawn({ wire: 0.0042 })]
  ] as const)('by %s is that of a circuit drawn off by the tolerance, with and without a fault', (input, site) => {
    // of turns in a loop of other dimensions the drawn one's stand in proportion
    for (const [faults, share] of [
      [[], 0.02],
      [shorted, 0.15]
    ] as const)
      for (const asked of [l, alone, figure('cabinet', 'q'), figure('unit', 'frequency_Hz')]) {
        const wanted = off(site, faults, asked);
        expect(Math.abs(told(input, faults, asked) - wanted)).toBeLessThan(share * Math.abs(wanted) + 1e-5);
      }
  });

  it('of a resistance by temperature is copper’s, and small where the temperature was read', () => {
    const dc = figure('cabinet', 'resistanceDc_ohm');
    const per = (kelvins: number, at: number): number =>
      Math.log(copperResistivity(at + kelvins) / copperResistivity(at)) / DEVIATIONS;
    expect(told('temperature', [], dc)).toBeCloseTo(per(15, 20), 4);
    expect(told('temperature', [], { ...dc, temperature_C: 35 })).toBeCloseTo(per(3, 35), 4);
  });

  it('of insulation is none, and a short before the loops keeps their errors out', () => {
    expect(prepared.spread([], [figure('cabinet', 'insulation_ohm')]).derivatives[0]!.every((each) => each === 0)).toBe(true);
    const short = [fault('short in lead-in', null, { distance_m: 20, resistance_ohm: 1e-5 })];
    expect(Math.abs(told('dimensions', short, l))).toBeLessThan(1e-6);
    expect(Math.abs(told('dimensions', [], l))).toBeGreaterThan(1e-3);
  });
}); // prettier-ignore
