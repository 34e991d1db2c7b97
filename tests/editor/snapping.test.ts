import { describe, expect, it } from 'vitest';
import type { Point, Shape } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround } from '#editor/geometry/box';
import type { Editor, SnapSettings } from '#editor/types';
import { openEditor } from './hand';
import { siteWith, square } from './sites';

const LANE = { id: 'lane1', centreline: [[0.33, -6], [0.33, 6]], width: 3.5 }; // prettier-ignore

const shapeOf = (editor: Editor, id: string): Shape =>
  (editor.state.draft ?? editor.state.site).loops.find((loop) => loop.id === id)!.shape;
const boxOf = (editor: Editor, id: string) => boxAround(outlineOf(shapeOf(editor, id)))!;

function opened(parts: Parameters<typeof siteWith>[0], switches: { grid?: boolean; objects?: boolean } = {}) {
  const made = openEditor(siteWith(parts));
  made.editor.setSnap({ ...made.editor.state.snap, grid: false, objects: false, ...switches });
  return made;
}

describe('snapping to the grid', () => {
  it('brings edges onto it, while drawing and while moving', () => {
    const { editor, hand } = opened({}, { grid: true });
    editor.setTool('rectangle');
    hand.drag([0.013, 0.04], [1.83, 2.02]);
    const drawn = boxOf(editor, 'L1');
    expect(drawn.left).toBeCloseTo(0, 9);
    expect(drawn.right).toBeCloseTo(1.8, 9);
    expect(drawn.top).toBeCloseTo(2, 9);
    hand.drag([0.9, 1], [1.234, 1.777]);
    const moved = boxOf(editor, 'L1');
    expect(moved.left).toBeCloseTo(0.3, 9);
    expect(moved.bottom).toBeCloseTo(0.8, 9);
  });

  it('has a step that is round in the system that the document shows', () => {
    const { editor, hand } = opened({ units: 'imperial' }, { grid: true });
    editor.setTool('rectangle');
    hand.drag([0, 0], [1.81, 1.79]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ width: 1.8288, length: 1.8288 });
    editor.run('undo');
    expect(editor.state.snap.gridStep).toBeCloseTo(0.1524, 12);
  });
});

