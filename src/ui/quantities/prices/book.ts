/** Entries of the price book: what the site needs, and what the book knows beside that. */
import type { Takeoff, TakeoffItem, TakeoffUnit } from '#analysis/takeoff/results';
import { packOf, priceOf } from '#plan/catalogue/estimate';
import type { Site } from '#plan/schema';

export interface Entry {
  readonly item: string;
  readonly unit: TakeoffUnit;
  /** Null where the site does not need it now. */
  readonly needed: TakeoffItem | null;
  /** For one stored unit. */
  readonly price: number | null;
  /** What is stated to be bought at once. */
  readonly pack: number | null;
  /** Null where it is not bought in packs. */
  readonly usualPack: number | null;
}

const isExtra = (item: string): boolean => item.startsWith('extra:');

const UNITS: readonly (readonly [beginning: string, unit: TakeoffUnit])[] = [
  ['wire:', 'm'],
  ['cable:', 'm'],
  ['saw:', 'm'],
  ['conduit', 'm'],
  ['sealant', 'm3'],
  ['crew', 'h']
];

const unitOf = (item: string): TakeoffUnit =>
  UNITS.find(([beginning]) => item.startsWith(beginning))?.[1] ?? 'each';

/** Lines of the user's own have prices of their own and are no entries. */
export function entriesOf(site: Site, { items }: Takeoff): readonly Entry[] {
  const { prices = [], packs = [] } = site.estimate ?? {};
  const needed = new Map(items.map((each) => [each.item, each]));
  const all = [...needed.keys(), ...prices.map(({ item }) => item), ...packs.map(({ item }) => item)];
  return [...new Set(all)]
    .filter((item) => !isExtra(item))
    .map((item) => ({
      item,
      unit: needed.get(item)?.unit ?? unitOf(item),
      needed: needed.get(item) ?? null,
      price: priceOf(site, item),
      pack: packs.find((pack) => pack.item === item)?.size ?? null,
      usualPack: packOf({}, item)
    }));
}
