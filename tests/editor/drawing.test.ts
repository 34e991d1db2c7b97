import { describe, expect, it } from 'vitest';
import type { Loop } from '#plan/schema';
import type { Editor, ToolName } from '#editor/types';
import { openEditor, withoutSnap } from './hand';
import { siteWith, square } from './sites';

function opened(tool: ToolName, parts: Parameters<typeof siteWith>[0] = {}) {
  const made = openEditor(siteWith(parts));
  withoutSnap(made.editor);
  made.editor.setTool(tool);
  return made;
}

const last = (editor: Editor): Loop => editor.state.site.loops.at(-1)!;

describe('drawing a box shape', () => {
  it.each(['rectangle', 'quadrupole', 'diagonal'] as const)('draws a %s from corner to corner', (kind) => {
    const { editor, hand } = opened(kind);
    hand.drag([-1, -2], [1, 2.5]);
    expect(last(editor).shape).toMatchObject({ kind, centre: [0, 0.25], width: 2, length: 4.5, rotation: 0 });
    expect(editor.state.undoLabel).toBe(`Draw ${kind}`);
    expect(editor.state.tool).toBe('select');
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: last(editor).id }]);
  });

  it('draws the same by two clicks, without a drag', () => {
    const { editor, hand } = opened('rectangle');
    hand.click([-1, -2]);
    hand.hover([0.5, 0]);
    expect(editor.state.draft?.loops).toHaveLength(1);
    expect(editor.state.site.loops).toHaveLength(0);
    hand.click([1, 2]);
    expect(last(editor).shape).toMatchObject({ centre: [0, 0], width: 2, length: 4 });
  });

  it('makes a square with shift and starts from the centre with control', () => {
    const { editor, hand } = opened('rectangle');
    hand.drag([0, 0], [3, -1], { shift: true });
    expect(last(editor).shape).toMatchObject({ centre: [1.5, -1.5], width: 3, length: 3 });
    editor.setTool('rectangle');
    hand.drag([0, 0], [3, -1], { control: true });
    expect(last(editor).shape).toMatchObject({ centre: [0, 0], width: 6, length: 2 });
  });

  it('leaves nothing behind after a slip of a few millimetres', () => {
    const { editor, hand } = opened('rectangle');
    editor.setViewport({ ...editor.state.viewport, scale: 2_000 });
    hand.drag([0, 0], [0.05, 0.03]);
    expect(editor.state.site.loops).toHaveLength(0);
    expect(editor.state).toMatchObject({ draft: null, busy: false, tool: 'rectangle' });
  });

  it('drops the drawing with Escape, then the tool, then the selection', () => {
    const { editor, hand } = opened('rectangle', { shapes: [square(5, 5)] });
    editor.select([{ kind: 'loop', id: 'L1' }]);
    const { site } = editor.state;
    hand.hold([0, 0], [2, 2]);
    hand.key('Escape');
    expect(editor.state).toMatchObject({ draft: null, tool: 'rectangle', site });
    expect(editor.state.site).toBe(site);
    hand.key('Escape');
    expect(editor.state.tool).toBe('select');
    expect(editor.state.selection).toHaveLength(1);
    hand.key('Escape');
    expect(editor.state.selection).toHaveLength(0);
    expect(hand.key('Escape')).toBe(false);
  });

  it('says the size in the units that the document shows', () => {
    const { editor, hand } = opened('rectangle', { units: 'imperial' });
    hand.hold([0, 0], [1, 1], [1.8288, 1.8288]);
    expect(editor.state.overlay.label?.text).toBe('6\'-0" × 6\'-0"');
  });
});

describe('drawing a circle', () => {
  it('goes from the centre to the rim', () => {
    const { editor, hand } = opened('circle');
    hand.drag([1, 1], [1, 2.5]);
    expect(last(editor).shape).toMatchObject({ kind: 'circle', centre: [1, 1], diameter: 3 });
  });
});

