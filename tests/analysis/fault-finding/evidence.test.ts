/** What is said for and against a cause, where the nats can be reckoned by hand: half the square of the deviations. */
import { describe, expect, it } from 'vitest';
import { evidenceOf } from '#analysis/fault-finding/evidence';
import type { Predicted } from '#analysis/fault-finding/forward/contract';
import type { Placed } from '#analysis/fault-finding/inference/observe';
import { placesBeforehand, type Entry } from '#analysis/fault-finding/ranked';
import type { Evidence } from '#analysis/fault-finding/results';
import { entriesOf, placedAt } from './support/entries';
import { figure } from './support/prepared';

const DEVIATION = 0.1;
const ohms = (value: number | null): Placed =>
  placedAt(0, figure('cabinet', 'resistanceDc_ohm'), value, DEVIATION);
const henries = (value: number): Placed =>
  placedAt(1, figure('cabinet', 'inductance_H'), value * 1e-5, DEVIATION * 1e-5);

interface Given {
  /** Of the cause that is looked at, at each place of its unknowns. */
  readonly own: readonly (readonly Predicted[])[];
  readonly none: readonly Predicted[];
  readonly best: readonly Predicted[];
}

/** Of a cause that is not the likeliest one. */
const evidence = ({ own, none, best }: Given, ...placed: readonly Placed[]): readonly Evidence[] => {
  const entries = entriesOf(
    { faults: [{ kind: 'open' }], probability: 0.6, places: [{ predicted: best }] },
    { faults: [], probability: 0.3, places: [{ predicted: none }] },
    { faults: [{ kind: 'steel near' }], probability: 0.1, places: own.map((predicted) => ({ predicted })) }
  );
  const [likeliest, nothingWrong, entry] = entries as readonly [Entry, Entry, Entry];
  const others = placesBeforehand([likeliest, entry]);
  return evidenceOf(entry, { nothingWrong, likeliest, others, shares: new Map() }, placed);
};

describe('what a figure says of a cause', () => {
  it('is how much likelier it is than if nothing were wrong', () => {
    const [only, ...rest] = evidence({ own: [[10]], none: [9.8], best: [10] }, ohms(10));
    expect(rest).toEqual([]);
    expect(only!.weight).toBeCloseTo(2 ** 2 / 2, 2);
    expect(only!.told.key).toMatch(/^for\./);
    expect(only!.figure).toBe(0);
  });

  it('speaks against it where nothing wrong makes the figure likelier', () => {
    // still explained: two deviations are nothing strange
    const [only] = evidence({ own: [[10.2]], none: [10], best: [30] }, ohms(10));
    expect(only!.weight).toBeCloseTo(-(2 ** 2) / 2, 2);
    expect(only!.told.key).toMatch(/^against\./);
  });

  it('is not compared with the likeliest cause while the cause explains it, and is where it does not', () => {
    // as far off as if nothing were wrong: nothing is said of two deviations, of three the likeliest speaks against it
    expect(evidence({ own: [[10.2]], none: [9.8], best: [10] }, ohms(10))).toEqual([]);
    const [only] = evidence({ own: [[10.3]], none: [9.7], best: [10] }, ohms(10));
    expect(only!.weight).toBeCloseTo(-(3 ** 2) / 2, 1);
  });

  it('counts what is held against the better of the two', () => {
    const [only] = evidence({ own: [[10.3]], none: [10], best: [9.7] }, ohms(10));
    expect(only!.weight).toBeCloseTo(-(3 ** 2) / 2, 1);
  });

  it('is the mean over what is left of the unknowns', () => {
    // half of it fits, the other half is far away
    const [only] = evidence({ own: [[10], [20]], none: [9.8], best: [10] }, ohms(10));
    expect(only!.weight).toBeCloseTo(Math.log(0.5) + 2 ** 2 / 2, 2);
  });

  it('is silent where it hardly decides anything, and comes in the order of its weight', () => {
    expect(evidence({ own: [[10]], none: [9.93], best: [10] }, ohms(10))).toEqual([]);
    expect(evidence({ own: [[10]], none: [9.9], best: [10] }, ohms(10))).toHaveLength(1);
    const heard = evidence(
      { own: [[10, 10.3e-5]], none: [9.8, 10e-5], best: [10, 10e-5] },
      ohms(10),
      henries(10)
    );
    expect(heard.map(({ weight }) => Math.round(2 * weight))).toEqual([-9, 4]);
    expect(heard.map((each) => each.figure)).toEqual([1, 0]);
  });

  it('is nothing that was read on the day of commissioning', () => {
    const before: Placed = { figure: 0, observed: { ...ohms(10).observed, isBaseline: true } };
    expect(evidence({ own: [[10]], none: [9], best: [10] }, before)).toEqual([]);
  });

  it('speaks against sound insulation where it is bad, and against a figure where the meter was over its range', () => {
    const leak = placedAt(0, figure('cabinet', 'insulation_ohm'), 2e4, 2e3);
    const [bad] = evidence({ own: [['sound']], none: ['sound'], best: [2e4] }, leak);
    expect(bad!.weight).toBeLessThan(-3);
    expect(bad!.told.key).toBe('against.sound');
    const [over] = evidence({ own: [[1]], none: [1], best: ['over range'] }, ohms(null));
    expect(over!.weight).toBeLessThan(-3);
    expect(over!.told.key).toBe('against.over');
    // and says nothing against either where all is as it should be
    const fine = placedAt(0, figure('cabinet', 'insulation_ohm'), 5e8, 5e7);
    expect(evidence({ own: [['sound']], none: ['sound'], best: [2e4] }, fine)).toEqual([]);
    const tester = placedAt(0, figure('cabinet', 'insulation_ohm'), null, 5e7);
    expect(evidence({ own: [['sound']], none: ['sound'], best: [2e4] }, tester)).toEqual([]);
  });
});

describe('what a figure says of "nothing wrong"', () => {
  const ofNothing = (probability: number): readonly Evidence[] => {
    const entries = entriesOf(
      { faults: [], probability, places: [{ predicted: [10.1] }] },
      { faults: [{ kind: 'open' }], probability: 0.05, places: [{ predicted: [10] }] },
      { faults: [{ kind: 'steel near' }], probability: 0.15, places: [{ predicted: [12] }] }
    );
    const nothingWrong = entries.find(({ faults }) => faults[0]!.kind === 'nothing wrong')!;
    const others = entries.filter((each) => each !== nothingWrong);
    const likeliest = entries.find(({ faults }) => faults[0]!.kind === 'open')!;
    return evidenceOf(
      nothingWrong,
      { nothingWrong, likeliest, others: placesBeforehand(others), shares: new Map() },
      [ohms(10)]
    );
  };

  it('is held against all others together where it is the likeliest', () => {
    // a quarter of the others fits, the rest is far away
    const [only] = ofNothing(0.8);
    expect(only!.weight).toBeCloseTo(-0.5 - Math.log(0.25), 2);
    expect(only!.told.key).toBe('for.nothing-wrong');
  });

  it('is held against the likeliest cause where that is another one', () => {
    const [only] = ofNothing(0.01);
    expect(only!.weight).toBeCloseTo(-0.5, 2);
    expect(only!.told.key).toBe('against.nothing-wrong');
  });
});
