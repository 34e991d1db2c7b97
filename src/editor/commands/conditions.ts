import type { EditorState } from '../types';

/** Something is selected and no gesture is in hand that works on it. */
export const hasSelection = ({ selection, busy }: EditorState): boolean => selection.length > 0 && !busy;