describe('drawing a polygon', () => {
  const corners = [[0, 0], [3, 0], [3, 2]] as const; // prettier-ignore

  it('ends with a double click, which adds its point once', () => {
    const { editor, hand } = opened('polygon');
    hand.click(corners[0]);
    hand.click(corners[1]);
    hand.doubleClick(corners[2]);
    expect(last(editor).shape).toMatchObject({ kind: 'polygon', points: corners });
  });

  it('ends with Enter or with a click on the first point', () => {
    for (const end of ['Enter', 'first point']) {
      const { editor, hand } = opened('polygon');
      corners.forEach((corner) => hand.click(corner));
      if (end === 'Enter') hand.key('Enter');
      else hand.click([0.05, 0.05]);
      expect(last(editor).shape).toMatchObject({ points: corners });
    }
  });

  it('takes the last point back with Backspace or undo, and all with Escape', () => {
    const { editor, hand } = opened('polygon');
    corners.forEach((corner) => hand.click(corner));
    hand.click([1, 5]);
    hand.key('Backspace');
    hand.click([-3, 5]);
    hand.key('z', { control: true });
    hand.key('Enter');
    expect(last(editor).shape).toMatchObject({ points: corners });
    editor.setTool('polygon');
    corners.forEach((corner) => hand.click(corner));
    hand.key('Escape');
    expect(editor.state).toMatchObject({ draft: null, busy: false, tool: 'polygon' });
    expect(editor.state.site.loops).toHaveLength(1);
  });

  it('shows the loop with the point in hand while it is possible', () => {
    const { editor, hand } = opened('polygon');
    hand.click(corners[0]);
    hand.click(corners[1]);
    expect(editor.state.draft).toBeNull();
    hand.hover([3, 2]);
    expect(editor.state.draft?.loops[0]?.shape).toMatchObject({ points: corners });
  });

  it('refuses to close an outline that crosses itself, says so, and goes on', () => {
    const { editor, hand } = opened('polygon');
    for (const at of [[0, 0], [3, 0], [0, 2], [3, 2]] as const) hand.click(at); // prettier-ignore
    hand.key('Enter');
    expect(editor.state.site.loops).toHaveLength(0);
    expect(editor.state.overlay.label?.text).toMatch(/crossing/);
    hand.key('Backspace');
    hand.key('Enter');
    expect(last(editor).shape).toMatchObject({ points: [[0, 0], [3, 0], [0, 2]] }); // prettier-ignore
  });

  it('keeps to directions of 15° with shift', () => {
    const { editor, hand } = opened('polygon');
    hand.click([0, 0]);
    hand.click([3, 0.2], { shift: true });
    hand.click([3, 2]);
    hand.key('Enter');
    expect(last(editor).shape).toMatchObject({ points: [[0, 0], [3, 0], [3, 2]] }); // prettier-ignore
  });
});

describe('what a new loop comes with', () => {
  it('has a circuit of its own on the next free channel', () => {
    const { editor, hand } = opened('rectangle');
    hand.drag([0, 0], [1.8, 1.8]);
    editor.setTool('rectangle');
    hand.drag([4, 0], [5.8, 1.8]);
    editor.setTool('rectangle');
    hand.drag([8, 0], [9.8, 1.8]);
    const { loops, circuits, units } = editor.state.site;
    expect(loops.map(({ id }) => id)).toEqual(['L1', 'L2', 'L3']);
    expect(circuits.map(({ strings }) => strings)).toEqual(
      ['L1', 'L2', 'L3'].map((loop) => [[{ loop, reversed: false }]])
    );
    expect(circuits.map(({ channel }) => [channel?.unit, channel?.number])).toEqual([
      ['U1', 1],
      ['U1', 2],
      ['U2', 1]
    ]);
    expect(units).toHaveLength(2);
    expect(new Set(circuits.map(({ channel }) => channel?.frequencySetting)).size).toBe(3);
    expect(circuits[0]?.leadIn).toEqual({ cable: 'pair-14', length: 30 });
  });

  it('takes wire, slot and tail from the loop drawn before', () => {
    const { editor, hand } = opened('rectangle', { shapes: [square(5, 5)] });
    hand.drag([0, 0], [1.8, 1.8]);
    expect(last(editor)).toMatchObject({ wire: 'awg14', slot: { depth: 0.05 }, tail: { length: 0 } });
  });
});

