/** Lines gathered into what is bought, and what that costs. */
import { cableOf } from '#plan/catalogue/cables';
import { packOf, priceOf } from '#plan/catalogue/estimate';
import { wireOf } from '#plan/catalogue/wires';
import type { Site } from '#plan/schema';
import { TAKEOFF_GROUPS, type TakeoffItem, type TakeoffLine } from './results';

/** kg/m³, of copper at 20 °C: the usual handbook value, from memory. */
const COPPER_DENSITY = 8_960;

/** Kilograms a metre of the item; null where it is no conductor or its size is not known. Both wires of a cable. */
export function copperPerMetre(site: Pick<Site, 'wires' | 'cables'>, item: string): number | null {
  const [kind, ...rest] = item.split(':');
  const id = rest.join(':');
  const wires = kind === 'wire' ? 1 : kind === 'cable' ? 2 : 0;
  const diameter = wires === 1 ? wireOf(id, site)?.conductorDiameter : wires === 2 ? cableOf(id, site)?.conductorDiameter : undefined; // prettier-ignore
  return diameter === undefined ? null : (wires * COPPER_DENSITY * Math.PI * diameter * diameter) / 4;
}

/** A line of the user's own may state its price itself; the price book comes first. */
export const priceIn = (site: Pick<Site, 'estimate'>, item: string): number | null =>
  priceOf(site, item) ?? site.estimate?.extras?.find(({ id }) => item === `extra:${id}`)?.price ?? null;

/** So that whoever adds up what is shown comes to the total. */
const toTheCent = (cost: number): number => Math.round(cost * 100) / 100;

function itemOf(site: Site, item: string, lines: readonly TakeoffLine[]): TakeoffItem {
  const [{ group, unit }] = lines as [TakeoffLine, ...TakeoffLine[]];
  const amount = lines.reduce((sum, line) => sum + line.amount, 0);
  const gross = lines.reduce((sum, line) => sum + line.gross, 0);
  const pack = packOf(site, item);
  // rounding of sums must not buy one more
  const packs = site.estimate?.wholePacks && pack !== null ? Math.ceil(gross / pack - 1e-9) : null;
  // nobody sells half a piece; what the user states himself stays as stated
  const isWhole = unit === 'each' && group !== 'extra';
  const bought = packs !== null && pack !== null ? packs * pack : isWhole ? Math.ceil(gross - 1e-9) : gross;
  const price = priceIn(site, item);
  const copper = copperPerMetre(site, item);
  return {
    item,
    group,
    unit,
    amount,
    gross,
    pack,
    packs,
    bought,
    price,
    cost: price === null ? null : toTheCent(price * bought),
    copper_kg: copper === null ? null : copper * gross
  };
}

/** Group by group, and in each in the order in which the lines name them. */
export function itemsOf(site: Site, lines: readonly TakeoffLine[]): readonly TakeoffItem[] {
  const groups = new Map<string, TakeoffLine[]>();
  for (const line of lines) {
    const group = groups.get(line.item);
    if (group) group.push(line);
    else groups.set(line.item, [line]);
  }
  return [...groups]
    .map(([item, group]) => itemOf(site, item, group))
    .sort((a, b) => TAKEOFF_GROUPS.indexOf(a.group) - TAKEOFF_GROUPS.indexOf(b.group));
}
