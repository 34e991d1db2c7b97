/** Where the resistance at the terminals comes from, and what weather does to it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { CircuitReadout, LossCause } from '#analysis/results';
import { relativeError } from '../../physics/support/reference';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const read = (loops: readonly Json[], over: Json, fields: Json = {}): CircuitReadout =>
  createAssessor().assess(
    siteOf({
      loops,
      circuits: [circuit('C1', ['L1'], over)],
      units: [unit('U1')],
      ...fields
    }),
    'prepared'
  ).circuits[0]!;
const share = ({ losses }: CircuitReadout, cause: LossCause): number =>
  losses.find((loss) => loss.cause === cause)!.resistance_ohm;
const sum = ({ losses }: CircuitReadout): number =>
  losses.reduce((total, { resistance_ohm }) => total + resistance_ohm, 0);
const MAT = {
  id: 's1',
  kind: 'mat',
  depth: 0.15,
  pitch: 0.2,
  barRadius: 0.005,
  outline: [[-2, -2], [2, -2], [2, 2], [-2, 2]] // prettier-ignore
};

describe('the shares of the resistance', () => {
  it('add up to it in any wiring, on any pavement, over steel, with any joint', () => {
    const series = [['L1', 'L2', 'L3']];
    const parallel = [['L1'], ['L2'], ['L3']];
    const both = [['L1', 'L2'], ['L3']];
    fc.assert(
      fc.property(
        fc.constantFrom(series, parallel, both),
        fc.constantFrom(0, 0.001, 0.05),
        fc.double({ min: 0, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.boolean(),
        fc.integer({ min: 20_000, max: 100_000 }),
        (strings, conductivity_S_m, addedResistance_ohm, length, hasSteel, frequency_Hz) => {
          const readout = read(
            [
              loop('L1', square(0, 0), { tail: { length: 5 }, addedResistance_ohm }),
              loop('L2', square(3, 0), { tail: { length: 8 }, turns: 4 }),
              loop('L3', square(0, 3), { wire: 'awg18' })
            ],
            {
              strings: strings.map((string) => string.map((id) => ({ loop: id }))),
              leadIn: { cable: 'pair-14', length, further: [{ cable: 'pair-18', length: 12 }] },
              channel: channel('U1', 1, { frequency_Hz })
            },
            { pavement: { conductivity_S_m }, steel: hasSteel ? [MAT] : [] }
          );
          expect(relativeError(sum(readout), readout.resistance_ohm)).toBeLessThan(1e-9);
          for (const { resistance_ohm } of readout.losses)
            expect(resistance_ohm).toBeGreaterThan(-1e-9 * readout.resistance_ohm);
          expect(share(readout, 'steel') > 1e-4).toBe(hasSteel);
          expect(share(readout, 'pavement') > 1e-9).toBe(conductivity_S_m > 0);
        }
      ),
      { numRuns: 20 }
    );
  });

  it('of one loop without a lead-in are its own: copper as an ohmmeter reads it, and what the user adds', () => {
    const readout = read([loop('L1', square(0, 0), { addedResistance_ohm: 0.4 })], {
      leadIn: { cable: 'pair-14', length: 0 }
    });
    // the loop's own capacitance raises the current in the loop a little over that at the terminals
    expect(
      relativeError(share(readout, 'copper') + share(readout, 'added'), readout.resistanceDc_ohm)
    ).toBeLessThan(0.008);
    expect(relativeError(share(readout, 'added'), 0.4)).toBeLessThan(0.008);
    expect(share(readout, 'lead-in')).toBe(0);
    expect(share(readout, 'tail')).toBe(0);
  });

  it('of a tail and a lead-in are those of two wires with skin effect (round-wire table, NBS Circular 74)', () => {
    const readout = read([loop('L1', square(0, 0), { tail: { length: 10 } })], {
      leadIn: { cable: 'pair-14', length: 30 },
      channel: channel('U1', 1, { frequency_Hz: 20_000 })
    });
    // 14 AWG at 20 kHz and 20 °C: Rac/Rdc = 1.1666, computed from the Bessel form [C]; the rest is the current that the
    // capacitance further on adds
    const perMetre = (2 * 1.1666 * 1.7241e-8) / (Math.PI * 0.000814 ** 2);
    expect(relativeError(share(readout, 'tail'), 10 * perMetre)).toBeLessThan(0.012);
    expect(relativeError(share(readout, 'lead-in'), 30 * perMetre)).toBeLessThan(0.012);
  });
});

describe('cold and hot, dry and wet', () => {
  const loops = [loop('L1', square(0, 0), { tail: { length: 5 } })];

  it('a hot day raises the direct-current resistance by 0.393 % of that at 20 °C for each kelvin', () => {
    const readout = read(loops, {}, { temperatureRange_C: [-20, 60] });
    expect(readout.cold.temperature_C).toBe(-20);
    const at20 = readout.resistanceDc_ohm;
    expect(readout.hot.resistanceDc_ohm / at20).toBeCloseTo(1 + 0.00393 * 40, 10);
    expect(readout.cold.resistanceDc_ohm / at20).toBeCloseTo(1 - 0.00393 * 40, 10);
    // at 50 kHz the skin takes part of it back: thicker when the copper resists more
    expect(readout.hot.resistance_ohm).toBeGreaterThan(readout.resistance_ohm);
    expect(readout.hot.resistance_ohm / readout.resistance_ohm).toBeLessThan(1 + 0.00393 * 40);
    expect(readout.hot.q).toBeLessThan(readout.q);
    expect(readout.cold.q).toBeGreaterThan(readout.q);
  });

  it('a wet pavement raises the apparent inductance, and nothing the magnetic one', () => {
    const readout = read(loops, {}, { pavement: { material: 'concrete', relativePermittivity: 8 } });
    expect(readout.wet.inductance_H).toBeGreaterThan(readout.inductance_H);
    expect(readout.dry.inductance_H).toBeLessThan(readout.inductance_H);
    expect(readout.magneticInductance_H).toBeLessThan(readout.dry.inductance_H);
  });

  it('without any capacitance the magnetic and the apparent inductance are one', () => {
    const cable = {
      id: 'k',
      resistancePerMetre_ohm: 0.02,
      inductancePerMetre_H: 7e-7,
      capacitancePerMetre_F: 0
    };
    const one = read(
      [loop('L1', square(0, 0), { turns: 1 })],
      { leadIn: { cable: 'k', length: 20 } },
      { cables: [cable] }
    );
    // one turn: only the little to the ground is left
    expect(relativeError(one.inductance_H, one.magneticInductance_H)).toBeLessThan(1e-3);
    expect(one.inductance_H).toBeGreaterThan(one.magneticInductance_H);
  });
});

describe('several cables in a row', () => {
  it('are their lengths one after the other: halves of one cable are the whole', () => {
    const loops = [loop('L1', square(0, 0))];
    const whole = read(loops, { leadIn: { cable: 'pair-14', length: 60 } });
    const halves = read(loops, {
      leadIn: { cable: 'pair-14', length: 30, further: [{ cable: 'pair-14', length: 30 }] }
    });
    expect(relativeError(halves.inductance_H, whole.inductance_H)).toBeLessThan(1e-9);
    expect(relativeError(halves.resistance_ohm, whole.resistance_ohm)).toBeLessThan(1e-9);
    expect(relativeError(halves.resistanceDc_ohm, whole.resistanceDc_ohm)).toBeLessThan(1e-12);
  });
});
