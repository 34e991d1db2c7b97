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

const VISIBLE = new WeakMap<Site, Site>();

const seen = <T extends { readonly id: string }>(
  site: Site,
  kind: Thing['kind'],
  list: readonly T[]
): readonly T[] => {
  const next = list.filter(({ id }) => !isHidden(site, { kind, id }));
  return next.length === list.length ? list : next;
};

/**
 * What is to be drawn: the same site without what is hidden, the same object if nothing is. Lists that lose nothing are
 * shared. Vehicles are known by their place in the list, so that this is only for drawing them.
 */
export function visibleSite(site: Site): Site {
  const known = VISIBLE.get(site);
  if (known) return known;
  const lists = {
    lanes: seen(site, 'lane', site.lanes),
    marks: seen(site, 'mark', site.marks),
    loops: seen(site, 'loop', site.loops),
    steel: seen(site, 'steel', site.steel),
    paths: seen(site, 'path', site.paths),
    underlays: seen(site, 'underlay', site.underlays),
    probes: site.probes.some(({ hidden }) => hidden)
      ? site.probes.filter(({ hidden }) => !hidden)
      : site.probes
  };
  const isWhole = Object.entries(lists).every(([key, list]) => site[key as keyof typeof lists] === list);
  const visible = isWhole ? site : { ...site, ...lists };
  VISIBLE.set(site, visible);
  return visible;
}
