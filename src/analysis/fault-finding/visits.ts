/** Which readings are of which circuit, where they were taken, and which were taken on one day. */
import { READING_QUANTITIES, type Quantity, type Reading, type Site } from '#plan/schema';
import { circuitWith, loopsIn } from '#plan/wiring';
import type { MeasuringPlace } from './results';

type Wired = Pick<Site, 'circuits'>;

/** Its circuit; else that of its loop; else the only one there is. Undefined where none of that helps. */
export function circuitOfReading(site: Wired, { circuit, loop }: Reading): string | undefined {
  if (circuit !== undefined) return circuit;
  if (loop !== undefined) return circuitWith(site, loop)?.id;
  return site.circuits.length === 1 ? site.circuits[0]?.id : undefined;
}

/** Readings of old files say no test point: what only a unit shows was read there, a loop's was the loop's own. */
function testPointOf({ testPoint, loop, ...values }: Reading): MeasuringPlace['testPoint'] {
  if (testPoint !== undefined) return testPoint;
  if (loop !== undefined) return 'loop';
  const hasMeters = values.resistanceDc_ohm !== undefined || values.insulation_ohm !== undefined;
  return values.frequency_Hz !== undefined && !hasMeters ? 'unit' : 'cabinet';
}

/** A reading at "loop" that names none is of the circuit's first, which most often is its only one. */
export function placeOfReading(site: Wired, reading: Reading): MeasuringPlace {
  const testPoint = testPointOf(reading);
  if (testPoint !== 'loop') return { testPoint, loop: null };
  if (reading.loop !== undefined) return { testPoint, loop: reading.loop };
  const circuit = site.circuits.find(({ id }) => id === circuitOfReading(site, reading));
  return { testPoint, loop: (circuit && loopsIn(circuit)[0]) ?? null };
}

export interface ReadFigure {
  readonly quantity: Quantity;
  readonly value: number | null;
}

/** The quantities that it tells, with their values; null was over the meter's range. */
export const figuresOfReading = (reading: Reading): readonly ReadFigure[] =>
  READING_QUANTITIES.flatMap((quantity): readonly ReadFigure[] => {
    const value = reading[quantity];
    if (value !== undefined) return [{ quantity, value }];
    return reading.overRange?.includes(quantity) === true ? [{ quantity, value: null }] : [];
  });

/** Its calendar day where it was taken, "2025-11-26"; null for one without a time. */
export const dayOf = ({ at }: Pick<Reading, 'at'>): string | null =>
  at === undefined ? null : at.slice(0, 10);

export interface Visit {
  readonly day: string | null;
  /** Places in `site.readings`, the newest first. */
  readonly readings: readonly number[];
}

/** Of stamps. */
export const newestFirst = (a: string, b: string): number => (a < b ? 1 : a > b ? -1 : 0);

/** Of one circuit, the newest first; readings without a time are one visit, the last. */
export function visitsOf(site: Wired & Pick<Site, 'readings'>, circuit: string): readonly Visit[] {
  const days = new Map<string | null, number[]>();
  site.readings.forEach((reading, place) => {
    if (circuitOfReading(site, reading) !== circuit) return;
    const day = dayOf(reading);
    days.set(day, [...(days.get(day) ?? []), place]);
  });
  const timeOf = (place: number): string => site.readings[place]?.at ?? '';
  return [...days]
    .toSorted(([a], [b]) => newestFirst(a ?? '', b ?? ''))
    .map(([day, places]) => ({
      day,
      readings: places.toSorted((a, b) => newestFirst(timeOf(a), timeOf(b)) || b - a)
    }));
}
