/** Numbers of a drawing that can be varied: read, written, bounded. */
import { describe, expect, it } from 'vitest';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { calibrateHeight } from '#plan/edits/vehicle-height';
import { followRoutes } from '#plan/lead-out';
import { site as siteSchema, type HeightCalibration, type Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { experimentOn, rangeOf, valueOf, variablesOf, withValue } from '#plan/variables/index';
import { VARIABLE_KINDS, type Variable } from '#plan/variables/variable';
import { bigSite } from '../../support/big-site';

const site: Site = {
  ...bigSite(6),
  steel: [
    { id: 's1', kind: 'mat', depth: 0.15, pitch: 0.2, barRadius: 0.005, outline: [[-1, -1], [1, -1], [1, 1]] }, // prettier-ignore
    { id: 's2', kind: 'plate', depth: 0.3, outline: [[-1, 4], [1, 4], [1, 6]] } // prettier-ignore
  ]
};
const experiment = experimentOn(site);
const variables = variablesOf(site);
const called = ({ kind, subject, other }: Variable): string => [kind, subject, other].join(' ');

/** A value in the range that is not the present one. */
const another = (variable: Variable): number => {
  const { least, most, isWhole } = rangeOf(experiment, variable)!;
  const present = valueOf(experiment, variable)!;
  const candidates = [0.37, 0.61, 0.2].map((share) => least + share * (most - least));
  const values = isWhole ? [...candidates.map(Math.round), least, most] : candidates;
  return values.find((value) => value !== present)!;
};

describe('every variable of a drawing', () => {
  it('is of every kind', () => {
    expect(new Set(variables.map(({ kind }) => kind))).toEqual(new Set(VARIABLE_KINDS));
  });

  it.each(variables.map((variable) => [called(variable), variable] as const))('%s', (_, variable) => {
    const present = valueOf(experiment, variable)!;
    const range = rangeOf(experiment, variable)!;
    expect(range.least).toBeLessThanOrEqual(present);
    expect(range.most).toBeGreaterThanOrEqual(present);
    expect(range.step).toBeGreaterThan(0);
    if (range.choices) expect(range.choices).toHaveLength(range.most + 1);
    // a document may hold all of the range
    expect(withValue(experiment, variable, range.least)).not.toBeNull();
    expect(withValue(experiment, variable, range.most)).not.toBeNull();
    expect(withValue(experiment, variable, present)).toBe(experiment);
    expect(withValue(experiment, variable, NaN)).toBeNull();
    expect(withValue(experiment, variable, -1e9)?.site ?? experiment.site).toBe(experiment.site);

    const value = another(variable);
    const next = withValue(experiment, variable, value)!;
    expect(valueOf(next, variable)).toBeCloseTo(value, 6);
    // what comes of it is a document, with drawn ways as long as they are drawn
    expect(siteSchema.safeParse(next.site).success).toBe(true);
    expect(followRoutes(next.site)).toBe(next.site);
    // all else as it was
    const others = variables.filter((each) => each !== variable && each.kind !== variable.kind);
    const related = (each: Variable): boolean => each.kind === 'gap' || variable.kind === 'gap';
    for (const each of others.filter((other) => !related(other)))
      expect([called(each), valueOf(next, each)]).toEqual([called(each), valueOf(experiment, each)]);
  });
});

it('is null for what is not there', () => {
  expect(valueOf(experiment, { kind: 'turns', subject: 'L99' })).toBeNull();
  expect(valueOf(experiment, { kind: 'length', subject: 'L5' })).toBeNull();
  expect(valueOf(experiment, { kind: 'steelPitch', subject: 's2' })).toBeNull();
  expect(withValue(experiment, { kind: 'turns', subject: 'L99' }, 3)).toBeNull();
  expect(rangeOf(experiment, { kind: 'gap', subject: 'L1', other: 'L1' })).toBeNull();
});

it('refuses what a document may not hold', () => {
  expect(withValue(experiment, { kind: 'turns', subject: 'L1' }, 2.5)).toBeNull();
  expect(withValue(experiment, { kind: 'turns', subject: 'L1' }, 51)).toBeNull();
  // narrower than its corner cuts are wide
  expect(withValue(experiment, { kind: 'width', subject: 'L1' }, 0.5)).toBeNull();
  expect(withValue(experiment, { kind: 'shortedTurns', subject: 'L1' }, 4)).toBeNull();
  expect(withValue(experiment, { kind: 'wire', subject: 'L1' }, 99)).toBeNull();
});

describe('sizes', () => {
  const extent = (of: Site, id: string, axis: 0 | 1): readonly [number, number] => {
    const along = outlineOf(of.loops.find((loop) => loop.id === id)!.shape).map((point) => point[axis]);
    return [Math.min(...along), Math.max(...along)];
  };

  it('a polygon is scaled about its middle, on one axis alone', () => {
    const next = withValue(experiment, { kind: 'width', subject: 'L6' }, 3)!.site;
    const [before, after] = [extent(site, 'L6', 0), extent(next, 'L6', 0)];
    expect(after[1] - after[0]).toBeCloseTo(3, 6);
    expect(after[0] + after[1]).toBeCloseTo(before[0] + before[1], 6);
    expect(extent(next, 'L6', 1)).toEqual(extent(site, 'L6', 1));
  });

  it('the width of a circle is its diameter', () => {
    const next = withValue(experiment, { kind: 'width', subject: 'L5' }, 2.5)!.site;
    expect(next.loops[4]!.shape).toMatchObject({ kind: 'circle', diameter: 2.5 });
  });

  it('a drawn tail follows the loop that becomes wider', () => {
    const routed = followRoutes({
      ...site,
      marks: [{ id: 'b', kind: 'pull-box', points: [[-4, 0]] }],
      loops: site.loops.map((loop, k) =>
        k === 0 ? { ...loop, tail: { length: 0, route: { to: 'b', via: [], allowance: 1 } } } : loop
      )
    });
    const next = withValue(experimentOn(routed), { kind: 'width', subject: 'L1' }, 2.2)!.site;
    expect(next.loops[0]!.tail.length).toBeLessThan(routed.loops[0]!.tail.length);
    // a typed length ends the drawn way
    const typed = withValue(experimentOn(routed), { kind: 'tailLength', subject: 'L1' }, 7)!.site;
    expect(typed.loops[0]!.tail).toEqual({ length: 7 });
  });
});

describe('a gap', () => {
  const gap: Variable = { kind: 'gap', subject: 'L1', other: 'L2' };

  it('moves the second loop along the line between the two, and nothing else', () => {
    const next = withValue(experiment, gap, 3)!.site;
    expect(next.loops[0]).toBe(site.loops[0]);
    const [before, after] = [site.loops[1]!, next.loops[1]!];
    expect(after).toEqual({ ...before, shape: after.shape });
    const moved = outlineOf(after.shape).map(([x, y], k) => {
      const [x0, y0] = outlineOf(before.shape)[k]!;
      return [x - x0, y - y0] as const;
    });
    for (const [x, y] of moved) {
      expect(x).toBeCloseTo(moved[0]![0], 6);
      expect(y).toBeCloseTo(0, 6);
    }
    expect(valueOf({ ...experiment, site: next }, gap)).toBeCloseTo(3, 6);
  });

  it('of loops at an angle to one another is what it is set to, near and far', () => {
    const across: Variable = { kind: 'gap', subject: 'L1', other: 'L6' };
    for (const value of [0.05, 0.4, 2, 9])
      expect(valueOf(withValue(experiment, across, value)!, across)).toBeCloseTo(value, 6);
  });
});

it('a higher vehicle has all its parts as much higher, and is an own one', () => {
  const height: Variable = { kind: 'vehicleHeight', subject: 'lorry' };
  expect(valueOf(experiment, height)).toBe(0.9);
  const next = withValue(experiment, height, 1.15)!.site;
  const [before, after] = [vehicleOf('lorry', site)!, vehicleOf('lorry', next)!];
  const heights = (vehicle: typeof before) =>
    vehicle.parts.map((part) => (part.kind === 'plate' ? part.height : part.centre[2]));
  heights(after).forEach((each, k) => expect(each - heights(before)[k]!).toBeCloseTo(0.25, 9));
  expect([after.bodyWidth, after.bodyLength, after.paths]).toEqual([
    before.bodyWidth,
    before.bodyLength,
    before.paths
  ]);
  expect(next.vehicles.map(({ id }) => id)).toEqual(['lorry']);
  expect(withValue(experiment, height, 0.4)).toBeNull();
});

it('a vehicle at another height is no longer the one that was calibrated', () => {
  const record: HeightCalibration = { circuit: 'C1', measured: -0.01, predicted: -0.02, raised: 0.1 };
  const calibrated = calibrateHeight(site, 'car', record);
  const height: Variable = { kind: 'vehicleHeight', subject: 'car' };
  expect(vehicleOf('car', calibrated)).toMatchObject({ calibration: record });
  const next = withValue(experimentOn(calibrated), height, 0.7)!.site;
  expect(next.vehicles[0]).not.toHaveProperty('calibration');
});
