/** Own wires and cables that come along with copies into a site that does not have them. */
import { COUNTS } from '../bounds';
import { builtInCables } from '../catalogue/cables';
import { catalogueVehicles } from '../catalogue/vehicles';
import { builtInWires } from '../catalogue/wires';
import type { Site } from '../schema';
import { freeId } from './list';

interface Brought {
  readonly site: Site;
  /** What it is called there. */
  readonly id: string;
}

interface Entry {
  readonly id: string;
}

/** Apart from the id. */
const isAlike = (a: Entry, b: Entry): boolean =>
  JSON.stringify({ ...a, id: '' }) === JSON.stringify({ ...b, id: '' });

function brought<E extends Entry>(
  own: readonly E[],
  builtIn: readonly Entry[],
  origin: readonly E[],
  id: string,
  how: { readonly prefix: string; readonly most: number; readonly instead: string }
): { readonly id: string; readonly added?: E } {
  const entry = origin.find((each) => each.id === id);
  const isKnown = (known: readonly Entry[]): boolean => known.some((each) => each.id === id);
  if (!entry) return { id: isKnown(own) || isKnown(builtIn) ? id : how.instead };
  const same =
    own.find((each) => each.id === id && isAlike(each, entry)) ?? own.find((each) => isAlike(each, entry));
  if (same) return { id: same.id };
  if (own.length >= how.most) return { id: how.instead };
  const free = isKnown(own) || isKnown(builtIn) ? freeId(own, how.prefix) : id;
  return { id: free, added: { ...entry, id: free } };
}

/** The wire as a loop of `from` knows it; the usual one where the site has no room for another. */
export function bringWire(site: Site, from: Site, id: string): Brought {
  const how = { prefix: 'w', most: COUNTS.wires, instead: 'awg14' };
  const { added, ...found } = brought(site.wires, builtInWires, from.wires, id, how);
  return { site: added ? { ...site, wires: [...site.wires, added] } : site, id: found.id };
}

export function bringCable(site: Site, from: Site, id: string): Brought {
  const how = { prefix: 'k', most: COUNTS.cables, instead: 'pair-14' };
  const { added, ...found } = brought(site.cables, builtInCables, from.cables, id, how);
  return { site: added ? { ...site, cables: [...site.cables, added] } : site, id: found.id };
}

export function bringVehicle(site: Site, from: Site, id: string): Brought {
  const how = { prefix: 'v', most: COUNTS.vehicles, instead: 'car' };
  const { added, ...found } = brought(site.vehicles, catalogueVehicles, from.vehicles, id, how);
  return { site: added ? { ...site, vehicles: [...site.vehicles, added] } : site, id: found.id };
}
