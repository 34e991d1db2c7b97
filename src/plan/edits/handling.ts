/** Locking and hiding, thing by thing and layer by layer. Neither changes a figure. */
import type { LayerName, Site } from '../schema';
import { LAYERS } from '../layers';
import { mapped, patched, withList } from './list';
import { idsOf, type Thing } from './thing';

export type Handling = 'locked' | 'hidden';

interface Handled {
  readonly locked?: boolean | undefined;
  readonly hidden?: boolean | undefined;
}

const LISTS = [
  ['lanes', 'lane'],
  ['marks', 'mark'],
  ['loops', 'loop'],
  ['steel', 'steel'],
  ['paths', 'path'],
  ['underlays', 'underlay']
] as const satisfies readonly (readonly [keyof Site, Thing['kind']])[];

/** "No" stands in the document only for pictures, whose usual answer is "yes". */
function marked<T extends Handled>(thing: T, how: Handling, isOn: boolean, isSaid = false): T {
  if ((thing[how] ?? false) === isOn) return thing;
  return patched<Handled>(thing, { [how]: isOn || isSaid ? isOn : undefined }) as T;
}

/** Every list by its own type, which the compiler cannot follow through a loop over lists. */
function withMarked(
  site: Site,
  change: <T extends Handled>(thing: T, kind: Thing['kind'], id: string) => T
): Site {
  const lists = LISTS.reduce<Site>((result, [list, kind]) => {
    const things = result[list] as readonly (Handled & { readonly id: string })[];
    const next = mapped(things, (thing) => change(thing, kind, thing.id));
    return next === things ? result : { ...result, [list]: next };
  }, site);
  return withList(
    lists,
    'probes',
    mapped(lists.probes, (probe, index) => change(probe, 'probe', String(index)))
  );
}

export function setHandling(site: Site, things: readonly Thing[], how: Handling, isOn: boolean): Site {
  const ids = new Map(
    (['lane', 'mark', 'loop', 'steel', 'path', 'underlay', 'probe'] as const).map(
      (kind) => [kind, idsOf(things, kind)] as const
    )
  );
  return withMarked(site, (thing, kind, id) =>
    ids.get(kind)?.has(id) ? marked(thing, how, isOn, kind === 'underlay' && how === 'locked') : thing
  );
}

export function setLayer(site: Site, layer: LayerName, how: Handling, isOn: boolean): Site {
  const now = site.layers?.[layer] ?? {};
  const next = marked<Handled>(now, how, isOn);
  if (next === now) return site;
  const layers = patched<NonNullable<Site['layers']>>(site.layers ?? {}, {
    [layer]: Object.keys(next).length === 0 ? undefined : next
  });
  return patched<Site>(site, { layers: Object.keys(layers).length === 0 ? undefined : layers });
}

const withAllLayers = (site: Site, how: Handling): Site =>
  LAYERS.reduce((result, layer) => setLayer(result, layer, how, false), site);

/** Layers too. Pictures keep their own lock: they are the paper that is drawn on. */
export const unlockAll = (site: Site): Site =>
  withMarked(withAllLayers(site, 'locked'), (thing, kind) =>
    kind === 'underlay' ? thing : marked(thing, 'locked', false)
  );

export const showAll = (site: Site): Site =>
  withMarked(withAllLayers(site, 'hidden'), (thing) => marked(thing, 'hidden', false));
