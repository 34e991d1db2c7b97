/**
 * A frequency as a unit measures it: rising zero crossings of the tank's voltage, counted over a measuring time, the
 * fraction of a cycle at either end by interpolation. Between two samples the voltage is the cubic through both values
 * and both slopes (Hermite); with 30 samples a cycle its crossing is within 10⁻⁶ of a cycle.
 */
export interface FrequencyMeter {
  /** The next sample: time, s; voltage and its slope. Times rise. */
  hear(time: number, voltage: number, slope: number): void;
  /** Times of the rising crossings so far, s. */
  readonly crossings: readonly number[];
  /** The voltage's slope at each, V/s: of a sine, its amplitude times 2πf. */
  readonly slopes: readonly number[];
}

/**
 * Share of the step, 0 to 1, at which the cubic from (0, y0, m0) to (1, y1, m1), slopes per step, crosses zero, and its
 * slope there; by Newton's method, kept between what lies below and above.
 */
const crossingOf = (y0: number, m0: number, y1: number, m1: number): readonly [number, number] => {
  const c2 = 3 * (y1 - y0) - 2 * m0 - m1;
  const c3 = 2 * (y0 - y1) + m0 + m1;
  const slopeAt = (s: number): number => m0 + s * (2 * c2 + 3 * s * c3);
  let low = 0;
  let high = 1;
  let s = y0 / (y0 - y1);
  for (let n = 0; n < 8; n++) {
    const value = y0 + s * (m0 + s * (c2 + s * c3));
    if (value > 0) high = s;
    else low = s;
    const next = s - value / slopeAt(s);
    const moved = next > low && next < high ? next : (low + high) / 2;
    const isThere = Math.abs(moved - s) < 1e-12;
    s = moved;
    if (isThere) break;
  }
  return [s, slopeAt(s)];
};

export const createFrequencyMeter = (): FrequencyMeter => {
  const crossings: number[] = [];
  const slopes: number[] = [];
  let before = { time: NaN, voltage: NaN, slope: NaN };
  return {
    crossings,
    slopes,
    hear: (time, voltage, slope) => {
      const { time: from, voltage: y0, slope: m0 } = before;
      if (y0 < 0 && voltage >= 0) {
        const step = time - from;
        const [share, rise] = crossingOf(y0, m0 * step, voltage, slope * step);
        crossings.push(from + step * share);
        slopes.push(rise / step);
      }
      before = { time, voltage, slope };
    }
  };
};

/** Frequency of every whole cycle, Hz: one value fewer than crossings. */
export const cycleFrequencies = (crossings: readonly number[]): number[] =>
  crossings.slice(1).map((time, n) => 1 / (time - crossings[n]!));

/** Cycles counted until `time`, fractions between crossings in proportion; null before the first and after the last. */
const cyclesAt = (crossings: readonly number[], time: number): number | null => {
  let low = 0;
  let high = crossings.length - 1;
  if (high < 1 || time < crossings[0]! || time > crossings[high]!) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (crossings[middle]! <= time) low = middle;
    else high = middle;
  }
  return low + (time - crossings[low]!) / (crossings[high]! - crossings[low]!);
};

/** What a unit reads that begins at `from` and measures for `measuringTime`, Hz; null where crossings are missing. */
export const measuredFrequency = (
  crossings: readonly number[],
  from: number,
  measuringTime: number
): number | null => {
  const first = cyclesAt(crossings, from);
  const last = cyclesAt(crossings, from + measuringTime);
  return first === null || last === null ? null : (last - first) / measuringTime;
};

/** Half the distance between the greatest and the least of them; 0 for none. */
export const swingOf = (frequencies: readonly number[]): number => {
  let least = Infinity;
  let most = -Infinity;
  for (const frequency of frequencies) {
    if (frequency < least) least = frequency;
    if (frequency > most) most = frequency;
  }
  return most > least ? (most - least) / 2 : 0;
};
