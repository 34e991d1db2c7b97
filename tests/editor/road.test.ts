/** What the tools for the road, and for what stands and is written on it, leave behind. */
import { describe, expect, it } from 'vitest';
import type { Mark, Point } from '#plan/schema';
import type { Editor, ToolName } from '#editor/types';
import { openEditor, withoutSnap } from './hand';
import { siteWith } from './sites';

function opened(tool: ToolName, parts: Parameters<typeof siteWith>[0] = {}) {
  const made = openEditor(siteWith(parts));
  withoutSnap(made.editor);
  made.editor.setTool(tool);
  return made;
}

const lastMark = (editor: Editor): Mark => editor.state.site.marks.at(-1)!;
const straight = { id: 'lane1', centreline: [[1, -5], [1, 5]], width: 4 }; // prettier-ignore

describe('lanes side by side', () => {
  it('are drawn in one go, from left to right, and are one step', () => {
    const { editor, hand } = opened('lane');
    editor.setDrawing({ laneCount: 3, laneWidth: 3 });
    hand.click([0, -5]);
    hand.doubleClick([0, 5]);
    expect(editor.state.site.lanes.map(({ centreline }) => centreline)).toEqual([
      [
        [-3, -5],
        [-3, 5]
      ],
      [
        [0, -5],
        [0, 5]
      ],
      [[3, -5], [3, 5]] // prettier-ignore
    ]);
    expect(editor.state.site.lanes.every(({ width }) => width === 3)).toBe(true);
    expect(editor.state.undoLabel).toBe('Draw 3 lanes');
    expect(editor.state.selection).toHaveLength(3);
    editor.undo();
    expect(editor.state.site.lanes).toEqual([]);
  });

  it('run the other way in their left half when asked to', () => {
    const { editor, hand } = opened('lane');
    editor.setDrawing({ laneCount: 4, laneWidth: 3, lanesOppose: true });
    hand.click([0, -5]);
    hand.doubleClick([0, 5]);
    expect(editor.state.site.lanes.map(({ centreline }) => centreline[0]![1])).toEqual([5, 5, -5, -5]);
  });

  it('are concentric in a bend', () => {
    const { editor, hand } = opened('lane');
    editor.setDrawing({ laneCount: 2, laneWidth: 3, bendRadius: 5 });
    hand.click([-8, 0]);
    hand.click([2, 0]);
    hand.doubleClick([2, 7]);
    const [left, right] = editor.state.site.lanes;
    expect(left?.bends?.radii[1]).toBeCloseTo(3.5, 6);
    expect(right?.bends?.radii[1]).toBeCloseTo(6.5, 6);
    const around = ([x, y]: Point) => Math.hypot(x + 3, y - 5);
    for (const at of right!.centreline.slice(1, -1)) expect(around(at)).toBeCloseTo(6.5, 5);
    for (const at of left!.centreline.slice(1, -1)) expect(around(at)).toBeCloseTo(3.5, 5);
  });

  it('say when a bend is too tight for them, and go on', () => {
    const { editor, hand } = opened('lane');
    editor.setDrawing({ laneCount: 4, laneWidth: 3, bendRadius: 2 });
    hand.click([-8, 0]);
    hand.click([2, 0]);
    hand.click([2, 7]);
    hand.key('Enter');
    expect(editor.state.site.lanes).toEqual([]);
    expect(editor.state.overlay.label?.text).toMatch(/too tight/);
    expect(editor.state.busy).toBe(true);
  });
});

