/**
 * Stopping before a line, and the yellow that belongs to it. SI; a grade is rise over run, positive uphill.
 *
 * Yellow change interval: Y = t + v/(2·(a + g·G)), t = 1.0 s, a = 10 ft/s², of the 85th percentile speed, at least 3 s and
 * at most 6 s (NCHRP 812, equation 6-1 and exhibit 6-2; the bounds from the MUTCD as restated there). The distance that
 * such a driver needs is v·Y. Stopping sight distance: the same law with 2.5 s and 11.2 ft/s² (AASHTO, A Policy on
 * Geometric Design of Highways and Streets, 2018, section 3.1.2).
 */
import { FOOT } from '#units/constants';

const GRAVITY = 9.81;

export interface Driver {
  readonly reaction_s: number;
  /** Metres per second squared. */
  readonly deceleration: number;
}

/** Who meets a yellow: NCHRP 812, equation 6-1. */
export const AT_SIGNALS: Driver = { reaction_s: 1, deceleration: 10 * FOOT };
/** Who meets an obstacle: AASHTO 2018. */
export const SEEING: Driver = { reaction_s: 2.5, deceleration: 11.2 * FOOT };

const YELLOW = { least: 3, most: 6 };

/** Metres from seeing to standing; Infinity where the grade leaves nothing to brake with. */
export const stoppingDistance = (speed: number, { reaction_s, deceleration }: Driver, grade = 0): number => {
  const braking = deceleration + GRAVITY * grade;
  return braking > 0 ? speed * reaction_s + speed ** 2 / (2 * braking) : Infinity;
};

/** Seconds by the formula: who cannot stop any more reaches the line just then. */
export const yellowTime = (speed: number, driver: Driver, grade = 0): number =>
  stoppingDistance(speed, driver, grade) / speed;

/** Inside what may be shown. */
export const usualYellow = (seconds: number): number =>
  Math.min(YELLOW.most, Math.max(YELLOW.least, seconds));
