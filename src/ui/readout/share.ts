/** How far a response is above or below the threshold, for bars and words. */

/** The bar's length, in thresholds. */
export const BAR_LENGTH = 3;

export type ResponseWord = 'detected' | 'on some paths' | 'missed' | 'no threshold';

/** Part of the bar that a response of `share` thresholds fills, 0 to 1. */
export const barPart = (share: number): number =>
  Number.isFinite(share) ? Math.min(1, Math.max(0, share / BAR_LENGTH)) : 0;

/** Where on the bar the threshold stands, 0 to 1. */
export const THRESHOLD_PART = 1 / BAR_LENGTH;

/**
 * A response as it is worth reading: three digits, fewer below a tenth of a percent, and nothing below a thousandth of
 * a percent, where no unit could tell it from its own noise.
 */
export function shownResponse(response: number): { readonly value: number; readonly digits: number } {
  const value = Math.round(response * 1e5) / 1e5;
  const size = Math.abs(value);
  if (size >= 1e-3) return { value: response, digits: 3 };
  return { value, digits: size >= 1e-4 ? 2 : 1 };
}

/** Of a pass: `best` and `worst` are ΔL/L over the paths across the lane, negative for a drop. */
export function responseWord(
  response: { readonly best: number; readonly worst: number },
  tripThreshold: number | null
): ResponseWord {
  if (tripThreshold === null) return 'no threshold';
  if (-response.worst >= tripThreshold) return 'detected';
  return -response.best >= tripThreshold ? 'on some paths' : 'missed';
}