describe('drawing the road', () => {
  it('draws a lane in the direction of travel', () => {
    const { editor, hand } = opened('lane');
    hand.click([0, -5]);
    hand.click([0, 0]);
    hand.doubleClick([2, 5]);
    expect(editor.state.site.lanes).toMatchObject([{ centreline: [[0, -5], [0, 0], [2, 5]], width: 3.5 }]); // prettier-ignore
    expect(editor.state.tool).toBe('select');
  });

  it('puts a stop line across the lane that is clicked', () => {
    const lanes = [{ id: 'lane1', centreline: [[1, -5], [1, 5]], width: 4 }]; // prettier-ignore
    const { editor, hand } = opened('stop-line', { lanes });
    hand.click([2, 3]);
    expect(editor.state.site.marks).toMatchObject([{ kind: 'stop-line', points: [[3, 3], [-1, 3]] }]); // prettier-ignore
  });

  it('draws a free stop line by dragging', () => {
    const { editor, hand } = opened('stop-line');
    hand.drag([-2, 1], [2, 1.5]);
    expect(editor.state.site.marks).toMatchObject([{ points: [[-2, 1], [2, 1.5]] }]); // prettier-ignore
  });
});

describe('placing a vehicle', () => {
  const lanes = [{ id: 'lane1', centreline: [[0, 8], [0, -8]], width: 4 }]; // prettier-ignore

  it('follows the pointer as a draft and looks along the lane', () => {
    const { editor, hand } = opened('vehicle', { lanes });
    hand.hover([1, 2]);
    expect(editor.state.draft?.probes).toEqual([{ vehicle: 'car', at: [1, 2], heading: -90 }]);
    expect(editor.state.site.probes).toEqual([]);
    hand.send('leave', [1, 2]);
    expect(editor.state.draft).toBeNull();
  });

  it('is put down by a click and moved by a drag', () => {
    const { editor, hand } = opened('vehicle', { lanes });
    editor.setVehicle('motorcycle');
    hand.click([1, 2]);
    expect(editor.state.site.probes).toEqual([{ vehicle: 'motorcycle', at: [1, 2], heading: -90 }]);
    expect(editor.state.undoLabel).toBe('Place motorcycle');
    hand.drag([1, 2], [-0.5, 4]);
    expect(editor.state.site.probes).toMatchObject([{ at: [-0.5, 4] }]);
  });
});

describe('tools that leave the document alone', () => {
  it('measures by dragging or clicking and keeps the tape until Escape', () => {
    const { editor, hand } = opened('measure');
    const { site } = editor.state;
    hand.drag([0, 0], [3, 4]);
    hand.hover([5, 5]);
    expect(editor.state.overlay.label?.text).toMatch(/^5\.00 m/);
    hand.send('leave', [5, 5]);
    expect(editor.state.overlay.guides).toHaveLength(1);
    hand.key('Escape');
    expect(editor.state.overlay.guides).toHaveLength(0);
    hand.click([0, 0]);
    hand.click([0, 2]);
    expect(editor.state.overlay.guides[0]?.label).toBe('2.00 m');
    expect(editor.state.site).toBe(site);
  });

  it('pans with the hand', () => {
    const { editor } = opened('pan');
    const at = { button: 0, pointer: 'mouse', shift: false, alt: false, control: false } as const;
    editor.pointer({ ...at, type: 'down', x: 500, y: 400 });
    editor.pointer({ ...at, type: 'move', x: 540, y: 350 });
    editor.pointer({ ...at, type: 'move', x: 550, y: 300 });
    editor.pointer({ ...at, type: 'up', x: 550, y: 300 });
    expect(editor.state.viewport.centre).toEqual([-1, -2]);
    expect(editor.state.tool).toBe('pan');
  });
});
