/** What a random hand does. Each deed says in words what it did, so that a failure can be read. */
import { readThings, writeThings } from '#plan/things-text';
import { setLayer, updateSite } from '#plan/edits/index';
import { LAYERS } from '#plan/layers';
import type { Site } from '#plan/schema';
import { repeatSelection, setGap } from '#editor/arranging';
import { commands } from '#editor/commands/index';
import { selectionHandles } from '#editor/handles';
import { allRefs } from '#editor/selection';
import type { Editor, ToolName } from '#editor/types';
import { expect } from 'vitest';
import type { Hand } from '../hand';
import type { Chance } from './chance';

export interface Hands {
  readonly editor: Editor;
  readonly hand: Hand;
  readonly chance: Chance;
}
type Deed = (hands: Hands) => string;

const DRAGS: readonly ToolName[] = [
  'rectangle',
  'quadrupole',
  'diagonal',
  'circle',
  'stop-line',
  'steel',
  'cover',
  'island',
  'gate',
  'arrow',
  'joint'
];
const PLACES: readonly ToolName[] = ['pull-box', 'cabinet', 'vehicle', 'note'];
const CHAINS: readonly ToolName[] = ['polygon', 'lane', 'path', 'kerb', 'conduit', 'steel', 'dimension'];
const COMMANDS = commands.map(({ id }) => id).filter((id) => id !== 'undo' && id !== 'redo');

function settle({ editor }: Hands): void {
  editor.cancel();
  editor.setTool('select');
}

const draw: Deed = (hands) => {
  const { editor, hand, chance } = hands;
  const tool = chance.of(DRAGS);
  const [from, to] = [chance.point(), chance.point()];
  editor.setTool(tool);
  hand.drag(from, to, chance.held());
  settle(hands);
  return `draw ${tool} ${String(from)} ${String(to)}`;
};

const place: Deed = (hands) => {
  const tool = hands.chance.of(PLACES);
  const at = hands.chance.point();
  hands.editor.setTool(tool);
  hands.hand.click(at);
  settle(hands);
  return `place ${tool} ${String(at)}`;
};

const chain: Deed = (hands) => {
  const { editor, hand, chance } = hands;
  const tool = chance.of(CHAINS);
  const points = Array.from({ length: 1 + chance.below(6) }, () => chance.point());
  editor.setTool(tool);
  for (const at of points) {
    hand.hover(at);
    hand.click(at, chance.held());
  }
  hand.key('Enter');
  settle(hands);
  return `draw ${tool} ${points.join(' ')}`;
};

/** Sizes typed in the middle of a gesture, some of them nonsense. */
const type: Deed = (hands) => {
  const { editor, hand, chance } = hands;
  const tool = chance.of([...DRAGS, 'select'] as const);
  const [from, to] = [chance.point(), chance.point()];
  const keys = Array.from({ length: 1 + chance.below(8) }, () =>
    chance.of(['1', '2', '4', '.', '5', 'Tab', 'Backspace', '@', '<', 'm', '-'] as const)
  );
  const end = chance.of(['Enter', 'Enter', 'Escape'] as const);
  editor.setTool(tool);
  hand.hold(from, to);
  for (const key of [...keys, end]) hand.key(key);
  hand.send('up', to);
  settle(hands);
  return `hold ${tool} ${String(from)} ${String(to)} and type ${keys.join(' ')} ${end}`;
};

const drag: Deed = ({ hand, chance }) => {
  const [from, to, held] = [chance.point(), chance.point(), chance.held()];
  hand.drag(from, to, held);
  return `drag ${String(from)} ${String(to)} ${JSON.stringify(held)}`;
};

const pull: Deed = ({ editor, hand, chance }) => {
  const { site, selection, viewport } = editor.state;
  const handles = selectionHandles(site, selection, viewport);
  if (handles.length === 0) return 'no handle to pull';
  const [handle, to] = [chance.of(handles), chance.point()];
  hand.drag(handle.at, to, chance.held());
  return `pull ${handle.kind} ${handle.id} to ${String(to)}`;
};

