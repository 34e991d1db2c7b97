import { describe, expect, it } from 'vitest';
import type { Point, Shape } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { selectionHandles } from '#editor/handles';
import type { Editor } from '#editor/types';
import { openEditor, withoutSnap } from './hand';
import { manyLoops, siteWith, square } from './sites';

const shapeOf = (editor: Editor, id = 'L1'): Shape =>
  (editor.state.draft ?? editor.state.site).loops.find((loop) => loop.id === id)!.shape;

const handleAt = (editor: Editor, id: string): Point => {
  const { site, selection, viewport } = editor.state;
  return selectionHandles(site, selection, viewport).find((handle) => handle.id === id)!.at;
};

function one(shape: Partial<Shape> = square(0, 0)) {
  const opened = openEditor(siteWith({ shapes: [shape] }));
  withoutSnap(opened.editor);
  opened.editor.select([{ kind: 'loop', id: 'L1' }]);
  return opened;
}

describe('moving', () => {
  it('moves by as much as the hand does and is one step', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    withoutSnap(editor);
    hand.drag([0.2, 0.1], [1.7, -0.65]);
    expect(shapeOf(editor)).toMatchObject({ centre: [1.5, -0.75], width: 2, length: 2 });
    expect(editor.state.undoLabel).toBe('Move loop');
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: 'L1' }]);
    editor.undo();
    expect(shapeOf(editor)).toMatchObject({ centre: [0, 0] });
    expect(editor.state.undoLabel).toBeNull();
  });

  it('keeps the draft outside the document until the release', () => {
    const { editor, hand } = one();
    const { site } = editor.state;
    hand.hold([0, 0], [1, 0]);
    expect(editor.state.site).toBe(site);
    expect(editor.state.draft?.loops[0]?.shape).toMatchObject({ centre: [1, 0] });
    expect(editor.state.busy).toBe(true);
    hand.send('up', [1, 0]);
    expect(editor.state.draft).toBeNull();
    expect(editor.state.site).not.toBe(site);
  });

  it.each(['Escape', 'cancelled pointer', 'undo'])('leaves the very same document after %s', (how) => {
    const { editor, hand } = one();
    const { site } = editor.state;
    const text = JSON.stringify(site);
    hand.hold([0, 0], [1, 0], [2, 3]);
    if (how === 'Escape') hand.key('Escape');
    else if (how === 'undo') hand.key('z', { control: true });
    else hand.send('cancel', [2, 3]);
    expect(editor.state.site).toBe(site);
    expect(JSON.stringify(editor.state.site)).toBe(text);
    expect(editor.state).toMatchObject({ draft: null, busy: false, undoLabel: null, revision: 0 });
    hand.send('up', [2, 3]);
    expect(editor.state.site).toBe(site);
  });

  it('takes no step for a click or for a hand that came back', () => {
    const { editor, hand } = one();
    hand.click([0, 0]);
    hand.hold([0, 0], [1, 1], [0, 0]);
    hand.send('up', [0, 0]);
    expect(editor.state.revision).toBe(0);
  });

  it('keeps to one direction with shift', () => {
    const { editor, hand } = one();
    hand.drag([0, 0], [0.4, 2], { shift: true });
    expect(shapeOf(editor)).toMatchObject({ centre: [0, 2] });
  });

  it('moves all that is selected and shares what is not', () => {
    const { editor, hand } = openEditor(manyLoops());
    withoutSnap(editor);
    const before = editor.state.site;
    editor.select([{ kind: 'loop', id: 'L1' }, { kind: 'loop', id: 'L2' }]); // prettier-ignore
    hand.drag([-10, -6], [-9, -6]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [-9, -6] });
    expect(shapeOf(editor, 'L2')).toMatchObject({ centre: [-5, -6] });
    expect(editor.state.undoLabel).toBe('Move 2 loops');
    const after = editor.state.site;
    expect(after.loops.filter((loop, index) => loop !== before.loops[index])).toHaveLength(2);
    expect(after.lanes).toBe(before.lanes);
    expect(after.circuits).toBe(before.circuits);
  });

  it('stops at the edge of the coordinates instead of leaving them', () => {
    const { editor } = one(square(19_999, 0));
    editor.run('nudge-right-far');
    for (let press = 0; press < 20; press++) editor.run('nudge-right-far');
    expect(shapeOf(editor)).toMatchObject({ centre: [20_000, 0] });
  });
});

