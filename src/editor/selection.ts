import { t } from '#i18n/message';
import type { Saying } from '#i18n/saying';
import { isHidden } from '#plan/layers';
import type { Site } from '#plan/schema';
import type { Ref } from './types';

export const sameRef = (a: Ref | null, b: Ref | null): boolean =>
  a === b || (a !== null && b !== null && a.kind === b.kind && a.id === b.id);

export const includesRef = (refs: readonly Ref[], ref: Ref): boolean =>
  refs.some((each) => sameRef(each, ref));

/** What shift-click does: adds the thing, or takes it out again. */
export const toggled = (refs: readonly Ref[], ref: Ref): Ref[] =>
  includesRef(refs, ref) ? refs.filter((each) => !sameRef(each, ref)) : [...refs, ref];

export const united = (refs: readonly Ref[], more: readonly Ref[]): Ref[] => [
  ...refs,
  ...more.filter((ref) => !includesRef(refs, ref))
];

export const sameSelection = (a: readonly Ref[], b: readonly Ref[]): boolean =>
  a === b || (a.length === b.length && a.every((ref, index) => sameRef(ref, b[index]!)));

export const allRefs = (site: Site): Ref[] => [
  ...site.underlays.map(({ id }): Ref => ({ kind: 'underlay', id })),
  ...site.lanes.map(({ id }): Ref => ({ kind: 'lane', id })),
  ...site.marks.map(({ id }): Ref => ({ kind: 'mark', id })),
  ...site.steel.map(({ id }): Ref => ({ kind: 'steel', id })),
  ...site.loops.map(({ id }): Ref => ({ kind: 'loop', id })),
  ...site.paths.map(({ id }): Ref => ({ kind: 'path', id })),
  ...site.probes.map((_, index): Ref => ({ kind: 'probe', id: String(index) }))
];

function refExists(site: Site, { kind, id }: Ref): boolean {
  switch (kind) {
    case 'loop':
      return site.loops.some((loop) => loop.id === id);
    case 'lane':
      return site.lanes.some((lane) => lane.id === id);
    case 'mark':
      return site.marks.some((mark) => mark.id === id);
    case 'steel':
      return site.steel.some((steel) => steel.id === id);
    case 'path':
      return site.paths.some((path) => path.id === id);
    case 'underlay':
      return site.underlays.some((underlay) => underlay.id === id);
    case 'probe':
      return site.probes[Number(id)] !== undefined;
  }
}

/** The selection without what is no longer there; the same array if all of it is. */
export function stillThere(site: Site, refs: readonly Ref[]): readonly Ref[] {
  const kept = refs.filter((ref) => refExists(site, ref));
  return kept.length === refs.length ? refs : kept;
}

/** What can be seen, and so be meant by "everything". */
export const seenRefs = (site: Site): Ref[] => allRefs(site).filter((ref) => !isHidden(site, ref));

/** "loop", "3 loops", "5 things": for the names of steps. */
export function describeRefs(refs: readonly Ref[]): string {
  const kinds = new Set(refs.map((ref) => ref.kind));
  const [kind] = kinds;
  if (kind === undefined) return t('things.none');
  const count = refs.length;
  return kinds.size > 1 ? t('things.mixed', { count }) : t(`things.${kind}`, { count });
}

/** The same, for words that are kept. */
export const sayRefs =
  (refs: readonly Ref[]): Saying =>
  () =>
    describeRefs(refs);
