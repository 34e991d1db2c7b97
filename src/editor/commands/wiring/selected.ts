import { circuitWith } from '#plan/wiring';
import type { Circuit, Site } from '#plan/schema';
import type { EditorState } from '../../types';

export const selectedLoops = ({ selection }: EditorState): string[] =>
  selection.filter(({ kind }) => kind === 'loop').map(({ id }) => id);

/** Circuits that the selected loops belong to, in the document's order. */
export function circuitsOf(state: EditorState): Circuit[] {
  const found = new Set(selectedLoops(state).map((id) => circuitWith(state.site, id)));
  return state.site.circuits.filter((circuit) => found.has(circuit));
}

/** Nothing is in hand and the edit would change the site. */
export const wouldChange = (
  state: EditorState,
  edit: (site: Site, loops: readonly string[]) => Site
): boolean => !state.busy && edit(state.site, selectedLoops(state)) !== state.site;
