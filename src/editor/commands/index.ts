/** All commands: menu, keys and palette read this list. */
import type { Command, KeyInput } from '../types';
import { arrangeCommands } from './arrange/index';
import { cancel } from './cancel';
import { copy, cut, paste, pasteInPlace } from './clipboard';
import { remove } from './delete';
import { duplicate } from './duplicate';
import { fitAll, fitSelection } from './fit';
import { handling } from './handling';
import { redo, undo } from './history';
import { inserts } from './insert';
import { insertMarks } from './insert-mark';
import { insertSteel } from './insert-steel';
import { insertUnderlay } from './insert-underlay';
import { keyText } from './key';
import { nudges } from './nudge';
import { resizes } from './resize';
import { rotateLeft, rotateRight } from './rotate';
import { selectAll } from './select-all';
import { selectLaneLoops } from './select-lane-loops';
import { selectFirst, selectNext, selectPrevious } from './step-through';
import { toggleGrid, toggleGridSnap, toggleObjectSnap } from './switches';
import { toggleArc } from './toggle-arc';
import { toolCommands } from './tools';
import { trueScale } from './true-scale';
import { wiringCommands } from './wiring/index';
import { zoomIn, zoomOut } from './zoom';

export const commands: readonly Command[] = [
  undo,
  redo,
  cut,
  copy,
  paste,
  pasteInPlace,
  duplicate,
  remove,
  selectAll,
  selectLaneLoops,
  selectNext,
  selectPrevious,
  selectFirst,
  ...nudges,
  ...resizes,
  rotateLeft,
  rotateRight,
  ...arrangeCommands,
  ...handling,
  ...wiringCommands,
  ...toolCommands,
  toggleArc,
  ...inserts,
  insertSteel,
  ...insertMarks,
  insertUnderlay,
  zoomIn,
  zoomOut,
  fitAll,
  fitSelection,
  trueScale,
  toggleGrid,
  toggleGridSnap,
  toggleObjectSnap,
  cancel
];

const byKey = new Map(commands.flatMap((command) => command.keys.map((key) => [key, command] as const)));

export const commandForKey = (input: KeyInput): Command | null => byKey.get(keyText(input)) ?? null;
