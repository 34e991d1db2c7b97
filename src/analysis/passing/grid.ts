/** Which places of a way a pass is computed at, and which loops answer there. */
import type { Placement } from '#physics/field/filaments';
import { pointAt } from '#plan/geometry/stations';
import type { Point } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import type { Range } from '../electrical/many-effects';
import { boxOf, gapBetween, reachOf, type Footprint, type LoopBox, type Reach } from '../electrical/reach';
import type { SurveyedCircuit } from '../survey';
import { awayOf, COARSER, fineSteps, runsFor, STEP, type Run } from './samples';
import { isStraight, stationOf, type Way } from './way';

/** Along a way, where a loop lies and how far beside it comes nearest. */
export const extentOn = (way: Way, loop: Parameters<typeof outlineOf>[0]) => {
  const stations = outlineOf(loop).map((point) => stationOf(way, point));
  const along = stations.map((each) => each.along);
  const beside = stations.map((each) => each.offset);
  return {
    from: Math.min(...along),
    to: Math.max(...along),
    right: Math.max(...beside),
    left: Math.min(...beside)
  };
};

/** One loop as a pass sees it. */
export interface Passed {
  readonly box: LoopBox;
  readonly reach: Reach;
  readonly isBeside: boolean;
  /** Stretches of the way on which it comes as near as that to the loop, metres; it may come by more than once. */
  readonly within: (reach: number) => readonly Stretch[];
}

type Stretch = readonly [number, number];

/** A way that is not straight is looked at in steps of so many metres. */
const LOOK = 0.5;

const gapTo = ({ left, right, bottom, top }: LoopBox, [x, y]: Point): number =>
  Math.hypot(Math.max(0, left - x, x - right), Math.max(0, bottom - y, y - top));

/** Stretches on which a way lies within `reach` of a box; `from` and `to`: where it comes nearest. */
const stretchesOf = (way: Way, box: LoopBox, reach: number, from: number, to: number): readonly Stretch[] => {
  const stretches: Stretch[] = [];
  const first = Math.min(0, from) - reach;
  const count = Math.ceil((Math.max(way.length, to) + reach - first) / LOOK);
  let begun: number | null = null;
  for (let k = 0; k <= count + 1; k++) {
    const along = first + k * LOOK;
    const isNear = k <= count && gapTo(box, pointAt(way, along)) <= reach;
    if (isNear) begun ??= along - LOOK;
    else if (begun !== null) {
      stretches.push([begun, along]);
      begun = null;
    }
  }
  return stretches;
};

/** The middle of a vehicle with its axles on a bent way strays from it, in half lengths: less than a wheelbase of 0.6 of it. */
const STRAYS = 0.6;

export const passedBy = (
  { loops, solved }: SurveyedCircuit,
  footprint: Footprint,
  way: Way,
  offset: number
): readonly Passed[] => {
  const straight = isStraight(way);
  return loops.map(({ shape }, i) => {
    const box = boxOf(solved.input.loops[i]!.model.filaments);
    const reach = reachOf(box, footprint, solved.inductance, loops.length);
    const { from, to, left, right } = extentOn(way, shape);
    const isBeside =
      left - offset > reach.own + footprint.right || offset - right > reach.own - footprint.left;
    const aside = Math.abs(offset) + STRAYS * halfOf(footprint);
    const within = (near: number): readonly Stretch[] =>
      straight ? [[from - near, to + near]] : stretchesOf(way, box, near + aside, from, to);
    return { box, reach, isBeside, within };
  });
};

const halfOf = ({ rear, front }: Footprint): number => Math.max(-rear, front);

/** The numbers of a profile's places: `from` metres along the way, `step` metres apart, 0 to `last`. */
export interface Grid {
  readonly from: number;
  readonly step: number;
  readonly last: number;
  readonly runs: readonly Run[];
}

export const gridFor = (passed: readonly Passed[], footprint: Footprint): Grid => {
  const step = fineSteps(footprint) * STEP;
  const half = halfOf(footprint);
  const near = passed.filter(({ isBeside }) => !isBeside);
  const answering = near.flatMap(({ within, reach }) => within(reach.own + half));
  const least = Math.min(...answering.map(([from]) => from));
  const most = Math.max(...answering.map(([, to]) => to));
  const first = Math.floor(least / step);
  const last = COARSER * Math.ceil((Math.ceil(most / step) - first) / COARSER);
  const away = awayOf(footprint) + half;
  const intervals = near.flatMap(({ within }) =>
    within(away).map(([from, to]) => [from / step - first, to / step - first] as const)
  );
  return { from: first * step, step, last, runs: runsFor(last, intervals) };
};

/** Where among the places a loop answers. */
export const rangeOf = (
  { box, reach }: Passed,
  footprint: Footprint,
  placements: readonly Placement[]
): Range => {
  const isNear = (placement: Placement): boolean => gapBetween(box, footprint, placement) <= reach.field;
  const first = placements.findIndex(isNear);
  return first < 0 ? null : [first, placements.findLastIndex(isNear) + 1];
};

/** All in one line and heading along it, evenly spaced. */
export const isRun = (placements: readonly Placement[], spacing: number): boolean => {
  const { x, y, heading } = placements[0]!;
  const [ux, uy] = [Math.cos((heading * Math.PI) / 180), Math.sin((heading * Math.PI) / 180)];
  return placements.every(
    (place, k) =>
      Math.abs(place.x - x - k * spacing * ux) < 1e-7 &&
      Math.abs(place.y - y - k * spacing * uy) < 1e-7 &&
      Math.abs(place.heading - heading) < 1e-6
  );
};
