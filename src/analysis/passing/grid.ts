/** Which places of a way a pass is computed at, and which loops answer there. */
import type { Placement } from '#physics/field/filaments';
import { outlineOf } from '#plan/shapes/index';
import type { Range } from '../electrical/many-effects';
import { boxOf, gapBetween, reachOf, type Footprint, type LoopBox, type Reach } from '../electrical/reach';
import type { SurveyedCircuit } from '../survey';
import { awayOf, COARSER, fineSteps, runsFor, STEP, type Run } from './samples';
import { stationOf, type Way } from './way';

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
  readonly from: number;
  readonly to: number;
  readonly isBeside: boolean;
}

export const passedBy = (
  { loops, solved }: SurveyedCircuit,
  footprint: Footprint,
  way: Way,
  offset: number
): readonly Passed[] =>
  loops.map(({ shape }, i) => {
    const box = boxOf(solved.input.loops[i]!.model.filaments);
    const reach = reachOf(box, footprint, solved.inductance, loops.length);
    const { from, to, left, right } = extentOn(way, shape);
    const isBeside =
      left - offset > reach.own + footprint.right || offset - right > reach.own - footprint.left;
    return { box, reach, from, to, isBeside };
  });

/** The numbers of a profile's places: `from` metres along the way, `step` metres apart, 0 to `last`. */
export interface Grid {
  readonly from: number;
  readonly step: number;
  readonly last: number;
  readonly runs: readonly Run[];
}

export const gridFor = (passed: readonly Passed[], footprint: Footprint): Grid => {
  const step = fineSteps(footprint) * STEP;
  const half = Math.max(-footprint.rear, footprint.front);
  const near = passed.filter(({ isBeside }) => !isBeside);
  const least = Math.min(...near.map(({ from, reach }) => from - reach.own)) - half;
  const most = Math.max(...near.map(({ to, reach }) => to + reach.own)) + half;
  const first = Math.floor(least / step);
  const last = COARSER * Math.ceil((Math.ceil(most / step) - first) / COARSER);
  const away = awayOf(footprint) + half;
  const intervals = near.map(
    ({ from, to }) => [(from - away) / step - first, (to + away) / step - first] as const
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
