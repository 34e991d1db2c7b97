/** Whatever is wrong with a circuit, it stays a circuit: it loses power, and what it shows changes without leaps. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ConcreteFault, Hypothesis } from '#analysis/fault-finding/forward/contract';
import { createTurnStore } from '#analysis/fault-finding/network/turn-store';
import { coilMatrix, windingsOf } from '#analysis/fault-finding/network/coils';
import { designOf } from '#analysis/fault-finding/network/design';
import { stateWith } from '#analysis/fault-finding/network/faults';
import { createMaterials } from '#analysis/fault-finding/network/materials';
import { solveAlone } from '#analysis/electrical/alone';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';
import { between, SEED } from '../../physics/support/arbitraries';
import { fault, figure, number, preparedOf } from './support/prepared';

const site = siteOf({
  loops: [
    loop('L1', { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 2.5 }),
    loop('L2', square(0, 2.4), { turns: 5 }),
    loop('L3', { kind: 'circle', centre: [2.2, 0], diameter: 1.5 }, { turns: 4 }),
    loop('L4', square(2.4, 2.4))
  ],
  circuits: [
    circuit('C1', [], {
      strings: [
        [{ loop: 'L1' }, { loop: 'L2', reversed: true }],
        [{ loop: 'L3' }, { loop: 'L4' }]
      ],
      channel: channel('U1', 1, { frequency_Hz: null, frequencySetting: 1 })
    })
  ],
  units: [unit('U1')],
  pavement: { material: 'asphalt', relativePermittivity: 6, conductivity_S_m: 0.01 }
});
const prepared = preparedOf(site);

/** Any value within the unknowns of a hypothesis. */
const withValues = ({ kind, subject, variant, unknowns }: Hypothesis): fc.Arbitrary<ConcreteFault> =>
  fc
    .tuple(
      ...unknowns.map(({ values, scale }) =>
        scale === 'whole' ? fc.constantFrom(...values) : between(values[0]!, values.at(-1)!)
      )
    )
    .map((values) => ({
      ...{ kind, subject, variant },
      values: Object.fromEntries(values.map((value, k) => [unknowns[k]!.name, value]))
    }));

const faults = fc
  .array(fc.constantFrom(...prepared.hypotheses).chain(withValues), { minLength: 1, maxLength: 2 })
  .filter((all) => new Set(all.map(({ kind, subject }) => `${kind} ${subject}`)).size === all.length);

describe('a circuit with one fault or two', () => {
  it('loses power: every Q that it shows is positive, and so is every resistance', () => {
    fc.assert(
      fc.property(faults, between(1_000, 200_000), (wrong, meterFrequency_Hz) => {
        const asked = prepared.askable.map((each) => ({ ...each, meterFrequency_Hz }));
        prepared.predict(wrong, asked).forEach((value, k) => {
          // what a vehicle takes may come out as more behind a contact
          if (typeof value === 'number' && asked[k]!.quantity !== 'deltaLOverL')
            expect(value, JSON.stringify(asked[k])).toBeGreaterThan(0);
        });
      }),
      { seed: SEED, numRuns: 400 }
    );
  });

  it('says the same however often, and whatever, it is asked in between', () => {
    fc.assert(
      fc.property(faults, faults, (wrong, other) => {
        const first = prepared.predict(wrong, prepared.askable);
        prepared.predict(other, prepared.askable);
        expect(prepared.predict(wrong, prepared.askable)).toEqual(first);
        expect(prepared.predict(wrong, [...prepared.askable].reverse())).toEqual([...first].reverse());
      }),
      { seed: SEED, numRuns: 100 }
    );
  });

  it('has a matrix of coils that is symmetric, and whose losses no currents can undo', () => {
    const drawn = site.circuits[0]!;
    const design = designOf(site, drawn, solveAlone(site, drawn)!, {
      materials: createMaterials(),
      turns: createTurnStore()
    });
    fc.assert(
      fc.property(
        faults,
        between(1_000, 200_000),
        fc.array(between(-1, 1), { minLength: 4, maxLength: 4 }),
        (wrong, frequency, currents) => {
          const state = stateWith(design, wrong);
          const { z, stride } = coilMatrix(
            design,
            state,
            windingsOf(design, state),
            { frequency, temperature: 20 },
            []
          );
          let power = 0;
          for (let i = 0; i < 4; i++)
            for (let j = 0; j < 4; j++) {
              const [there, back] = [2 * (i * stride + j), 2 * (j * stride + i)];
              const size = Math.hypot(z[2 * (i * stride + i)]!, z[2 * (i * stride + i) + 1]!);
              expect(Math.abs(z[there]! - z[back]!)).toBeLessThan(1e-9 * size);
              expect(Math.abs(z[there + 1]! - z[back + 1]!)).toBeLessThan(1e-9 * size);
              power += z[there]! * currents[i]! * currents[j]!;
            }
          expect(power).toBeGreaterThanOrEqual(0);
        }
      ),
      { seed: SEED, numRuns: 300 }
    );
  });
});

describe('between what nobody knows', () => {
  it('a contact across turns goes from a closed ring to the sound winding', () => {
    const asked = figure('loop', 'inductance_H', { loop: 'L2' });
    const at = (resistance_ohm: number): number =>
      number(prepared, [fault('shorted turns', 'L2', { shortedTurns: 2, resistance_ohm })], asked);
    const contacts = [1e-6, 0.1, 1, 10, 100, 1e6].map(at);
    contacts.forEach((value, k) => expect(value).toBeGreaterThan(contacts[k - 1] ?? 0));
    expect(contacts.at(-1)! / number(prepared, [], asked)).toBeCloseTo(1, 4);
    // copper of its own keeps the ring from being perfect, but little at this frequency
    expect(contacts[0]!).toBeLessThan(0.45 * contacts.at(-1)!);
  });

  it('fewer shorted turns leave more, and those at an end of the stack leave more than those in its middle', () => {
    const asked = figure('loop', 'inductance_H', { loop: 'L2' });
    const at = (shortedTurns: number, variant?: number): number =>
      number(
        prepared,
        [{ ...fault('shorted turns', 'L2', { shortedTurns, resistance_ohm: 0.01 }), variant }],
        asked
      );
    const counts = [1, 2, 3, 4].map((count) => at(count));
    counts.forEach((value, k) => expect(value).toBeLessThan(counts[k - 1] ?? Infinity));
    for (const count of [1, 2, 3]) expect(at(count, 0)).toBeGreaterThan(at(count));
  });

  it('turns can be shorted in a loop that has fewer than drawn, whichever of the two is named first', () => {
    const asked = figure('loop', 'inductance_H', { loop: 'L2' });
    const wrong = [
      fault('shorted turns', 'L2', { shortedTurns: 4, resistance_ohm: 0.01 }),
      fault('wrong turns', 'L2', { turns: 2 })
    ];
    const value = number(prepared, wrong, asked);
    expect(value).toBeGreaterThan(0);
    expect(number(prepared, [...wrong].reverse(), asked)).toBe(value);
    expect(value).toBeLessThan(number(prepared, [wrong[1]!], asked));
  });

  it('every grid of unknowns ascends, and its weights add up to one', () => {
    for (const { unknowns } of prepared.hypotheses)
      for (const { values, weights } of unknowns) {
        values.forEach((value, k) => expect(value).toBeGreaterThan(values[k - 1] ?? 0));
        expect(weights).toHaveLength(values.length);
        expect(weights.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 12);
      }
  });
});
