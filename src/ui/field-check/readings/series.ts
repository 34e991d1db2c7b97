/** One quantity at one place over the years. */
import type { ExpectedFigure, MeasuringPlace } from '#analysis/fault-finding/results';
import { circuitOfReading, figuresOfReading, placeOfReading } from '#analysis/fault-finding/visits';
import { READING_QUANTITIES, TEST_POINTS, type Quantity, type Site } from '#plan/schema';
import { wallTime } from '#units/day';

export interface SeriesPoint {
  /** Place in `site.readings`. */
  readonly place: number;
  /** Milliseconds along the wall's clock; null for a reading without a time. */
  readonly time: number | null;
  /** Null: over the meter's range. */
  readonly value: number | null;
  readonly isCommissioning: boolean;
}

export interface Series extends MeasuringPlace {
  readonly key: string;
  readonly quantity: Quantity;
  /** Of a response: whose. */
  readonly vehicle: string | null;
  /** The oldest first, those without a time before all others. */
  readonly points: readonly SeriesPoint[];
}

type Read = Pick<Site, 'circuits' | 'readings'>;

const rank = ({ testPoint, quantity }: Series): number =>
  TEST_POINTS.indexOf(testPoint) * READING_QUANTITIES.length + READING_QUANTITIES.indexOf(quantity);

export function seriesOf(site: Read, circuit: string): readonly Series[] {
  const all = new Map<string, Omit<Series, 'points'> & { readonly points: SeriesPoint[] }>();
  site.readings.forEach((reading, place) => {
    if (circuitOfReading(site, reading) !== circuit) return;
    const at = placeOfReading(site, reading);
    for (const { quantity, value } of figuresOfReading(reading)) {
      const vehicle = quantity === 'deltaLOverL' ? (reading.vehicle ?? null) : null;
      const key = JSON.stringify([at.testPoint, at.loop, quantity, vehicle]);
      const series = all.get(key) ?? { ...at, key, quantity, vehicle, points: [] };
      const isCommissioning = reading.isCommissioning === true;
      series.points.push({ place, time: wallTime(reading.at), value, isCommissioning });
      all.set(key, series);
    }
  });
  const age = ({ time }: SeriesPoint): number => time ?? Number.NEGATIVE_INFINITY;
  return [...all.values()]
    .map((series) => ({
      ...series,
      points: series.points.toSorted((a, b) =>
        age(a) < age(b) ? -1 : age(a) > age(b) ? 1 : a.place - b.place
      )
    }))
    .toSorted((a, b) => rank(a) - rank(b));
}

/** What circuits are held against on a picture of a series: the newest commissioning value. */
export const commissioned = ({ points }: Series): number | null =>
  points.findLast(({ isCommissioning, value }) => isCommissioning && value !== null)?.value ?? null;

export const isLogarithmic = (quantity: Quantity): boolean =>
  quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm';

/** Part of the span of what is shown that stays free above and below. */
const MARGIN = 0.08;
/** Of the value, where all that is shown is one. */
const AROUND_ONE = 0.05;

/**
 * From where to where the axis of values goes, in stored units: over everything that was read, what is expected and what was
 * commissioned.
 */
export function valueSpan(
  { points, quantity }: Series,
  expected: ExpectedFigure | null,
  baseline: number | null
): readonly [least: number, most: number] {
  const found = [
    ...points.map(({ value }) => value),
    expected?.low,
    expected?.high,
    expected?.value,
    baseline,
    ...(isLogarithmic(quantity) ? (expected?.limits.map(({ least }) => least) ?? []) : [])
  ].filter((value): value is number => typeof value === 'number');
  if (isLogarithmic(quantity)) {
    const positive = found.filter((value) => value > 0);
    if (positive.length === 0) return [1e6, 1e9];
    return [Math.min(...positive) / 2, Math.max(...positive) * 2];
  }
  if (found.length === 0) return [0, 1];
  const [least, most] = [Math.min(...found), Math.max(...found)];
  const free = most > least ? (most - least) * MARGIN : Math.abs(most) * AROUND_ONE || 1;
  return [least - free, most + free];
}

/** What lies beyond an end stands at it: nought too, on an axis of decades. */
export const onAxis = (value: number, [least, most]: readonly [number, number]): number =>
  Math.min(most, Math.max(least, value));

/** Milliseconds: half a day, around a single moment. */
const HALF_A_DAY = 43_200_000;

export function timeSpan({ points }: Series): readonly [from: number, to: number] | null {
  const times = points.flatMap(({ time }) => time ?? []);
  if (times.length === 0) return null;
  const [from, to] = [Math.min(...times), Math.max(...times)];
  return to > from ? [from, to] : [from - HALF_A_DAY, to + HALF_A_DAY];
}
