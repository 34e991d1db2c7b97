/**
 * Two channels that run at the same time.
 *
 * The second tank's voltage V2 drives a current whose rate of change is V2/L2; through M that puts (M/L2)·V2 into the first
 * tank. Small against the first's own voltage, it adds a tone at f2: relative to the carrier, far from resonance,
 * (M/L2)·(V2/V1)·f1²/|f1² − f2²|. A tone of the relative size r at the distance Δf swings the frequency by ±r·Δf, so that
 * Δf drops out: with equal voltages the first swings at the beat Δf = |f1 − f2| by
 *
 *   ±(k/2)·√(L1/L2)·2·f1/(f1 + f2)·f1,
 *
 * which its unit reads as a change of ±k·√(L1/L2)·2·f1/(f1 + f2) in L/L. Averaging over a measuring time T leaves
 * |sin(π·Δf·T)/(π·Δf·T)| of a swing, at most min(1, 1/(π·Δf·T)).
 *
 * This is first order in x = k·√(L1/L2)·f/Δf. Against two limiting oscillators integrated in time (`oscillators.ts`, and
 * the same circuit in SPICE; k from 0.005 to 0.02, Δf from 0.4 to 3 kHz at 50 kHz) it holds within 11 % for x up to a
 * third, whatever Q and the limiting are, and at Q 8 with firm limiting within 10 % up to x = 2.5. Otherwise, nearer than
 * that, Q and the limiting matter: two equal tanks of high Q, softly limited, swing √(1 + x²) times as far at the beat
 * Δf·√(1 + x²), and unequally, so that the worse one is a third above the law at x = 2/3. From about x = 1 on two may lock
 * to each other; short of that the beat slows down. What a measuring time of a beat or longer leaves stays within 15 % of
 * the law up to x = 1, whatever Q and the limiting are.
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

/** √(L1/L2)·2·f1/(f1 + f2): how much more the first swings than ±(k/2)·f1, with equal voltages. Henries, hertz. */
export const driveOf = (L1: number, L2: number, f1: number, f2: number): number =>
  (Math.sqrt(L1 / L2) * 2 * f1) / (f1 + f2);

/** What averaging over `time` seconds leaves at most of a swing at the beat `separation`, Hz. */
export const averagingOf = (separation: number, time: number): number =>
  Math.min(1, 1 / (Math.PI * separation * time));

/** Hz: two that are nearer than this may lock to each other, x = 1 for the one that is disturbed more. */
export const lockingRange = (a: Tank, b: Tank, k: number): number => {
  const unequal = Math.sqrt(a.inductance / b.inductance);
  return (Math.abs(k) * Math.max(unequal, 1 / unequal) * (a.low + b.low)) / 2;
};

/**
 * Apparent |ΔL/L| that `b` puts into `a` by the coupling coefficient k. Where the two may lock nothing is taken to be
 * averaged away: locked, the one follows whatever a vehicle does to the other, and no measuring time helps.
 */
export const rippleOf = (a: Tank, b: Tank, k: number): number => {
  const separation = separationOf(a, b);
  const swing = Math.abs(k) * driveOf(a.inductance, b.inductance, a.low, b.low);
  return separation < lockingRange(a, b, k) ? swing : swing * averagingOf(separation, a.measuringTime);
};

/**
 * Frequency, Hz, of a channel with setting capacitance C on terminal inductance L and quality factor Q: that at which the
 * tank rings when nothing feeds it, √(1 − 1/4Q²)/(2π√(LC)), to the order 1/Q² (under 2·10⁻⁴ at Q 5). How a unit feeds its
 * tank shifts it by as much again: one that feeds a parallel tank in phase with its voltage runs at √(1 − 1/Q²). A measured
 * frequency on a known circuit yields the capacitance that holds this in.
 */
export const oscillatorFrequency = (L: number, C: number, q: number): number =>
  (1 - 1 / (8 * q * q)) / (2 * Math.PI * Math.sqrt(L * C));

/** F: the capacitance on which a channel runs at the frequency f, Hz. The exact inverse of `oscillatorFrequency`. */
export const tankCapacitance = (L: number, f: number, q: number): number =>
  ((1 - 1 / (8 * q * q)) / (2 * Math.PI * f)) ** 2 / L;
