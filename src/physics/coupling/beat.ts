/**
 * Two channels that run at the same time.
 *
 * To first order, inductive coupling does not lock two oscillators; the frequency of each swings by ±(k/2)·f at the beat
 * |f1 − f2|, which its unit reads as a change of ±k in L/L. With equal drive voltage on both tanks the swing of the first
 * is weighted by √(L1/L2)·f1/f2: the current of the second, V/(ω2·L2), induces it. Averaging over a measuring time T
 * leaves at most min(1, 1/(π·Δf·T)) of it.
 */
export interface Tank {
  /** Terminal inductance, H. */
  readonly inductance: number;
  /** The interval its frequency sweeps, Hz, low to high. */
  readonly low: number;
  readonly high: number;
  /** Time over which its unit averages, s. */
  readonly measuringTime: number;
}

/** Distance of two frequency intervals, Hz; 0 where they overlap. */
export const separationOf = (a: Tank, b: Tank): number => Math.max(0, b.low - a.high, a.low - b.high);

/** Apparent |ΔL/L| that `b` puts into `a` by the coupling coefficient k. */
export const rippleOf = (a: Tank, b: Tank, k: number): number => {
  const averaging = Math.PI * separationOf(a, b) * a.measuringTime;
  const drive = Math.sqrt(a.inductance / b.inductance) * (a.low / b.low);
  return Math.abs(k) * drive * (averaging > 1 ? 1 / averaging : 1);
};

/** Frequency, Hz, of a channel with setting capacitance C on terminal inductance L and quality factor Q (loss shift 1/8Q²). */
export const oscillatorFrequency = (L: number, C: number, q: number): number =>
  (1 - 1 / (8 * q * q)) / (2 * Math.PI * Math.sqrt(L * C));
