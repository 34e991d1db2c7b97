/**
 * Advance loops set out by speed. Distances are metres from the stop line to a loop's leading edge, the one that a vehicle
 * reaches first.
 *
 * The first loop lies where the decision zone begins at the 85th percentile speed. A vehicle at the slow end of the speeds
 * must come to the next loop before its call ends: it holds the call over the loop and goes on for the extension, so two
 * leading edges may lie at most (loop length + slow speed · extension) apart. Its own length is not counted, so that a
 * motorcycle keeps the call as well. The last loop lies where the zone ends, or nearer where a slow vehicle would otherwise
 * lose its call before the end of its own zone. Between them as few loops as the rule allows, evenly spread. The rule is
 * this program's own; the beginning and the wish to serve slower vehicles are those of FHWA-HOP-08-024, page 4-25.
 */
import { FOOT } from '#units/constants';
import { decisionZone, USUAL_ZONE, type DecisionZone, type ZoneTimes } from './decision-zone';
import { AT_SIGNALS, SEEING, stoppingDistance, usualYellow, yellowTime } from './motion';
import { headwayHeld, meanSpeedOf, passageTime } from './passage-time';

/** Ten miles an hour: the step between the speeds that FHWA-HOP-08-024, page 4-25, gives a loop each. */
export const SPEED_STEP = (10 * 5280 * FOOT) / 3600;

export interface ApproachWish {
  /** 85th percentile, m/s. */
  readonly speed: number;
  readonly slowSpeed: number;
  readonly zone: ZoneTimes;
  /** How long a call is held after the vehicle has left, by the unit or by the controller. */
  readonly extension_s: number;
  readonly reaction_s: number;
  readonly deceleration: number;
  /** Rise over run, positive uphill. */
  readonly grade: number;
  readonly loopLength: number;
}

export interface ApproachPlan {
  readonly zone: DecisionZone;
  /** Of the slow end of the speeds. */
  readonly slowZone: DecisionZone;
  /** Of a driver who meets a yellow, and of one who meets an obstacle. */
  readonly stopping_m: number;
  readonly sight_m: number;
  readonly yellow_s: number;
  /** By the formula, before the bounds. */
  readonly yellowByFormula_s: number;
  /** Leading edges may be this far apart. */
  readonly reach_m: number;
  /** Leading edges, the farthest first; none where it would take more than `MOST_LOOPS`. */
  readonly distances_m: readonly number[];
  /** How far before the line the call of a slow vehicle ends; null without loops. */
  readonly carriedTo_m: number | null;
  /** Between the fronts of two vehicles; null without loops. */
  readonly headwayHeld_s: number | null;
  /** Of a single loop of this length. */
  readonly passage_s: number;
}

export const MOST_LOOPS = 8;
const HAIR = 1e-9;

/** The slow end where nobody states it: a step less, but not less than half. */
export const usualSlowSpeed = (speed: number): number => Math.max(speed / 2, speed - SPEED_STEP);

export const USUAL_APPROACH: Omit<ApproachWish, 'speed' | 'slowSpeed'> = {
  zone: USUAL_ZONE,
  extension_s: 1.5,
  reaction_s: AT_SIGNALS.reaction_s,
  deceleration: AT_SIGNALS.deceleration,
  grade: 0,
  loopLength: 1.8
};

const spread = (from: number, to: number, reach: number): readonly number[] => {
  const gaps = Math.max(1, Math.ceil((from - to) / reach - HAIR));
  if (!(reach > 0) || gaps + 1 > MOST_LOOPS) return [];
  return Array.from({ length: gaps + 1 }, (_, k) => from + ((to - from) * k) / gaps);
};

export const planApproach = (wish: ApproachWish): ApproachPlan => {
  const { speed, slowSpeed, extension_s, loopLength, grade } = wish;
  const zone = decisionZone(speed, wish.zone);
  const slowZone = decisionZone(slowSpeed, wish.zone);
  const reach = loopLength + slowSpeed * extension_s;
  const last = Math.min(zone.to_m, slowZone.to_m + reach);
  const distances = spread(zone.from_m, last, reach);
  const driver = { reaction_s: wish.reaction_s, deceleration: wish.deceleration };
  const yellow = yellowTime(speed, driver, grade);
  const isThere = distances.length > 0;
  return {
    zone,
    slowZone,
    stopping_m: stoppingDistance(speed, driver, grade),
    sight_m: stoppingDistance(speed, SEEING, grade),
    yellow_s: usualYellow(yellow),
    yellowByFormula_s: yellow,
    reach_m: reach,
    distances_m: distances,
    carriedTo_m: isThere ? last - reach : null,
    headwayHeld_s: isThere
      ? headwayHeld(speed, { between: zone.from_m - last, loopLength, extension_s })
      : null,
    passage_s: passageTime(meanSpeedOf(speed), loopLength)
  };
};

/** A loop for the 85th percentile speed and one for each step less, all where their zones begin: FHWA-HOP-08-024, page 4-25. */
export const steppedDistances = (
  speed: number,
  { from_s }: Pick<ZoneTimes, 'from_s'>,
  loops = 4
): readonly number[] =>
  Array.from({ length: loops }, (_, k) => (speed - k * SPEED_STEP) * from_s).filter((each) => each > 0);
