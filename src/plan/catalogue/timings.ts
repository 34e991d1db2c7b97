/**
 * How a unit's output behaves in time where a channel does not state it. Pulse length: 125 ms, common practice (NEMA names
 * 125 ± 25 ms, from memory). Re-arming after about 2 s and full sensitivity within 0.5 s of the vehicle's leaving: common
 * practice. Adaptation: common practice asks that a vehicle is held for at least 4 min and finds 1 to 3 h for a car; with a
 * time constant of half an hour and release at 0.6 of the threshold a response of twenty times the threshold is held for
 * 30 min · ln(20/0.6) = 1 h 45 min, one of five times for an hour.
 */
import type { Output } from '../schema';

export const USUAL_TIMINGS = { pulse_s: 0.125, rearm_s: 2, recovery_s: 0.5, adaptation_s: 1_800 } as const;

export type Timings = Omit<Output, keyof typeof USUAL_TIMINGS> & {
  readonly [K in keyof typeof USUAL_TIMINGS]: number;
};

/** Seconds throughout; everything stated. */
export const timingsOf = (output: Output): Timings => ({
  ...output,
  pulse_s: output.pulse_s ?? USUAL_TIMINGS.pulse_s,
  rearm_s: output.rearm_s ?? USUAL_TIMINGS.rearm_s,
  recovery_s: output.recovery_s ?? USUAL_TIMINGS.recovery_s,
  adaptation_s: output.adaptation_s ?? USUAL_TIMINGS.adaptation_s
});
