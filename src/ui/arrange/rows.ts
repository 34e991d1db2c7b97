/** Lanes to arrange along: the one that the selection lies in first. */
import { laneMeant } from '#editor/arranging';
import type { EditorState } from '#editor/types';
import type { Lane } from '#plan/schema';

export function lanesOffered(state: EditorState): readonly Lane[] {
  const meant = laneMeant(state);
  return meant ? [meant, ...state.site.lanes.filter((lane) => lane !== meant)] : state.site.lanes;
}