describe('a lane in arcs', () => {
  it('goes on in the direction of its last piece', () => {
    const { editor, hand } = opened('lane');
    hand.click([-8, 0]);
    hand.click([0, 0]);
    hand.key('/');
    expect(editor.state.drawing.isArc).toBe(true);
    hand.doubleClick([4, 4]);
    const [lane] = editor.state.site.lanes;
    // A quarter of a circle about [0, 4].
    for (const [x, y] of lane!.centreline.slice(1)) expect(Math.hypot(x, y - 4)).toBeCloseTo(4, 5);
    expect(lane!.centreline.at(-1)).toEqual([4, 4]);
    expect(lane!.bends?.points).toHaveLength(3);
    expect(lane!.bends?.points[1]![0]).toBeCloseTo(4, 6);
    expect(lane!.bends?.points[1]![1]).toBeCloseTo(0, 6);
  });

  it('keeps what was drawn when the hand goes over to straight lines', () => {
    const { editor, hand } = opened('lane');
    hand.click([-8, 0]);
    hand.click([0, 0]);
    hand.key('/');
    hand.click([4, 4]);
    hand.key('/');
    hand.hover([4, 6]);
    hand.doubleClick([4, 8]);
    const [lane] = editor.state.site.lanes;
    const arc = lane!.centreline.filter(([, y]) => y > 0 && y < 4);
    expect(arc.length).toBeGreaterThan(5);
    for (const [x, y] of arc) expect(Math.hypot(x, y - 4)).toBeCloseTo(4, 5);
    expect(lane!.centreline.at(-1)).toEqual([4, 8]);
  });

  it('is drawn again at once when the key is pressed, without a movement', () => {
    const { editor, hand } = opened('lane');
    hand.click([-8, 0]);
    hand.click([0, 0]);
    hand.hover([4, 4]);
    expect(editor.state.draft?.lanes[0]?.centreline).toHaveLength(3);
    hand.key('/');
    expect(editor.state.draft?.lanes[0]?.centreline.length).toBeGreaterThan(10);
  });

  it('says that no arc leads straight back', () => {
    const { editor, hand } = opened('lane');
    editor.setDrawing({ isArc: true });
    hand.click([-8, 0]);
    hand.click([0, 0]);
    hand.hover([-6, 0.1]);
    expect(editor.state.overlay.label?.text).toMatch(/arc cannot/);
  });
});

describe('the corners of a bent lane', () => {
  function bent() {
    const made = opened('lane');
    made.editor.setDrawing({ bendRadius: 4 });
    made.hand.click([-8, -4]);
    made.hand.click([0, -4]);
    made.hand.doubleClick([0, 4]);
    return made;
  }

  it('are what is taken hold of, and bend the lane again', () => {
    const { editor, hand } = bent();
    hand.drag([0, -4], [2, -6]);
    const [lane] = editor.state.site.lanes;
    expect(lane!.bends).toMatchObject({ points: [[-8, -4], [2, -6], [0, 4]] }); // prettier-ignore
    expect(lane!.bends!.radii[1]).toBeCloseTo(4, 6);
    expect(lane!.centreline.length).toBeGreaterThan(5);
    editor.undo();
    expect(editor.state.site.lanes[0]!.bends?.points[1]).toEqual([0, -4]);
  });

  it('shrink the radius to what their sides leave', () => {
    const { editor, hand } = bent();
    hand.drag([0, 4], [0, -2]);
    expect(editor.state.site.lanes[0]!.bends?.radii[1]).toBeCloseTo(2, 6);
  });

  it('go along when the lane is moved and turned', () => {
    const { editor, hand } = bent();
    for (let press = 0; press < 3; press++) hand.key('ArrowRight', { shift: true });
    hand.key(']');
    const [lane] = editor.state.site.lanes;
    const [from, corner] = lane!.bends!.points;
    expect(from).toEqual(lane!.centreline[0]);
    expect(corner![0]).toBeGreaterThan(0);
  });
});

