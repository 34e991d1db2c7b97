import { describe, expect, it } from 'vitest';
import type { Point, Shape } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround } from '#editor/geometry/box';
import type { Editor } from '#editor/types';
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
