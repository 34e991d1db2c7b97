import { describe, expect, it } from 'vitest';
import { openEditor } from './hand';
import { siteWith, square } from './sites';

const L1 = { kind: 'loop', id: 'L1' };
const L2 = { kind: 'loop', id: 'L2' };
const L3 = { kind: 'loop', id: 'L3' };
const LANE = { id: 'lane1', centreline: [[0, -7], [0, 7]], width: 4 }; // prettier-ignore

const threeLoops = () => openEditor(siteWith({ shapes: [square(-5, 0), square(0, 0), square(5, 0)] }));

describe('selecting', () => {
  it('takes what is clicked, on its line or inside, and lets go on empty ground', () => {
    const { editor, hand } = threeLoops();
    hand.click([0, 0.3]);
    expect(editor.state.selection).toEqual([L2]);
    hand.click([6.1, 0]);
    expect(editor.state.selection).toEqual([L3]);
    hand.click([2.5, 3]);
    expect(editor.state.selection).toEqual([]);
  });

  it('adds and removes with shift', () => {
    const { editor, hand } = threeLoops();
    hand.click([0, 0]);
    hand.click([5, 0], { shift: true });
    expect(editor.state.selection).toEqual([L2, L3]);
    hand.click([0, 0], { shift: true });
    expect(editor.state.selection).toEqual([L3]);
    hand.click([2.5, 3], { shift: true });
    expect(editor.state.selection).toEqual([L3]);
  });

  it('takes what is wholly inside a box drawn to the right', () => {
    const { editor, hand } = threeLoops();
    hand.drag([-6.5, 2], [0.5, -2]);
    expect(editor.state.selection).toEqual([L1]);
  });

  it('takes also what a box drawn to the left touches', () => {
    const { editor, hand } = threeLoops();
    hand.drag([0.5, 2], [-6.5, -2]);
    expect(editor.state.selection).toEqual([L1, L2]);
  });

  it('touches a loop whose side runs through the box from end to end', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0, 6)] }));
    hand.drag([3.5, 0.5], [2.5, -0.5]);
    expect(editor.state.selection).toEqual([L1]);
  });

  it('shows the box while it is drawn and nothing afterwards', () => {
    const { editor, hand } = threeLoops();
    hand.hold([2.5, 3], [1, 2], [0, 1.5]);
    expect(editor.state.overlay.box).toEqual({ from: [2.5, 3], to: [0, 1.5], touching: true });
    hand.send('up', [0, 1.5]);
    expect(editor.state.overlay.box).toBeNull();
  });

  it('selects a lane by a click on its surface, and draws a box by a drag there', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0, 1)], lanes: [LANE] }));
    hand.click([1.2, 3]);
    expect(editor.state.selection).toEqual([{ kind: 'lane', id: 'lane1' }]);
    editor.select([]);
    hand.drag([-1.2, 2], [1.2, -2]);
    expect(editor.state.selection).toEqual([L1]);
    expect(editor.state.undoLabel).toBeNull();
  });

  it('looks under what is selected with alt', () => {
    const probes = [{ vehicle: 'car', at: [0, 0] }];
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0, 1)], lanes: [LANE], probes }));
    hand.click([0, 0]);
    expect(editor.state.selection).toEqual([{ kind: 'probe', id: '0' }]);
    hand.click([0, 0], { alt: true });
    expect(editor.state.selection).toEqual([L1]);
    hand.click([0, 0], { alt: true });
    expect(editor.state.selection).toEqual([{ kind: 'lane', id: 'lane1' }]);
    hand.click([0, 0], { alt: true });
    expect(editor.state.selection).toEqual([{ kind: 'probe', id: '0' }]);
  });

  it('prefers the smaller of two loops inside each other', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0, 6), square(0, 0, 2)] }));
    hand.click([0.4, 0.4]);
    expect(editor.state.selection).toEqual([L2]);
    hand.click([2, 2]);
    expect(editor.state.selection).toEqual([L1]);
  });

  it('shows what lies under the pointer, farther for a finger than for a mouse', () => {
    const { editor, hand } = threeLoops();
    hand.hover([0, 1.22]);
    expect(editor.state.overlay.hover).toBeNull();
    hand.send('move', [0, 1.22], {}, 'touch');
    expect(editor.state.overlay.hover).toEqual(L2);
    hand.send('leave', [0, 1.22]);
    expect(editor.state.overlay.hover).toBeNull();
  });

  it('does not announce a wandering pointer that finds nothing new', () => {
    const { editor, hand } = threeLoops();
    hand.hover([0, 0]);
    let calls = 0;
    editor.subscribe(() => (calls += 1));
    for (let x = -0.5; x < 0.5; x += 0.1) hand.hover([x, 0.1]);
    expect(calls).toBe(0);
  });

  it('forgets what is no longer there', () => {
    const { editor, hand } = threeLoops();
    editor.select([{ kind: 'loop', id: 'L9' }, { kind: 'loop', id: 'L1' }]); // prettier-ignore
    expect(editor.state.selection).toEqual([L1]);
    hand.key('Delete');
    expect(editor.state.selection).toEqual([]);
  });
});

describe('the other button', () => {
  it('selects what a menu would speak about, and keeps a selection that it hits', () => {
    const { editor } = threeLoops();
    const press = (x: number, y: number) => {
      const at = { button: 2, pointer: 'mouse', shift: false, alt: false, control: false } as const;
      editor.pointer({ ...at, type: 'down', x: 500 + 50 * x, y: 400 - 50 * y });
    };
    press(0, 0);
    expect(editor.state.selection).toEqual([L2]);
    editor.run('select-all');
    press(5, 0);
    expect(editor.state.selection).toHaveLength(3);
    press(2.5, 3);
    expect(editor.state.selection).toEqual([]);
    expect(editor.state.busy).toBe(false);
  });
});

describe('things that lie exactly on each other', () => {
  it('leave the one that is selected in the hand, as after a paste in place', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0), square(0, 0)] }));
    for (const id of ['L2', 'L1']) {
      editor.select([{ kind: 'loop', id }]);
      hand.drag([0.3, 0.3], [2.3, 0.3], { alt: false });
      expect(editor.state.selection).toEqual([{ kind: 'loop', id }]);
      editor.undo();
    }
  });
});