describe('marks that run through points', () => {
  it.each([
    ['kerb', 'Draw kerb'],
    ['joint', 'Draw joint'],
    ['conduit', 'Draw conduit']
  ] as const)('draws a %s', (kind, label) => {
    const { editor, hand } = opened(kind);
    hand.click([0, 0]);
    hand.click([3, 0]);
    hand.doubleClick([3, 2]);
    expect(lastMark(editor)).toEqual({ id: 'm1', kind, points: [[0, 0], [3, 0], [3, 2]] }); // prettier-ignore
    expect(editor.state).toMatchObject({ tool: 'select', undoLabel: label });
    expect(editor.state.selection).toEqual([{ kind: 'mark', id: 'm1' }]);
  });

  it.each(['island', 'cover'] as const)('draws an %s by a drag or corner by corner', (kind) => {
    const { editor, hand } = opened(kind);
    hand.drag([0, 0], [2, 1]);
    expect(lastMark(editor).points).toEqual([[0, 0], [2, 0], [2, 1], [0, 1]]); // prettier-ignore
    editor.setTool(kind);
    for (const at of [[4, 0], [6, 0], [5, 2]] as const) hand.click(at); // prettier-ignore
    hand.click([4, 0]);
    expect(lastMark(editor)).toMatchObject({ kind, points: [[4, 0], [6, 0], [5, 2]] }); // prettier-ignore
  });

  it('takes the sides of an area as they are typed', () => {
    const { editor, hand } = opened('cover');
    hand.hold([0, 0], [0.5, 0.4]);
    for (const key of '0.8') hand.key(key);
    hand.key('Tab');
    for (const key of '0.6') hand.key(key);
    hand.key('Enter');
    expect(lastMark(editor).points).toEqual([[0, 0], [0.8, 0], [0.8, 0.6], [0, 0.6]]); // prettier-ignore
  });

  it('refuses an outline that crosses itself', () => {
    const { editor, hand } = opened('island');
    for (const at of [[0, 0], [3, 0], [0, 2], [3, 2]] as const) hand.click(at); // prettier-ignore
    hand.key('Enter');
    expect(editor.state.site.marks).toEqual([]);
    expect(editor.state.overlay.label?.text).toMatch(/crosses itself/);
  });

  it('takes hold of an area by any of its sides, the last one too', () => {
    const marks = [{ id: 'm1', kind: 'island', points: [[0, 0], [4, 0], [4, 4], [0, 4]] }]; // prettier-ignore
    const { editor, hand } = opened('select', { marks });
    hand.click([0, 2]);
    expect(editor.state.selection).toEqual([{ kind: 'mark', id: 'm1' }]);
  });
});

describe('gates', () => {
  it('swing from the hinge to the tip by a quarter turn', () => {
    const { editor, hand } = opened('gate');
    hand.click([0, 0]);
    hand.hover([2, 0]);
    expect(editor.state.draft?.marks).toHaveLength(1);
    hand.click([4, 0]);
    expect(lastMark(editor)).toEqual({
      id: 'm1',
      kind: 'gate',
      points: [[0, 0], [4, 0]], // prettier-ignore
      opening: { kind: 'swing', angle: 90 }
    });
  });

  it('have the length and the direction that were typed', () => {
    const { editor, hand } = opened('gate');
    hand.click([1, 1]);
    hand.hover([3, 1.2]);
    for (const key of '3.6') hand.key(key);
    hand.key('Tab');
    for (const key of '90') hand.key(key);
    hand.key('Enter');
    expect(lastMark(editor).points).toEqual([[1, 1], [1, 4.6]]); // prettier-ignore
  });

  it('slide back by their own length', () => {
    const { editor, hand } = opened('gate');
    editor.setDrawing({ gate: 'slide' });
    hand.drag([0, 0], [3, 4]);
    expect(lastMark(editor).opening).toEqual({ kind: 'slide', travel: -5 });
  });
});

describe('paint in a lane', () => {
  it('lies where it usually lies, by one click', () => {
    const { editor, hand } = opened('arrow', { lanes: [straight] });
    editor.setDrawing({ arrow: 'ahead-left' });
    hand.hover([2, 1]);
    expect(editor.state.draft?.marks).toHaveLength(1);
    hand.click([2, 1]);
    expect(lastMark(editor)).toMatchObject({ points: [[1, -1.5], [1, 3.5]], turn: 'ahead-left' }); // prettier-ignore
  });

  it('is drawn freely by a drag, by two clicks beside the lanes, and with shift in them', () => {
    for (const tool of ['arrow', 'stop-line'] as const) {
      const { editor, hand } = opened(tool, { lanes: [straight] });
      hand.drag([0, 1], [1, 3]);
      expect(lastMark(editor).points).toEqual([[0, 1], [1, 3]]); // prettier-ignore
      editor.setTool(tool);
      hand.click([-6, 0]);
      hand.click([-4, 1]);
      expect(lastMark(editor).points).toEqual([[-6, 0], [-4, 1]]); // prettier-ignore
      editor.setTool(tool);
      hand.click([0, 1], { shift: true });
      hand.click([2, 2], { shift: true });
      expect(lastMark(editor).points).toEqual([[0, 1], [2, 2]]); // prettier-ignore
      expect(editor.state.site.marks).toHaveLength(3);
    }
  });
});

