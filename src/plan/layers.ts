/** The four layers of every plan, and what hiding and locking mean. Neither changes a figure. */
import type { LayerName, MarkKind, Site } from './schema';
import type { Thing } from './edits/thing';

/** From the bottom to the top. */
export const LAYERS: readonly LayerName[] = ['underlay', 'lanes', 'loops', 'notes'];

const OF_MARK: Readonly<Record<MarkKind, LayerName>> = {
  'stop-line': 'lanes',
  kerb: 'lanes',
  gate: 'lanes',
  cover: 'lanes',
  joint: 'lanes',
  island: 'lanes',
  arrow: 'lanes',
  'pull-box': 'loops',
  cabinet: 'loops',
  conduit: 'loops',
  note: 'notes',
  dimension: 'notes'
};

type Handled = { readonly locked?: boolean | undefined; readonly hidden?: boolean | undefined };

function found(site: Site, { kind, id }: Thing): Handled | undefined {
  const byId = (list: readonly (Handled & { readonly id: string })[]) => list.find((each) => each.id === id);
  switch (kind) {
    case 'loop':
      return byId(site.loops);
    case 'lane':
      return byId(site.lanes);
    case 'mark':
      return byId(site.marks);
    case 'steel':
      return byId(site.steel);
    case 'path':
      return byId(site.paths);
    case 'underlay':
      return byId(site.underlays);
    case 'probe':
      return site.probes[Number(id)];
  }
}

/** Null for a vehicle: it stands on the road, whatever is drawn there. */
export function layerOf(site: Site, { kind, id }: Thing): LayerName | null {
  if (kind === 'mark') {
    const mark = site.marks.find((each) => each.id === id);
    return mark ? OF_MARK[mark.kind] : null;
  }
  if (kind === 'probe') return null;
  if (kind === 'underlay') return 'underlay';
  return kind === 'loop' ? 'loops' : 'lanes';
}

/** Its own lock, or its layer's. */
export function isLocked(site: Site, thing: Thing): boolean {
  const layer = layerOf(site, thing);
  return found(site, thing)?.locked === true || (layer !== null && site.layers?.[layer]?.locked === true);
}

export function isHidden(site: Site, thing: Thing): boolean {
  const layer = layerOf(site, thing);
  return found(site, thing)?.hidden === true || (layer !== null && site.layers?.[layer]?.hidden === true);
}

interface Sifted {
  readonly layers: Site['layers'];
  readonly seen: readonly unknown[];
}
const SIFTED = new WeakMap<readonly unknown[], Sifted>();

/** The list without what is hidden, the same list if nothing is, and the same result while list and layers are. */
function seen<T extends Handled>(
  { layers }: Site,
  list: readonly T[],
  layer: (thing: T) => LayerName | null
): readonly T[] {
  const known = SIFTED.get(list);
  if (known?.layers === layers && known) return known.seen as readonly T[];
  const kept = list.filter((thing) => {
    const on = layer(thing);
    return thing.hidden !== true && (on === null || layers?.[on]?.hidden !== true);
  });
  const result = kept.length === list.length ? list : kept;
  SIFTED.set(list, { layers, seen: result });
  return result;
}

/**
 * What is to be drawn: the same site without what is hidden, the same object if nothing is. Vehicles are known by their
 * place in the list, so that this is only for drawing them.
 */
export function visibleSite(site: Site): Site {
  const lists = {
    lanes: seen(site, site.lanes, () => 'lanes'),
    marks: seen(site, site.marks, ({ kind }) => OF_MARK[kind]),
    loops: seen(site, site.loops, () => 'loops'),
    steel: seen(site, site.steel, () => 'lanes'),
    paths: seen(site, site.paths, () => 'lanes'),
    probes: seen(site, site.probes, () => null)
  };
  const isWhole = Object.entries(lists).every(([key, list]) => site[key as keyof typeof lists] === list);
  return isWhole ? site : { ...site, ...lists };
}