describe('resizing', () => {
  it('moves a corner and keeps the opposite one', () => {
    const { editor, hand } = one();
    hand.drag(handleAt(editor, 'ne'), [2, 1.5]);
    expect(shapeOf(editor)).toMatchObject({ centre: [0.5, 0.25], width: 3, length: 2.5 });
    expect(editor.state.undoLabel).toBe('Resize loop');
  });

  it('keeps the centre with control', () => {
    const { editor, hand } = one();
    hand.drag(handleAt(editor, 'e'), [2, 0], { control: true });
    expect(shapeOf(editor)).toMatchObject({ centre: [0, 0], width: 4, length: 2 });
  });

  it('never becomes smaller than the document may hold', () => {
    const { editor, hand } = one();
    hand.drag(handleAt(editor, 'ne'), [-5, -5]);
    const shape = shapeOf(editor);
    expect(shape).toMatchObject({ width: 0.05, length: 0.05 });
    expect(outlineOf(shape)[0]).toEqual([-1, -1]);
  });

  it('does not change anything by a click on a handle, snapping or not', () => {
    const { editor, hand } = one(square(0.033, 0.033));
    editor.setSnap({ ...editor.state.snap, grid: true });
    hand.click(handleAt(editor, 'ne'));
    expect(editor.state.revision).toBe(0);
    expect(editor.state.selection).toHaveLength(1);
  });

  it('holds the last possible outline of a polygon that would cross itself', () => {
    const points: Point[] = [[0, 0], [4, 0], [4, 4], [0, 4]]; // prettier-ignore
    const { editor, hand } = one({ kind: 'polygon', points });
    hand.hold([4, 4], [3, 3], [1, -3]);
    expect(shapeOf(editor)).toMatchObject({ points: [[0, 0], [4, 0], [3, 3], [0, 4]] }); // prettier-ignore
    hand.send('up', [1, -3]);
    expect(shapeOf(editor)).toMatchObject({ points: [[0, 0], [4, 0], [3, 3], [0, 4]] }); // prettier-ignore
  });

  it('moves the points and the edge of a lane', () => {
    const lanes = [{ id: 'lane1', centreline: [[0, -5], [0, 5]], width: 4 }]; // prettier-ignore
    const { editor, hand } = openEditor(siteWith({ lanes }));
    withoutSnap(editor);
    editor.select([{ kind: 'lane', id: 'lane1' }]);
    hand.drag([0, 5], [1, 6]);
    expect(editor.state.site.lanes[0]?.centreline).toEqual([[0, -5], [1, 6]]); // prettier-ignore
    editor.undo();
    hand.drag(handleAt(editor, 'width'), [-2.5, 0]);
    expect(editor.state.site.lanes[0]?.width).toBe(5);
  });
});

describe('rotating', () => {
  it('turns about the centre in whole degrees', () => {
    const { editor, hand } = one();
    hand.drag(handleAt(editor, 'rotate'), [-2, 0.001]);
    expect(shapeOf(editor)).toMatchObject({ centre: [0, 0], rotation: 90 });
    expect(editor.state.undoLabel).toBe('Rotate loop');
  });

  it('turns in steps of 15° with shift', () => {
    const { editor, hand } = one();
    hand.drag(handleAt(editor, 'rotate'), [-0.8, 2], { shift: true });
    expect(shapeOf(editor)).toMatchObject({ rotation: 15 });
  });

  it('comes to lie along the lane', () => {
    const lanes = [{ id: 'lane1', centreline: [[-5, -5], [5, 5]], width: 4 }]; // prettier-ignore
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)], lanes }));
    editor.select([{ kind: 'loop', id: 'L1' }]);
    const at = (degrees: number): Point => [
      -2 * Math.sin((degrees * Math.PI) / 180),
      2 * Math.cos((degrees * Math.PI) / 180)
    ];
    hand.drag(handleAt(editor, 'rotate'), at(46.6));
    expect(shapeOf(editor)).toMatchObject({ rotation: 45 });
  });

  it('keeps the drawing through a full turn', () => {
    const { editor } = one({ kind: 'quadrupole', centre: [1, 2], width: 1.8, length: 5 });
    for (let quarter = 0; quarter < 4; quarter++) editor.run('rotate-left');
    expect(shapeOf(editor)).toMatchObject({ centre: [1, 2], width: 1.8, length: 5, rotation: 0 });
  });

  it('turns a vehicle about itself and several things about their middle', () => {
    const probes = [{ vehicle: 'car', at: [0, 0], heading: 90 }, { vehicle: 'car', at: [6, 0], heading: 90 }]; // prettier-ignore
    const { editor } = openEditor(siteWith({ probes }));
    editor.select([{ kind: 'probe', id: '0' }]);
    editor.run('rotate-right');
    expect(editor.state.site.probes[0]).toMatchObject({ at: [0, 0], heading: 0 });
    editor.undo();
    editor.run('select-all');
    editor.run('rotate-left');
    expect(editor.state.site.probes).toMatchObject([
      { at: [3, -3], heading: 180 },
      { at: [3, 3], heading: 180 }
    ]);
  });
});