describe('dimensions', () => {
  it('lie to the left or to the right of their two points, by a third click', () => {
    const { editor, hand } = opened('dimension');
    hand.click([0, 0]);
    hand.hover([2, 0]);
    expect(editor.state.overlay.label?.text).toBe('2.00 m');
    hand.click([4, 0]);
    hand.hover([2, -1.5]);
    expect(editor.state.draft?.marks[0]).toMatchObject({ offset: -1.5 });
    expect(editor.state.site.marks).toEqual([]);
    hand.click([2, 1.25]);
    expect(lastMark(editor)).toMatchObject({ points: [[0, 0], [4, 0]], offset: 1.25 }); // prettier-ignore
  });

  it('can begin with a drag, and Enter takes the usual place', () => {
    const { editor, hand } = opened('dimension');
    hand.drag([0, 0], [3, 4]);
    expect(editor.state.busy).toBe(true);
    hand.key('Enter');
    // 24 pixels at 50 pixels a metre.
    expect(lastMark(editor)).toMatchObject({ points: [[0, 0], [3, 4]], offset: 0.48 }); // prettier-ignore
  });

  it('take a typed distance to the side where the pointer is', () => {
    const { editor, hand } = opened('dimension');
    hand.click([0, 0]);
    hand.click([4, 0]);
    hand.hover([2, -0.3]);
    for (const key of '1.2') hand.key(key);
    hand.key('Enter');
    expect(lastMark(editor)).toMatchObject({ offset: -1.2 });
  });

  it('leave nothing behind with Escape, at every stage', () => {
    const { editor, hand } = opened('dimension');
    const { site } = editor.state;
    hand.click([0, 0]);
    hand.key('Escape');
    hand.click([0, 0]);
    hand.click([4, 0]);
    hand.hover([4, 2]);
    hand.key('Escape');
    expect(editor.state).toMatchObject({ draft: null, busy: false, tool: 'dimension' });
    expect(editor.state.site).toBe(site);
  });
});

describe('notes', () => {
  it('and what is typed into them at once are one step', () => {
    const { editor, hand } = opened('note');
    hand.click([1, 1]);
    const note = lastMark(editor);
    expect(note).toMatchObject({ kind: 'note', points: [[1, 1]] }); // prettier-ignore
    const marks = [{ ...note, text: 'Check before cutting' }];
    editor.commit({ label: 'Write note', site: { ...editor.state.site, marks }, merge: `note ${note.id}` });
    editor.undo();
    expect(editor.state.site.marks).toEqual([]);
  });
});

describe('the tape', () => {
  it('adds up a way of several pieces and tells the angles between them', () => {
    const { editor, hand } = opened('measure');
    const { site } = editor.state;
    hand.click([0, 0]);
    hand.click([4, 0]);
    hand.click([4, 3]);
    expect(editor.state.overlay.guides.map(({ label }) => label)).toEqual(['4.00 m', '3.00 m']);
    expect(editor.state.overlay.label?.text).toBe('3.00 m · 90° between · 7.00 m in all');
    hand.key('Backspace');
    expect(editor.state.overlay.guides).toHaveLength(1);
    hand.click([4, 3]);
    hand.send('double', [4, 3]);
    hand.hover([9, 9]);
    expect(editor.state.overlay.guides).toHaveLength(2);
    hand.key('Escape');
    expect(editor.state.overlay.guides).toEqual([]);
    expect(editor.state.site).toBe(site);
  });
});
