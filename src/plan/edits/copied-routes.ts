/** Where the ways of copied loops lead: to the copies of their marks, or to marks that stand where they stood. */
import type { Circuit, Loop, Mark, Site } from '../schema';
import { patched } from './list';

export interface MarkCopies {
  /** Id of the copy, for each mark that is copied. */
  readonly ids: ReadonlyMap<string, string>;
  /** Marks of the document that the copies come from. */
  readonly standing: readonly Mark[];
}

/** The very mark is in the site: the copies came from there, or from the same plan. */
function stands(site: Site, standing: readonly Mark[], id: string): boolean {
  const was = standing.find((mark) => mark.id === id);
  const is = site.marks.find((mark) => mark.id === id);
  return was !== undefined && JSON.stringify(was) === JSON.stringify(is);
}

/** To a mark that is not copied the way is straight again: its points belong to the loop that it was drawn for. */
export function copiedTail(site: Site, tail: Loop['tail'], { ids, standing }: MarkCopies): Loop['tail'] {
  const { route } = tail;
  if (!route) return tail;
  const to = ids.get(route.to);
  if (to !== undefined) return { ...tail, route: { ...route, to } };
  if (stands(site, standing, route.to)) return { ...tail, route: { ...route, via: [] } };
  return patched<Loop['tail']>(tail, { route: undefined });
}

/** Between copies it is a copy, between marks that stand it is the same way; between one and the other there is none. */
export function copiedLeadIn(
  site: Site,
  leadIn: Circuit['leadIn'],
  { ids, standing }: MarkCopies
): Circuit['leadIn'] {
  const { route } = leadIn;
  if (!route) return leadIn;
  const [from, to] = [ids.get(route.from), ids.get(route.to)];
  if (from !== undefined && to !== undefined) return { ...leadIn, route: { ...route, from, to } };
  const both = stands(site, standing, route.from) && stands(site, standing, route.to);
  const isWhole = from === undefined && to === undefined && both;
  return isWhole ? leadIn : patched<Circuit['leadIn']>(leadIn, { route: undefined });
}
