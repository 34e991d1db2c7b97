/**
 * Where drivers who meet a yellow decide differently, some to stop and some to go on: from about 5.5 s to about 2.5 s
 * before the line at the 85th percentile speed (NCHRP 812, section 4 and exhibit 4-7).
 */
import { FOOT } from '#units/constants';

export interface ZoneTimes {
  readonly from_s: number;
  readonly to_s: number;
}

/** Metres before the line, the farther end first. */
export interface DecisionZone {
  readonly from_m: number;
  readonly to_m: number;
}

export const USUAL_ZONE: ZoneTimes = { from_s: 5.5, to_s: 2.5 };

export const decisionZone = (speed: number, { from_s, to_s }: ZoneTimes = USUAL_ZONE): DecisionZone => ({
  from_m: speed * from_s,
  to_m: speed * to_s
});

/** The exhibit's figures are multiples of 5 ft. */
const PUBLISHED_STEP = 5 * FOOT;
const HAIR = 1e-9;

/** Widened to whole steps at both ends, which is what the exhibit's figures do: no part of the zone is lost by rounding. */
export const widened = ({ from_m, to_m }: DecisionZone, step = PUBLISHED_STEP): DecisionZone => ({
  from_m: Math.ceil(from_m / step - HAIR) * step,
  to_m: Math.floor(to_m / step + HAIR) * step
});
