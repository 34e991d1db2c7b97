/** What the take-off reckons with, and how the sheet is laid out. */
import { COUNTS } from '../bounds';
import { site as siteSchema, type Estimate, type SheetLayout, type Site } from '../schema';
import { freeId, patched, type Patch } from './list';

const { estimate: estimateSchema, sheet: sheetSchema } = siteSchema.shape;

/** The same site when nothing changes or a value is outside its bounds. */
export function updateEstimate(site: Site, patch: Patch<Estimate>): Site {
  const estimate = patched<Estimate>(site.estimate ?? {}, patch);
  const changed = estimate !== site.estimate && estimateSchema.safeParse(estimate).success;
  return changed ? { ...site, estimate } : site;
}

/** As `updateEstimate`. */
export function updateSheet(site: Site, patch: Patch<SheetLayout>): Site {
  const sheet = patched<SheetLayout>(site.sheet ?? {}, patch);
  const changed = sheet !== site.sheet && sheetSchema.safeParse(sheet).success;
  return changed ? { ...site, sheet } : site;
}

type Waste = NonNullable<Estimate['waste']>;
type Rates = NonNullable<Estimate['rates']>;
type Pack = NonNullable<Estimate['packs']>[number];
type Price = NonNullable<Estimate['prices']>[number];
export type Extra = NonNullable<Estimate['extras']>[number];

/** A group of fields of which none is stated is left out altogether. */
const stated = <T extends object>(fields: T): T | undefined =>
  Object.keys(fields).length > 0 ? fields : undefined;

/** A share by group; undefined: the usual one again. */
export const updateWaste = (site: Site, patch: Patch<Waste>): Site => {
  const before: Waste = site.estimate?.waste ?? {};
  const waste = patched<Waste>(before, patch);
  return waste === before ? site : updateEstimate(site, { waste: stated(waste) });
};

/** What one crew does in an hour, or how long it takes; undefined: the usual rate again. */
export const updateRates = (site: Site, patch: Patch<Rates>): Site => {
  const before: Rates = site.estimate?.rates ?? {};
  const rates = patched<Rates>(before, patch);
  return rates === before ? site : updateEstimate(site, { rates: stated(rates) });
};

/** With one entry of the item, in its place or at the end; null takes it away. The same list when nothing changes. */
function withEntry<T extends { readonly item: string }>(
  list: readonly T[],
  item: string,
  entry: T | null
): readonly T[] {
  const at = list.findIndex((each) => each.item === item);
  if (at < 0) return entry ? [...list, entry] : list;
  const rest = list.filter((each, index) => index === at || each.item !== item);
  return entry
    ? rest.map((each) => (each.item === item ? entry : each))
    : rest.filter((each) => each.item !== item);
}

const listed = <T>(list: readonly T[]): readonly T[] | undefined => (list.length > 0 ? list : undefined);

/** Of a metre, a cubic metre, a piece or an hour of the item, in the site's currency; null: no price. */
export function setPrice(site: Site, item: string, price: number | null): Site {
  const before: readonly Price[] = site.estimate?.prices ?? [];
  const known = before.find((each) => each.item === item);
  if ((known?.price ?? null) === price) return site;
  const entry = price === null ? null : patched<Price>(known ?? { item, price }, { price });
  return updateEstimate(site, { prices: listed(withEntry(before, item, entry)) });
}

/** Metres, cubic metres or pieces of the item that are bought at once; null: the usual pack again. */
export function setPack(site: Site, item: string, size: number | null): Site {
  const before: readonly Pack[] = site.estimate?.packs ?? [];
  const known = before.find((each) => each.item === item);
  if ((known?.size ?? null) === size) return site;
  const entry = size === null ? null : patched<Pack>(known ?? { item, size }, { size });
  return updateEstimate(site, { packs: listed(withEntry(before, item, entry)) });
}

/** A line of the user's own that is not in the list yet: "X1". */
export const newExtra = (site: Site, name: string): Extra => ({
  id: freeId(site.estimate?.extras ?? [], 'X'),
  name,
  amount: 1,
  unit: 'each'
});

export function addExtra(site: Site, extra: Extra): Site {
  const before = site.estimate?.extras ?? [];
  if (before.length >= COUNTS.prices || before.some(({ id }) => id === extra.id)) return site;
  return updateEstimate(site, { extras: [...before, extra] });
}

export function updateExtra(site: Site, id: string, patch: Patch<Omit<Extra, 'id'>>): Site {
  const before = site.estimate?.extras ?? [];
  const extras = before.map((extra) => (extra.id === id ? patched<Extra>(extra, patch) : extra));
  return extras.every((extra, at) => extra === before[at]) ? site : updateEstimate(site, { extras });
}

/** With what the price book and the packs said of it. */
export function removeExtra(site: Site, id: string): Site {
  const before = site.estimate?.extras ?? [];
  if (!before.some((extra) => extra.id === id)) return site;
  const item = `extra:${id}`;
  const kept = updateEstimate(site, { extras: listed(before.filter((extra) => extra.id !== id)) });
  return setPack(setPrice(kept, item, null), item, null);
}
