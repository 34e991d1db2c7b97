/** What was read on the site, by what, and how it was accepted. */
import { COUNTS } from '../bounds';
import { site as siteSchema, type FieldCheck, type Reading, type Site } from '../schema';
import { freeId, patched, type Patch } from './list';

const readingSchema = siteSchema.shape.readings.unwrap().element;
const fieldCheckSchema = siteSchema.shape.fieldCheck;

/** The id that a new reading gets: "R1". Readings of old files may have none. */
export const newReadingId = (site: Site): string =>
  freeId(
    site.readings.flatMap(({ id }) => (id === undefined ? [] : [{ id }])),
    'R'
  );

/** The same site when it is full, or a value is outside its bounds. */
export function addReading(site: Site, reading: Reading): Site {
  if (site.readings.length >= COUNTS.readings || !readingSchema.safeParse(reading).success) return site;
  return { ...site, readings: [...site.readings, reading] };
}

/** `at`: place in the list. The same site when nothing changes or a value is outside its bounds. */
export function updateReading(site: Site, at: number, patch: Patch<Reading>): Site {
  const before = site.readings[at];
  if (!before) return site;
  const after = patched<Reading>(before, patch);
  if (after === before || !readingSchema.safeParse(after).success) return site;
  return { ...site, readings: site.readings.map((each, index) => (index === at ? after : each)) };
}

/** Places in the list. */
export function removeReadings(site: Site, places: ReadonlySet<number>): Site {
  const readings = site.readings.filter((_, index) => !places.has(index));
  return readings.length === site.readings.length ? site : { ...site, readings };
}

/** `at`: place in the list. */
export const withoutReading = (site: Site, at: number): Site => removeReadings(site, new Set([at]));

/** The same site when nothing changes or a value is outside its bounds. */
export function updateFieldCheck(site: Site, patch: Patch<FieldCheck>): Site {
  const fieldCheck = patched<FieldCheck>(site.fieldCheck ?? {}, patch);
  const changed = fieldCheck !== site.fieldCheck && fieldCheckSchema.safeParse(fieldCheck).success;
  return changed ? { ...site, fieldCheck } : site;
}
