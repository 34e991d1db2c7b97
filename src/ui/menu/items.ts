/** What the context menu offers, group by group; what does not apply now is left out, apart from what is always looked for. */
import type { CommandId, EditorState } from '#editor/types';
import type { PageCommandId } from '../commands';

export type ItemId = CommandId | `page-${PageCommandId}`;

const CLIPBOARD = ['cut', 'copy', 'paste', 'paste-in-place'] as const;
const ON_THINGS: readonly (readonly ItemId[])[] = [
  [...CLIPBOARD, 'duplicate', 'delete'],
  ['lock', 'hide'],
  ['select-lane-loops', 'fit-selection'],
  [
    'centre-in-lane',
    'repeat-along-lane',
    'set-gap',
    'distribute-lane',
    'mirror-lane',
    'rotate-left',
    'rotate-right'
  ],
  ['join-in-series', 'join-in-parallel', 'split-circuit', 'reverse-winding', 'lead-out', 'lead-in'],
  ['page-palette']
];

const ON_GROUND: readonly (readonly ItemId[])[] = [
  ['paste', 'paste-in-place'],
  ['undo', 'redo'],
  ['select-all', 'show-all', 'unlock-all'],
  ['fit-all', 'toggle-grid', 'toggle-grid-snap', 'toggle-object-snap'],
  ['page-layers', 'page-palette']
];

/** Shown although they may not apply: people look for them there. */
export const ALWAYS: ReadonlySet<string> = new Set(['cut', 'copy', 'paste', 'duplicate', 'delete']);

export const menuFor = ({ selection }: Pick<EditorState, 'selection'>): readonly (readonly ItemId[])[] =>
  selection.length > 0 ? ON_THINGS : ON_GROUND;
