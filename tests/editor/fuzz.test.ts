/**
 * Random hands on random plans. After every action the document reads back as a file does; taking everything back gives the
 * very first document, repeating everything the last one.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptySite, readSite, writeSite } from '#plan/read';
import type { Point, Site } from '#plan/schema';
import { commands } from '#editor/commands/index';
import { createEditor } from '#editor/create-editor';
import { selectionHandles } from '#editor/handles';
import { DEPTH } from '#editor/history';
import type { Editor, Modifiers, ToolName } from '#editor/types';
import { handOf, type Hand } from './hand';

const SEED = 20_260_417;

interface Hands {
  readonly editor: Editor;
  readonly hand: Hand;
}

interface Model {
  /** Every document since the beginning that an undo has not left behind, the latest last. */
  readonly sites: Site[];
}

/** Whole numbers under the fraction: random doubles crowd round nought, where a drag is no drag. */
const along = (most: number) => fc.integer({ min: -most * 97, max: most * 97 }).map((number) => number / 97);
const point: fc.Arbitrary<Point> = fc.tuple(along(9), along(7));
const held: fc.Arbitrary<Modifiers> = fc.record({
  shift: fc.boolean(),
  alt: fc.boolean(),
  control: fc.boolean()
});
const drawing: fc.Arbitrary<ToolName> = fc.constantFrom(
  'rectangle',
  'quadrupole',
  'diagonal',
  'circle',
  'stop-line',
  'pull-box',
  'cabinet',
  'vehicle'
);
const chains: fc.Arbitrary<ToolName> = fc.constantFrom('polygon', 'lane', 'path');
const command = fc.constantFrom(
  ...commands.map(({ id }) => id).filter((id) => id !== 'undo' && id !== 'redo' && id !== 'select-all')
);

/** Runs the deed, then compares document, history and file with what they must be. */
class Deed implements fc.Command<Model, Hands> {
  constructor(
    private readonly words: string,
    private readonly deed: (hands: Hands) => void
  ) {}
  check = () => true;
  run(model: Model, hands: Hands): void {
    const before = hands.editor.state;
    this.deed(hands);
    const { state } = hands.editor;
    if (state.site !== before.site) {
      // A step that joined the one before leaves one document fewer to come back to.
      if (state.undoLabel?.startsWith('Nudge') && steps(hands.editor) < model.sites.length) model.sites.pop();
      model.sites.push(state.site);
    }
    const read = readSite(writeSite(state.site));
    expect(read.ok ? [] : read.problems.map(({ message }) => message)).toEqual([]);
    expect(state.draft).toBeNull();
    expect(state.busy).toBe(false);
  }
  toString = () => this.words;
}

/** How many undos there are, found on a copy of the walk: back to the start and forward again. */
function steps(editor: Editor): number {
  let count = 0;
  while (editor.state.undoLabel !== null) {
    editor.undo();
    count += 1;
  }
  for (let step = 0; step < count; step++) editor.redo();
  return count;
}

class TakeBack implements fc.Command<Model, Hands> {
  constructor(private readonly times: number) {}
  check = () => true;
  run(model: Model, { editor }: Hands): void {
    const here = model.sites.at(-1);
    const times = Math.min(this.times, model.sites.length - 1);
    for (let step = 1; step <= times; step++) {
      editor.undo();
      expect(editor.state.site).toBe(model.sites.at(-1 - step));
    }
    for (let step = 0; step < times; step++) editor.redo();
    expect(editor.state.site).toBe(here);
  }
  toString = () => `take back ${this.times} and repeat`;
}

const settle = ({ editor }: Hands): void => {
  editor.cancel();
  editor.setTool('select');
};

const deeds = [
  fc.tuple(drawing, point, point, held).map(
    ([tool, from, to, keys]) =>
      new Deed(`draw ${tool} ${String(from)} ${String(to)}`, (hands) => {
        hands.editor.setTool(tool);
        hands.hand.drag(from, to, keys);
        settle(hands);
      })
  ),
  fc.tuple(chains, fc.array(point, { minLength: 1, maxLength: 6 }), held).map(
    ([tool, points, keys]) =>
      new Deed(`draw ${tool} ${points.join(' ')}`, (hands) => {
        hands.editor.setTool(tool);
        for (const at of points) hands.hand.click(at, keys);
        hands.hand.key('Enter');
        settle(hands);
      })
  ),
  fc
    .tuple(point, point, held)
    .map(
      ([from, to, keys]) =>
        new Deed(`drag ${String(from)} ${String(to)}`, (hands) => hands.hand.drag(from, to, keys))
    ),
  fc.tuple(fc.nat(20), point, held).map(
    ([index, to, keys]) =>
      new Deed(`drag handle ${index} to ${String(to)}`, ({ editor, hand }) => {
        const { site, selection, viewport } = editor.state;
        const handles = selectionHandles(site, selection, viewport);
        const handle = handles[index % Math.max(1, handles.length)];
        if (handle) hand.drag(handle.at, to, keys);
      })
  ),
  fc.nat(30).map(
    (index) =>
      new Deed(`select loop ${index}`, ({ editor }) => {
        const loop = editor.state.site.loops[index % Math.max(1, editor.state.site.loops.length)];
        if (loop) editor.select([{ kind: 'loop', id: loop.id }]);
      })
  ),
  command.map(
    (id) =>
      new Deed(`run ${id}`, (hands) => {
        hands.editor.run(id);
        settle(hands);
      })
  ),
  fc.tuple(point, point).map(
    ([from, to]) =>
      new Deed(`begin to drag ${String(from)} ${String(to)} and escape`, ({ editor, hand }) => {
        const { site } = editor.state;
        hand.hold(from, to);
        editor.cancel();
        expect(editor.state.site).toBe(site);
      })
  ),
  fc.integer({ min: 1, max: 5 }).map((times) => new TakeBack(times))
];

describe('a random hand', () => {
  it(
    'never leaves a document that could not be opened, and can take everything back',
    { timeout: 60_000 },
    () => {
      let loopsMade = 0;
      let stepsMade = 0;
      fc.assert(
        fc.property(fc.commands(deeds, { maxCommands: 60, size: 'max' }), (actions) => {
          const start = emptySite();
          const editor = createEditor(start);
          editor.setViewport({ centre: [0, 0], scale: 50, width: 1000, height: 800 });
          const model: Model = { sites: [start] };
          fc.modelRun(() => ({ model, real: { editor, hand: handOf(editor) } }), actions);
          const end = editor.state.site;
          const count = steps(editor);
          expect(count).toBe(Math.min(DEPTH, model.sites.length - 1));
          for (let step = 0; step < count; step++) editor.undo();
          expect(editor.state.site).toBe(start);
          for (let step = 0; step < count; step++) editor.redo();
          expect(editor.state.site).toBe(end);
          loopsMade += end.loops.length;
          stepsMade += count;
        }),
        { seed: SEED, numRuns: 60 }
      );
      // A fuzz that draws nothing proves nothing.
      expect(loopsMade).toBeGreaterThan(100);
      expect(stepsMade).toBeGreaterThan(500);
    }
  );
});
