/** What the leading causes would read, on one axis. */
import { scaleLinear, scaleLog } from 'd3-scale';

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** From this spread on, powers of ten read better. */
const DECADES = 30;
/** Beside the outermost ends, share of the whole. */
const MARGIN = 0.06;

export interface Axis {
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
}

/** Pixels from 0 to `width`; of finite ranges only. */
export function axisOf(ranges: readonly Range[], width: number, ticks: number): Axis {
  const low = Math.min(...ranges.map((range) => range.low));
  const high = Math.max(...ranges.map((range) => range.high));
  if (low > 0 && high / low > DECADES) {
    const margin = (high / low) ** MARGIN;
    const scale = scaleLog([low / margin, high * margin], [0, width]);
    const decades = scale.ticks(ticks).filter((tick) => Math.abs(Math.log10(tick) % 1) < 1e-9);
    return { at: scale, ticks: decades.length >= 2 ? decades : [low, high] };
  }
  const margin = high > low ? (high - low) * MARGIN : Math.max(Math.abs(high) * MARGIN, 1e-12);
  const scale = scaleLinear([low - margin, high + margin], [0, width]);
  return { at: scale, ticks: scale.ticks(ticks) };
}
