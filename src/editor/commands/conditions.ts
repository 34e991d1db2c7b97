import type { EditorState } from '../types';

/** Something is selected and no gesture is in hand that works on it. */
export const hasSelection = ({ selection, busy }: EditorState): boolean => selection.length > 0 && !busy;

/** So many things are selected, and what is done to them could be kept. */
export const hasSeveral =
  (least: number) =>
  ({ selection, busy, isReadOnly }: EditorState): boolean =>
    selection.length >= least && !busy && !isReadOnly;
