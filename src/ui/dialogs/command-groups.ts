/** How the list of keys sorts the commands. */
import { commands } from '#editor/commands/index';
import type { Command } from '#editor/types';

export const COMMAND_GROUPS = ['edit', 'move', 'tools', 'insert', 'wiring', 'view'] as const;
export type CommandGroup = (typeof COMMAND_GROUPS)[number];

/** By how a command's id begins; the first that fits. What fits none is editing. */
const BEGINNINGS: readonly (readonly [group: CommandGroup, beginnings: RegExp])[] = [
  ['tools', /^tool-/],
  ['insert', /^insert-/],
  ['wiring', /^(join-|split-circuit|reverse-winding|lead-)/],
  ['view', /^(zoom-|fit-|true-scale|toggle-|show-|snap)/],
  ['move', /^(nudge-|rotate-|mirror|align|centre-|distribute|gap|repeat|turn-|flip|arrange|set-gap|space)/]
];

const groupOf = ({ id }: Command): CommandGroup =>
  BEGINNINGS.find(([, beginning]) => beginning.test(id))?.[0] ?? 'edit';

export const commandsOf = (group: CommandGroup): readonly Command[] =>
  commands.filter((command) => groupOf(command) === group);

/** A line of the list. */
export interface KeyRow {
  readonly id: string;
  readonly label: string;
  /** As `writtenKeys` reads them, or in words where it is no key. */
  readonly keys: readonly string[];
}
