/** A sweep is nothing but its single points, whatever was worked out before; and what is drawn into it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import { evaluate } from '#analysis/sweep/figures/index';
import type { Figure, SweepWish } from '#analysis/sweep/results';
import { sweepInSteps } from '#analysis/sweep/sweep';
import { keepVariant } from '#plan/edits/variants';
import { experimentOn, rangeOf, variablesOf, withValue } from '#plan/variables/index';
import type { Site } from '#plan/schema';
import { evenly, smallSite, withMat } from './support';

const place = { offset_m: 0.2, along_m: 0.3 };
const FIGURES: readonly Figure[] = [
  { kind: 'q', subject: 'C1' },
  { kind: 'response', subject: 'C1', vehicle: 'car', path: 'offset' },
  { kind: 'response', subject: 'C1', vehicle: 'car', path: 'standing' }
];
const wishFor = (wish: Partial<SweepWish>): SweepWish => ({
  x: { variable: { kind: 'width', subject: 'L2' }, values: [1.6, 1.8, 2] },
  ...{ family: null, designs: null, figures: FIGURES, place },
  ...wish
});
const sweep = (site: Site, wish: Partial<SweepWish>, means = createMeans()) =>
  finish(sweepInSteps(site, wishFor(wish), means))!;

describe('every point is the single evaluation', () => {
  const site = withMat(smallSite());
  // heights want a vehicle of their own each, which takes its time: they have a test of their own
  const variables = variablesOf(site).filter(
    ({ kind, subject }) => kind !== 'vehicleHeight' && subject !== 'L2' && subject !== 'C2'
  );
  const shared = createMeans();

  it('of any variable, with what was worked out for others still in mind', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...variables),
        fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 2, maxLength: 3 }),
        (variable, places) => {
          const experiment = experimentOn(site, place);
          const { least, most, isWhole } = rangeOf(experiment, variable)!;
          const values = places.map((at) => {
            const value = least + ((most - least) * at) / 20;
            return isWhole ? Math.round(value) : value;
          });
          const picture = sweep(site, { x: { variable, values } }, shared);
          const fresh = createMeans();
          picture.figures.forEach(({ figure, values: [row] }) =>
            values.forEach((value, k) => {
              const there = withValue(experiment, variable, value);
              expect(row![k]).toBe(there && evaluate(there, figure, fresh));
            })
          );
        }
      ),
      { numRuns: 12, seed: 7 }
    );
  }, 60_000);

  it('of a vehicle at another height', () => {
    const small = smallSite(1);
    const variable = { kind: 'vehicleHeight', subject: 'car' } as const;
    const picture = sweep(small, { x: { variable, values: [0.45, 0.5] } });
    const higher = withValue(experimentOn(small, place), variable, 0.5)!;
    expect(picture.figures[1]!.values[0]![1]).toBe(evaluate(higher, FIGURES[1]!, createMeans()));
    expect(picture.figures[1]!.values[0]![0]).toBe(picture.figures[1]!.present);
    expect(picture.figures[1]!.values[0]![1]).toBeLessThan(picture.figures[1]!.present!);
  }, 30_000);
});

describe('rows', () => {
  const site = smallSite();

  it('of a family are sweeps of their own', () => {
    const family = { variable: { kind: 'turns', subject: 'L1' }, values: [2, 4] } as const;
    const x = { variable: { kind: 'leadInLength', subject: 'C1' }, values: [0, 40] } as const;
    const picture = sweep(site, { x, family });
    picture.figures.forEach(({ values }, at) =>
      family.values.forEach((turns, row) => {
        const there = withValue(experimentOn(site), family.variable, turns)!.site;
        expect(values[row]).toEqual(sweep(there, { x }).figures[at]!.values[0]);
      })
    );
    expect(picture.present).toEqual({ x: 31, family: 3 });
  });

  it('of designs are the designs, assessed whole', () => {
    const kept = keepVariant(site, 'As it was');
    const id = kept.variant!;
    const longer = withValue(experimentOn(kept), { kind: 'length', subject: 'L1' }, 2.6)!.site;
    const x = { variable: { kind: 'turns', subject: 'L1' }, values: [2, 3] } as const;
    const picture = sweep(longer, { x, designs: [null, id, 'not there'] });
    picture.figures.forEach(({ values, present }, at) => {
      expect(values[0]).toEqual(sweep({ ...longer }, { x }).figures[at]!.values[0]);
      expect(values[1]).toEqual(sweep(site, { x }).figures[at]!.values[0]);
      expect(values[2]).toEqual([null, null]);
      expect(present).toBe(values[0]![1]);
      expect(values[0]).not.toEqual(values[1]);
    });
    // a design that is not there casts no doubt upon the others
    expect(picture.doubtful).toEqual([]);
  });

  it('of a design without the number that is varied are empty, and cast no doubt upon the others', () => {
    const kept = keepVariant(site, 'With two');
    const one = {
      ...kept,
      loops: kept.loops.slice(0, 1),
      circuits: kept.circuits.slice(0, 1)
    };
    const x = { variable: { kind: 'turns', subject: 'L2' }, values: [2, 3] } as const;
    const picture = sweep(one, { x, designs: [null, kept.variant!], figures: [FIGURES[0]!] });
    expect(picture.present.x).toBeNull();
    expect(picture.figures[0]!.values[0]).toEqual([null, null]);
    expect(picture.figures[0]!.values[1]).not.toContain(null);
    expect(picture.doubtful).toEqual([]);
  });
});

describe('what is drawn into it', () => {
  const site = smallSite();
  const limitsOf = (figure: Figure, x?: SweepWish['x']) =>
    sweep(site, { figures: [figure], ...(x ? { x } : {}) }).figures[0]!.limits;

  it('the limits are those of the drawing', () => {
    expect(limitsOf({ kind: 'inductance', subject: 'C1' })).toEqual([
      { kind: 'least', value: 2e-5, wants: 'above' },
      { kind: 'most', value: 2e-3, wants: 'below' }
    ]);
    expect(limitsOf(FIGURES[1]!)).toEqual([
      { kind: 'trip', value: 0.001, wants: 'above' },
      { kind: 'release', value: 0.0006, wants: 'above' }
    ]);
    expect(limitsOf({ kind: 'neighbour', subject: 'C1' })).toEqual([
      { kind: 'trip', value: 0.001, wants: 'below' }
    ]);
    expect(limitsOf({ kind: 'q', subject: 'C1' })).toEqual([{ kind: 'least', value: 5, wants: 'above' }]);
    expect(limitsOf({ kind: 'wire', subject: null })).toEqual([]);
  });

  it('a threshold that is varied is no line', () => {
    const x = { variable: { kind: 'tripThreshold', subject: 'C1' }, values: [0.001, 0.01] } as const;
    expect(limitsOf(FIGURES[1]!, x)).toEqual([]);
    expect(limitsOf({ kind: 'margin', subject: 'C1', vehicle: 'car' }, x)).toHaveLength(1);
  });

  it('nor is one that the family varies, nor the thresholds of two channels that differ', () => {
    const family = { variable: { kind: 'tripThreshold', subject: 'C1' }, values: [0.001, 0.01] } as const;
    expect(sweep(site, { figures: [FIGURES[1]!], family }).figures[0]!.limits).toEqual([]);
    const ripple: Figure = { kind: 'ripple', subject: 'C1', other: 'C2' };
    expect(limitsOf(ripple)).toEqual([
      { kind: 'caution', value: 0.00025, wants: 'below' },
      { kind: 'problem', value: 0.001, wants: 'below' }
    ]);
    const unlike = withValue(experimentOn(site), family.variable, 0.004)!.site;
    expect(sweep(unlike, { figures: [ripple] }).figures[0]!.limits).toEqual([]);
  });

  it('the present is marked where it is, on the grid or off it', () => {
    const picture = sweep(site, { x: { variable: { kind: 'width', subject: 'L1' }, values: [1, 3] } });
    expect(picture.present).toEqual({ x: 1.8, family: null });
    expect(picture.figures[0]!.present).toBe(evaluate(experimentOn(site, place), FIGURES[0]!, createMeans()));
  });

  it('says where nothing can be built, and leaves it out', () => {
    // three wires of 3.8 mm do not fit under an inch of cover, nor under the road, in 5 mm
    const picture = sweep(site, {
      x: { variable: { kind: 'slotDepth', subject: 'L1' }, values: [0.001, 0.008, 0.02, 0.05] }
    });
    // in 20 mm they fit: too little over them is a caution, and the figures hold
    expect(picture.doubtful).toEqual([0, 1].map((at) => ({ row: 0, at })));
    expect(picture.figures[0]!.values[0]![0]).toBeNull();
    expect(picture.figures[0]!.values[0]![3]).not.toBeNull();
    // of another circuit's loop nothing is said about these figures
    const other = sweep(site, { x: { variable: { kind: 'slotDepth', subject: 'L2' }, values: [0.008] } });
    expect(other.doubtful).toEqual([]);
  });

  it('doubts a vehicle that is too low for its mesh', () => {
    const variable = { kind: 'vehicleHeight', subject: 'car' } as const;
    const x = { variable, values: [0.02, 0.5] };
    expect(sweep(smallSite(1), { x, figures: [FIGURES[2]!] }).doubtful).toEqual([{ row: 0, at: 0 }]);
    expect(sweep(smallSite(1), { x, figures: [FIGURES[0]!] }).doubtful).toEqual([]);
  }, 30_000);

  it('doubts single points: of a family only those of the member that cannot be built', () => {
    const family = { variable: { kind: 'turns', subject: 'L1' }, values: [1, 3, 9] } as const;
    const x = { variable: { kind: 'slotDepth', subject: 'L1' }, values: [0.008, 0.02, 0.05] } as const;
    // of 3.8 mm each: one wire fits everywhere, three not in 8 mm, nine not in 20 mm either
    expect(sweep(site, { x, family, figures: [FIGURES[0]!] }).doubtful).toEqual([
      { row: 1, at: 0 },
      { row: 2, at: 0 },
      { row: 2, at: 1 }
    ]);
  });

  describe('a vehicle too low for its mesh', () => {
    const small = smallSite();
    const doubtsOf = (id: string, figure: Figure, from = small) => {
      const variable = { kind: 'vehicleHeight', subject: id } as const;
      return sweep(from, { x: { variable, values: [0.02, 0.5] }, figures: [figure] }).doubtful;
    };
    const doubted = [{ row: 0, at: 0 }];

    it('casts doubt on the response to no vehicle by name, if it is the one that is meant', () => {
      const nameless: Figure = { kind: 'response', subject: 'C1', path: 'standing' };
      expect(doubtsOf('car', nameless)).toEqual(doubted);
      expect(doubtsOf('van', nameless)).toEqual([]);
      const undemanding = {
        ...small,
        circuits: small.circuits.map((circuit) => ({ ...circuit, detect: [] }))
      };
      expect(doubtsOf('car', nameless, undemanding)).toEqual([]);
    }, 60_000);

    it('casts doubt on what the lanes beside do, if it drives there', () => {
      const largest = (vehicle: string) => ({
        ...small,
        lanes: small.lanes.map((lane) => ({ ...lane, largestVehicle: vehicle }))
      });
      const beside: Figure = { kind: 'neighbour', subject: 'C1' };
      // a car drives in every lane, a van only where it is the largest
      expect(doubtsOf('car', beside, largest('van'))).toEqual(doubted);
      expect(doubtsOf('van', beside, largest('van'))).toEqual(doubted);
      expect(doubtsOf('van', beside, largest('car'))).toEqual([]);
      const alone = { ...small, lanes: small.lanes.slice(0, 1) };
      expect(doubtsOf('car', beside, alone)).toEqual([]);
    }, 120_000);

    it('casts doubt on what two channels do to one another, whom it pulls', () => {
      expect(doubtsOf('car', { kind: 'ripple', subject: 'C1', other: 'C2' })).toEqual(doubted);
      expect(doubtsOf('car', { kind: 'coupling', subject: 'L1', other: 'L2' })).toEqual([]);
    }, 60_000);
  });

  it('is null for what is not there, and shows how far it is', () => {
    const steps = (wish: Partial<SweepWish>) => sweepInSteps(site, wishFor(wish), createMeans());
    expect(finish(steps({ x: { variable: { kind: 'turns', subject: 'L9' }, values: [1] } }))).toBeNull();
    expect(finish(steps({ figures: [{ kind: 'q', subject: 'C9' }] }))).toBeNull();
    const shares = [...steps({})].filter((share) => typeof share === 'number');
    expect(shares.at(-1)).toBeCloseTo(1, 9);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  });
});

it('evenly spaced values are what they say', () => {
  expect(evenly(0, 1, 3)).toEqual([0, 0.5, 1]);
});
