/**
 * How long a call may pause before a green ends. One loop that senses presence: the time from one vehicle's front to the
 * next one's, less the time that the loop is occupied: P = H − (vehicle + loop)/v, v the mean speed, 0.88 of the 85th
 * percentile speed; H = 3 s (FHWA-HOP-08-024, equation 5-5 and pages 5-20 to 5-21; the ranges of NCHRP 812, exhibit 6-12,
 * are its values from 25 to 55 mph for a vehicle of 20 ft).
 */
import { FOOT } from '#units/constants';

const HEADWAY = 3;
export const VEHICLE_LENGTH = 20 * FOOT;
const MEAN_SHARE = 0.88;

export const meanSpeedOf = (percentile85: number): number => MEAN_SHARE * percentile85;

/** Seconds, not below nought; SI, `speed` the mean one. */
export const passageTime = (
  speed: number,
  loopLength: number,
  { headway = HEADWAY, vehicleLength = VEHICLE_LENGTH } = {}
): number => Math.max(0, headway - (vehicleLength + loopLength) / speed);

/**
 * The longest time between the fronts of two vehicles that keeps one green alive over a row of loops: the first vehicle
 * has left the last loop and the extension runs out just as the next comes to the first one.
 */
export const headwayHeld = (
  speed: number,
  {
    between,
    loopLength,
    extension_s
  }: {
    /** From the first loop to the last, metres. */
    readonly between: number;
    readonly loopLength: number;
    readonly extension_s: number;
  }
): number => (between + loopLength + VEHICLE_LENGTH) / speed + extension_s;