describe('snapping to objects', () => {
  it('brings the middle of a loop onto the middle of a lane and says so', () => {
    const { editor, hand } = opened({ shapes: [square(3, 0)], lanes: [LANE] }, { objects: true });
    hand.hold([3, 0], [1, 1], [0.4, 1]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0.33, 1] });
    expect(editor.state.overlay.label?.text).toContain('lane centre');
    expect(editor.state.overlay.guides).toContainEqual({ from: [0.33, -6], to: [0.33, 6], label: '' });
  });

  it('brings the edge of a loop onto the edge of a lane', () => {
    const { editor, hand } = opened({ shapes: [square(6, 0)], lanes: [LANE] }, { objects: true });
    hand.drag([6, 0], [3.2, 1]);
    expect(boxOf(editor, 'L1').left).toBeCloseTo(2.08, 9);
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [3.08, 1] });
  });

  it('puts a loop straight with another one and shows the clear distance', () => {
    const { editor, hand } = opened({ shapes: [square(0, 0), square(4, 5)] }, { objects: true });
    hand.hold([4, 5], [1, 4], [0.1, 4]);
    expect(shapeOf(editor, 'L2')).toMatchObject({ centre: [0, 4] });
    expect(editor.state.overlay.guides.map(({ label }) => label)).toContain('2.00 m');
  });

  it('repeats the gap between two neighbours', () => {
    const shapes = [square(-6, 0), square(-2.5, 0), square(5, 0)];
    const { editor, hand } = opened({ shapes }, { objects: true });
    hand.hold([5, 0], [2, 0.5], [1.1, 0.5]);
    expect(shapeOf(editor, 'L3')).toMatchObject({ centre: [1, 0.5] });
    expect(editor.state.overlay.label?.text).toContain('equal gaps');
    expect(editor.state.overlay.guides.filter(({ label }) => label === '1.50 m')).toHaveLength(2);
  });

  it('knows no gap to what lies in another row', () => {
    const shapes = [square(-6, 9), square(-2.5, 9), square(5, 0)];
    const { editor, hand } = opened({ shapes }, { objects: true });
    hand.hold([5, 0], [2, 0.5], [1.1, 0.5]);
    expect(shapeOf(editor, 'L3')).toMatchObject({ centre: [1.1, 0.5] });
  });

  it('comes to a middle before an edge that is just as near', () => {
    const shapes = [square(0, 0), square(0.1, 5, 2.2), square(6, -6)];
    const { editor, hand } = opened({ shapes }, { objects: true });
    // Its left edge is 0.05 m from one edge and its middle 0.05 m from a middle, on either side.
    hand.hold([6, -6], [1, -6], [0.05, -6]);
    expect(editor.state.overlay.label?.text).toContain('centre');
  });

  it('takes the corner of another loop while drawing', () => {
    const { editor, hand } = opened({ shapes: [square(0, 0)] }, { objects: true });
    editor.setTool('rectangle');
    hand.drag([1.1, 0.9], [3, 3]);
    const drawn = boxOf(editor, 'L2');
    expect([drawn.left, drawn.bottom]).toEqual([1, 1]);
  });

  it('finds the middle of a slanting lane', () => {
    const lanes = [{ id: 'lane1', centreline: [[-5, -5], [5, 5]], width: 3 }]; // prettier-ignore
    const { editor, hand } = opened({ shapes: [square(5, -4)], lanes }, { objects: true });
    hand.drag([5, -4], [1.05, 0.95]);
    const { centre } = shapeOf(editor, 'L1') as { centre: Point };
    expect(centre[0]).toBeCloseTo(1, 6);
    expect(centre[1]).toBeCloseTo(1, 6);
  });

  it('resizes a side onto the edge of another loop, along its own axis only', () => {
    const { editor, hand } = opened({ shapes: [square(0, 0), square(5, 0.5)] }, { objects: true });
    editor.select([{ kind: 'loop', id: 'L1' }]);
    hand.drag([1, 0], [3.9, 0.6]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ width: 5, length: 2, centre: [1.5, 0] });
  });

  it('reaches as far in pixels at every zoom', () => {
    const lanes = [{ ...LANE, width: 30 }];
    for (const scale of [10, 100, 1_000]) {
      const { editor, hand } = opened({ shapes: [square(3, 0)], lanes }, { objects: true });
      editor.setViewport({ ...editor.state.viewport, centre: [0, 0], scale, width: 10_000, height: 10_000 });
      hand.drag([3, 0], [0.33 + 7 / scale, 2]);
      expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0.33, 2] });
      hand.drag([0.33, 2], [0.33 + 9 / scale, 2]);
      expect((shapeOf(editor, 'L1') as { centre: Point }).centre[0]).toBeCloseTo(0.33 + 9 / scale, 6);
    }
  });

  it('lets a vehicle glide and only find the middle of its lane', () => {
    const probes = [{ vehicle: 'car', at: [4, 0] }];
    const { editor, hand } = opened(
      { lanes: [LANE], probes, shapes: [square(-3, 0)] },
      { grid: true, objects: true }
    );
    hand.drag([4, 0], [0.4, 1.2345]);
    expect(editor.state.site.probes).toMatchObject([{ at: [0.33, 1.2345] }]);
  });
});

describe('suspending', () => {
  it('snaps to nothing while alt is held', () => {
    const { editor, hand } = opened({ shapes: [square(3, 0)], lanes: [LANE] }, { grid: true, objects: true });
    editor.select([{ kind: 'loop', id: 'L1' }]);
    hand.drag([3, 0], [0.371, 1.013], { alt: true });
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0.371, 1.013] });
  });

  it('obeys its switches', () => {
    const { editor, hand } = opened({ shapes: [square(3, 0)], lanes: [LANE] });
    hand.drag([3, 0], [0.371, 1.013]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0.371, 1.013] });
  });
});

