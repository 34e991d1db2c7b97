/** A channel's thresholds and timings, everything stated. */
import { timingsOf } from '#plan/catalogue/timings';
import type { Channel } from '#plan/schema';

export interface Rules {
  /** −ΔL/L */
  readonly trip: number;
  readonly release: number;
  readonly isPulse: boolean;
  readonly delay: number;
  readonly extension: number;
  readonly longest: number;
  readonly pulse: number;
  readonly rearm: number;
  /** Time constants, s. */
  readonly adaptation: number;
  readonly recovery: number;
}

const HIGHEST_RATIO = 0.999;

export const rulesOf = ({ tripThreshold, releaseRatio, output }: Channel): Rules => {
  const timings = timingsOf(output);
  return {
    trip: tripThreshold,
    release: tripThreshold * Math.min(releaseRatio, HIGHEST_RATIO),
    isPulse: timings.mode === 'pulse',
    delay: timings.delay_s,
    extension: timings.extension_s,
    longest: timings.longestPresence_s ?? Infinity,
    pulse: timings.pulse_s,
    rearm: timings.rearm_s,
    adaptation: timings.adaptation_s,
    recovery: timings.recovery_s / Math.log(100)
  };
};