const select: Deed = ({ editor, chance }) => {
  const refs = allRefs(editor.state.site);
  if (refs.length === 0) return 'nothing to select';
  const chosen = chance.some(refs, 5);
  editor.select(chosen.filter((ref, at) => chosen.indexOf(ref) === at));
  return `select ${chosen.map(({ kind, id }) => `${kind} ${id}`).join(', ')}`;
};

const command: Deed = (hands) => {
  const id = hands.chance.of(COMMANDS);
  const did = hands.editor.run(id);
  hands.editor.ask(null);
  settle(hands);
  return `run ${id}: ${String(did)}`;
};

const escape: Deed = ({ editor, hand, chance }) => {
  const { site, tool } = editor.state;
  const [from, to] = [chance.point(), chance.point()];
  hand.hold(from, to);
  editor.cancel();
  expect(editor.state.site).toBe(site);
  expect(editor.state.tool).toBe(tool);
  return `begin to drag ${String(from)} ${String(to)} and escape`;
};

const layer: Deed = ({ editor, chance }) => {
  const [name, how, isOn] = [chance.of(LAYERS), chance.of(['locked', 'hidden'] as const), chance.yes(0.4)];
  editor.commit({ label: `layer ${name}`, site: setLayer(editor.state.site, name, how, isOn) });
  return `layer ${name} ${how} ${String(isOn)}`;
};

const gap: Deed = ({ editor, chance }) => {
  const row = chance.of([...editor.state.site.lanes, 'x', 'y'] as const);
  const metres = chance.next() * 4 - 0.5;
  const did = setGap(editor, row, metres);
  return `gap ${metres} along ${typeof row === 'string' ? row : row.id}: ${String(did)}`;
};

const repeat: Deed = ({ editor, chance }) => {
  const { lanes } = editor.state.site;
  if (lanes.length === 0 || editor.state.selection.length === 0) return 'nothing to repeat';
  const [lane, count, pitch] = [chance.of(lanes), 1 + chance.below(3), chance.next() * 8 - 3];
  const { made } = repeatSelection(editor, lane, count, pitch);
  return `repeat ${count} at ${pitch} along ${lane.id}: ${made}`;
};

/** By way of the text that other windows would get. */
const carry: Deed = ({ editor, hand, chance }) => {
  if (!editor.run('copy')) return 'nothing to copy';
  const { site, refs, standing } = editor.scratch.clipboard!;
  const reading = readThings(writeThings({ site, things: refs, standing }));
  expect(reading.kind).toBe('things');
  if (reading.kind !== 'things') return 'refused';
  expect(reading.things).toEqual(refs);
  editor.scratch.clipboard = { site: reading.site, refs: reading.things, standing: reading.standing };
  if (chance.yes(0.5)) hand.hover(chance.point());
  else hand.send('leave', [0, 0]);
  editor.run(chance.of(['paste', 'paste-in-place'] as const));
  return `carry ${refs.length} things`;
};

/** No stored length depends on how lengths are shown. */
const units: Deed = ({ editor }) => {
  const before = editor.state.site;
  const displayUnits = before.displayUnits === 'metric' ? 'imperial' : 'metric';
  editor.commit({ label: 'units', site: updateSite(before, { displayUnits }) });
  const bare = (site: Site): string => JSON.stringify({ ...site, displayUnits: null });
  expect(bare(editor.state.site)).toBe(bare(before));
  return `show ${displayUnits}`;
};

/** More often what makes and moves things than what looks at them. */
export const DEEDS: readonly (readonly [weight: number, deed: Deed])[] = [
  [10, draw],
  [5, place],
  [6, chain],
  [8, type],
  [12, drag],
  [8, pull],
  [14, select],
  [24, command],
  [4, escape],
  [2, layer],
  [3, gap],
  [2, repeat],
  [3, carry],
  [1, units]
];
