/** Distances along a lead-in of so many ohms and henries a metre: all of it is division. */
import { describe, expect, it } from 'vitest';
import { distancesOf } from '#analysis/fault-finding/distance';
import type { Prepared } from '#analysis/fault-finding/forward/contract';
import type { Placed } from '#analysis/fault-finding/inference/observe';
import type { Scene } from '#analysis/fault-finding/inference/scene';
import type { FaultDistance } from '#analysis/fault-finding/results';
import { entriesOf, placedAt } from './support/entries';
import { figure } from './support/prepared';
import { site } from './support/readings';

const TOTAL = 100;
const OHMS = 0.02;
const HENRIES = 7e-7;
/** Common practice, as the room itself says: metal on metal. */
const CONTACT = 0.3;
/** Of the site: how far its lead-ins may be off, metres. */
const sure = (leadInLength_m: number) => ({
  ...site,
  tolerances: { ...site.tolerances, leadInLength_m }
});

/** Past the short nothing is read; what a spread is asked for does not stray. */
const prepared: Pick<Prepared, 'site' | 'leadInLength_m' | 'predict' | 'spread'> = {
  site: sure(0),
  leadInLength_m: TOTAL,
  predict: ([short], asked) =>
    asked.map(({ quantity }) => {
      const { distance_m = 0, resistance_ohm = 0 } = short!.values;
      return quantity === 'inductance_H' ? HENRIES * distance_m : OHMS * distance_m + resistance_ohm;
    }),
  spread: (_, asked) => ({ inputs: [], derivatives: asked.map(() => []), model: asked.map(() => 0) })
};
const scene = { prepared, shares: new Map() } as unknown as Scene;

const likely = (kind: 'short in lead-in' | 'short at splice' | 'open', probability = 0.9) =>
  entriesOf({ faults: [{ kind }], probability }, { faults: [], probability: 1 - probability });

const ohms = (value: number, deviation = 0.01): Placed =>
  placedAt(0, figure('cabinet', 'resistanceDc_ohm'), value, deviation);
const henries = (value: number, deviation = HENRIES): Placed =>
  placedAt(1, figure('cabinet', 'inductance_H'), value, deviation);

const distances = (...placed: readonly Placed[]): readonly FaultDistance[] =>
  distancesOf(scene, likely('short in lead-in'), placed);

describe('a distance', () => {
  it('by inductance is what was read over what a metre has, give or take 1.96 deviations', () => {
    const [only, ...rest] = distances(henries(40 * HENRIES));
    expect(rest).toEqual([]);
    expect(only!.distance_m).toBeCloseTo(40, 6);
    expect(only!.low).toBeCloseTo(40 - 1.96, 6);
    expect(only!.high).toBeCloseTo(40 + 1.96, 6);
    expect(only!.total_m).toBe(TOTAL);
    expect(only!.told.key).toBe('distance.inductance');
  });

  it('is that of the last figure that can be one: what was mistyped is read again after it', () => {
    const [mistyped, again] = [ohms(1_000), ohms(1)];
    expect(distances(mistyped, again).map(({ distance_m }) => distance_m)).toEqual([
      expect.closeTo(50, 6) as number
    ]);
    expect(distances(again, mistyped)[0]!.distance_m).toBeCloseTo(50, 6);
    expect(distances(ohms(0.4), again)[0]!.distance_m).toBeCloseTo(50, 6);
  });

  it('by resistance may be nearer by what a contact may have, and is not farther for it', () => {
    const [only] = distances(ohms(1));
    expect(only!.distance_m).toBeCloseTo(1 / OHMS, 6);
    expect(only!.low).toBeCloseTo((1 - 1.96 * 0.01 - CONTACT) / OHMS, 6);
    expect(only!.high).toBeCloseTo((1 + 1.96 * 0.01) / OHMS, 6);
  });

  it('is nought at the cabinet and no more than the whole lead-in', () => {
    const [nearest] = distances(ohms(0));
    expect(nearest!.distance_m).toBe(0);
    expect(nearest!.low).toBe(0);
    expect(nearest!.high).toBeCloseTo((1.96 * 0.01) / OHMS, 6);
    // a little more than the whole lead-in has may be the meter's error; much more is not
    const [farthest] = distances(ohms(TOTAL * OHMS + 1.9 * 0.01));
    expect(farthest!.distance_m).toBeCloseTo(TOTAL, 6);
    expect(farthest!.high).toBeCloseTo(TOTAL, 6);
    expect(distances(ohms(TOTAL * OHMS + 2 * 0.01))).toEqual([]);
    expect(distances(ohms(TOTAL * OHMS - 0.01))).toHaveLength(1);
  });

  it('is told from a twentieth of probability on, of all shorts together, wherever they lie', () => {
    expect(distancesOf(scene, likely('short at splice'), [ohms(1)])).toHaveLength(1);
    expect(distancesOf(scene, likely('open'), [ohms(1)])).toEqual([]);
    expect(distancesOf(scene, likely('short in lead-in', 0.049), [ohms(1)])).toEqual([]);
    expect(distancesOf(scene, likely('short in lead-in', 0.051), [ohms(1)])).toHaveLength(1);
    const both = entriesOf(
      { faults: [{ kind: 'short at splice' }], probability: 0.03 },
      { faults: [{ kind: 'short in lead-in' }], probability: 0.03 },
      { faults: [], probability: 0.94 }
    );
    expect(distancesOf(scene, both, [ohms(1)])).toHaveLength(1);
  });

  it('is not told from what was read elsewhere, on another day, or over the range', () => {
    const elsewhere = placedAt(0, figure('pull-box', 'resistanceDc_ohm'), 1, 0.01);
    const { figure: at, observed } = ohms(1);
    expect(distances(elsewhere)).toEqual([]);
    expect(distances({ figure: at, observed: { ...observed, isBaseline: true } })).toEqual([]);
    expect(distances(placedAt(0, figure('cabinet', 'resistanceDc_ohm'), null, 0.01))).toEqual([]);
  });
});

describe('two distances', () => {
  const keys = (...placed: readonly Placed[]) => distances(...placed).map(({ told }) => told.key);

  it('agree where both leave a place in common, which is said of the one that knows it better', () => {
    expect(keys(ohms(1), henries(45 * HENRIES))).toEqual(['distance.resistance', 'distance.agree']);
    expect(keys(ohms(1), henries(45 * HENRIES, 20 * HENRIES))).toEqual([
      'distance.agree',
      'distance.inductance'
    ]);
  });

  it('disagree where they leave none, in either order', () => {
    // by resistance from 34 to 51 m
    expect(keys(ohms(1), henries(31 * HENRIES))).toEqual(['distance.disagree', 'distance.disagree']);
    expect(keys(ohms(1), henries(54 * HENRIES))).toEqual(['distance.disagree', 'distance.disagree']);
    expect(keys(ohms(1), henries(33 * HENRIES))).toContain('distance.agree');
    expect(keys(ohms(1), henries(52 * HENRIES))).toContain('distance.agree');
  });

  it('may lie apart by what the length of the lead-in is not known to', () => {
    const loose = { ...scene, prepared: { ...prepared, site: sure(2) } } as unknown as Scene;
    const said = (metres: number) =>
      distancesOf(loose, likely('short in lead-in'), [ohms(1), henries(metres * HENRIES)]).map(
        ({ told }) => told.key
      );
    for (const metres of [31, 54]) expect(said(metres)).toContain('distance.agree');
    for (const metres of [29, 56]) expect(said(metres)).toContain('distance.disagree');
  });
});