describe('what attracts', () => {
  const objectsOnly = (parts: Parameters<typeof siteWith>[0], off: Partial<SnapSettings> = {}) => {
    const made = opened(parts, { objects: true });
    made.editor.setSnap({ ...made.editor.state.snap, ...off });
    return made;
  };
  const placed = (editor: Editor) => editor.state.site.marks.at(-1)?.points[0];

  it('takes a corner before a centre that is nearer', () => {
    const shapes = [square(0, 0), square(1.1, 1.1, 0.2)];
    const { editor, hand } = objectsOnly({ shapes });
    editor.setTool('pull-box');
    hand.click([1.07, 1.07]);
    expect(placed(editor)).toEqual([1, 1]);
  });

  it.each([
    ['corners', [1.06, 1.07], [1, 1]],
    ['centres', [0.05, 0.06], [0, 0]],
    ['edges', [1.06, 0.5], [1, 0.5]],
    ['lanes', [5.06, 3], [5, 3]]
  ] as const)('leaves alone what is switched off: %s', (name, at, target) => {
    const parts = {
      shapes: [square(0, 0)],
      lanes: [{ id: 'lane1', centreline: [[5, -6], [5, 6]], width: 3 }] // prettier-ignore
    };
    const everything = { corners: false, centres: false, edges: false, lanes: false, gaps: false };
    for (const isOn of [true, false]) {
      const { editor, hand } = objectsOnly(parts, { ...everything, [name]: isOn });
      editor.setTool('pull-box');
      hand.click(at);
      const [x, y] = placed(editor)!;
      expect(x).toBeCloseTo((isOn ? target : at)[0], 6);
      expect(y).toBeCloseTo((isOn ? target : at)[1], 6);
    }
  });

  it('leaves equal gaps alone when they are switched off', () => {
    const shapes = [square(-6, 0), square(-2.5, 0), square(5, 0)];
    const { editor, hand } = objectsOnly({ shapes }, { gaps: false });
    hand.drag([5, 0], [1.1, 0.5]);
    expect(shapeOf(editor, 'L3')).toMatchObject({ centre: [1.1, 0.5] });
  });

  it('reaches as many pixels as the settings say', () => {
    for (const [tolerance, expected] of [[4, 1.12], [10, 1]] as const) {
      const { editor, hand } = objectsOnly({ shapes: [square(0, 0)] }, { tolerance });
      editor.setTool('pull-box');
      hand.click([1.12, 0.5]);
      expect(placed(editor)?.[0]).toBeCloseTo(expected, 6);
    } // prettier-ignore
  });

  it('is not what is hidden, but still what is locked', () => {
    const site = siteWith({ shapes: [square(0, 0)] });
    for (const [state, expected] of [[{ hidden: true }, 1.06], [{ locked: true }, 1]] as const) {
      const { editor, hand } = openEditor({ ...site, loops: [{ ...site.loops[0]!, ...state }] });
      editor.setSnap({ ...editor.state.snap, grid: false });
      editor.setTool('pull-box');
      hand.click([1.06, 0.5]);
      expect(placed(editor)?.[0]).toBeCloseTo(expected, 6);
    } // prettier-ignore
  });

  it('is suspended by alt while something is drawn', () => {
    const { editor, hand } = objectsOnly({ shapes: [square(0, 0)] });
    editor.setTool('rectangle');
    hand.drag([1.03, 1.04], [3, 3], { alt: true });
    expect(boxOf(editor, 'L2').left).toBeCloseTo(1.03, 9);
  });
});

describe('room', () => {
  const labels = (editor: Editor) => editor.state.overlay.guides.map(({ label }) => label).filter(Boolean);

  it('is shown to both edges of the lane while a loop is drawn and while it moves', () => {
    const lanes = [{ id: 'lane1', centreline: [[0, -6], [0, 6]], width: 3.5 }]; // prettier-ignore
    const { editor, hand } = opened({ lanes });
    editor.setTool('rectangle');
    hand.hold([-1, 0], [0.8, 2]);
    expect(labels(editor)).toEqual(expect.arrayContaining(['0.75 m', '0.95 m']));
    hand.send('up', [0.8, 2]);
    hand.hold([0, 1], [0.1, 1]);
    expect(labels(editor)).toEqual(expect.arrayContaining(['0.85 m', '0.85 m']));
  });

  it('is shown to the nearest loop on each side, not to the ones behind it', () => {
    const shapes = [square(0, 0), square(-3.4, 0), square(4, 0), square(8, 0), square(0, 5)];
    const { editor, hand } = opened({ shapes });
    hand.hold([0, 0], [0.2, 0.1]);
    expect(labels(editor).sort()).toEqual(['1.60 m', '1.80 m', '2.90 m']);
  });

  it('is not shown to what is hidden', () => {
    const site = siteWith({ shapes: [square(0, 0), square(4, 0)] });
    const { editor, hand } = openEditor({
      ...site,
      loops: [site.loops[0]!, { ...site.loops[1]!, hidden: true }]
    });
    editor.setSnap({ ...editor.state.snap, grid: false, objects: false });
    hand.hold([0, 0], [0.2, 0.1]);
    expect(labels(editor)).toEqual([]);
  });
});
