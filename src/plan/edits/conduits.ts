/** Conduits: which lead-ins lie side by side, and over what length. */
import { COUNTS } from '../bounds';
import { conduit as conduitSchema, type Conduit, type Site } from '../schema';
import { freeId, kept, mapped, patched, withList, type Patch } from './list';

/** Each of its circuits exists, and is named once. */
const isSound = (site: Site, conduit: Conduit): boolean =>
  conduitSchema.safeParse(conduit).success &&
  new Set(conduit.circuits).size === conduit.circuits.length &&
  conduit.circuits.every((id) => site.circuits.some((circuit) => circuit.id === id));

export const newConduit = (site: Site, circuits: readonly string[], length: number): Conduit => ({
  id: freeId(site.conduits, 'D'),
  name: '',
  circuits,
  length
});

export function addConduit(site: Site, conduit: Conduit): Site {
  const taken = site.conduits.some(({ id }) => id === conduit.id);
  if (taken || site.conduits.length >= COUNTS.conduits || !isSound(site, conduit)) return site;
  return { ...site, conduits: [...site.conduits, conduit] };
}

/** The same site when nothing changes or the result would not be sound. */
export function updateConduit(site: Site, id: string, patch: Patch<Omit<Conduit, 'id'>>): Site {
  const conduits = mapped(site.conduits, (conduit) => {
    const next = conduit.id === id ? patched<Conduit>(conduit, patch) : conduit;
    return next === conduit || isSound(site, next) ? next : conduit;
  });
  return withList(site, 'conduits', conduits);
}

export const removeConduit = (site: Site, id: string): Site =>
  withList(
    site,
    'conduits',
    kept(site.conduits, (conduit) => conduit.id !== id)
  );
