/**
 * The document's lists as far as they can be read. Cross checks run on these, so that a file with a wrong field in one
 * loop still hears about the dangling reference in another; an entry that the schema refuses is left out, but its id
 * counts as present.
 */
import type { z } from 'zod';
import { site } from '../schema';

const ELEMENTS = {
  lanes: site.shape.lanes.unwrap().element,
  marks: site.shape.marks.unwrap().element,
  loops: site.shape.loops.unwrap().element,
  wires: site.shape.wires.unwrap().element,
  cables: site.shape.cables.unwrap().element,
  circuits: site.shape.circuits.unwrap().element,
  units: site.shape.units.unwrap().element,
  conduits: site.shape.conduits.unwrap().element,
  vehicles: site.shape.vehicles.unwrap().element,
  probes: site.shape.probes.unwrap().element,
  paths: site.shape.paths.unwrap().element,
  underlays: site.shape.underlays.unwrap().element,
  steel: site.shape.steel.unwrap().element,
  readings: site.shape.readings.unwrap().element
} as const;

export type ListName = keyof typeof ELEMENTS;
export const LIST_NAMES = Object.keys(ELEMENTS) as readonly ListName[];

interface Entry<T> {
  readonly index: number;
  readonly value: T;
}

export type Lists = {
  readonly [K in ListName]: readonly Entry<z.infer<(typeof ELEMENTS)[K]>>[];
};

const rawList = (document: object, name: ListName): readonly unknown[] => {
  const list = (document as Readonly<Record<string, unknown>>)[name];
  return Array.isArray(list) ? (list as unknown[]) : [];
};

export function readableLists(document: object): Lists {
  const entries = LIST_NAMES.map((name) => {
    const readable = rawList(document, name).flatMap((raw, index) => {
      const result = ELEMENTS[name].safeParse(raw);
      return result.success ? [{ index, value: result.data }] : [];
    });
    return [name, readable] as const;
  });
  return Object.fromEntries(entries) as unknown as Lists;
}

/** Ids of a list with the places where each stands, sound entries or not. */
export function idsOf(document: object, name: ListName): ReadonlyMap<string, readonly number[]> {
  const places = new Map<string, number[]>();
  rawList(document, name).forEach((raw, index) => {
    const id: unknown = typeof raw === 'object' && raw !== null && 'id' in raw ? raw.id : undefined;
    if (typeof id !== 'string') return;
    const at = places.get(id);
    if (at) at.push(index);
    else places.set(id, [index]);
  });
  return places;
}
