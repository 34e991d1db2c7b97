import { describe, expect, it } from 'vitest';
import type { Shape } from '#plan/schema';
import type { Editor } from '#editor/types';
import { openEditor, type Hand } from './hand';
import { siteWith, square } from './sites';

const shapeOf = (editor: Editor, id = 'L1'): Shape =>
  (editor.state.draft ?? editor.state.site).loops.find((loop) => loop.id === id)!.shape;

const press = (hand: Hand, ...keys: string[]): void => {
  for (const key of keys) hand.key(key);
};
const digits = (hand: Hand, text: string): void => press(hand, ...text);

describe('the cross', () => {
  it('begins in the middle of the view and goes from line to line of the grid', () => {
    const { editor, hand } = openEditor();
    editor.setViewport({ ...editor.state.viewport, centre: [3.04, -1.02] });
    press(hand, 'r', 'Enter');
    expect(editor.state.keyboardPoint).toEqual([3, -1]);
    press(hand, 'ArrowRight', 'ArrowUp', 'ArrowUp');
    expect(editor.state.keyboardPoint).toEqual([3.1, -0.8]);
    hand.key('ArrowLeft', { shift: true });
    expect(editor.state.keyboardPoint).toEqual([2.1, -0.8]);
    hand.key('ArrowDown', { alt: true });
    expect(editor.state.keyboardPoint).toEqual([2.1, -0.81]);
    press(hand, 'ArrowDown');
    expect(editor.state.keyboardPoint).toEqual([2.1, -0.9]);
  });

  it('begins at what is selected, and moves nothing of it', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(4, 2)] }));
    editor.select([{ kind: 'loop', id: 'L1' }]);
    const { site } = editor.state;
    press(hand, 'c', 'ArrowUp');
    expect(editor.state.keyboardPoint).toEqual([4, 2.1]);
    expect(editor.state.site).toBe(site);
  });

  it('stays in sight', () => {
    const { editor, hand } = openEditor();
    press(hand, 'l', 'Enter');
    for (let step = 0; step < 15; step++) hand.key('ArrowRight', { shift: true });
    const { centre, width, scale } = editor.state.viewport;
    expect(editor.state.keyboardPoint).toEqual([15, 0]);
    expect(Math.abs(15 - centre[0])).toBeLessThan(width / scale / 2);
  });

  it('gives way to a mouse that is moved, not to one that is only touched', () => {
    const { editor, hand } = openEditor();
    press(hand, 'r', 'Enter');
    hand.hover([2, 2]);
    hand.hover([2.04, 2]);
    expect(editor.state.keyboardPoint).toEqual([0, 0]);
    hand.hover([2.5, 2]);
    expect(editor.state.keyboardPoint).toBeNull();
  });

  it('goes with the tool, and Backspace without a gesture removes nothing', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(4, 2)] }));
    editor.select([{ kind: 'loop', id: 'L1' }]);
    press(hand, 'r', 'Enter', 'Backspace');
    expect(editor.state.site.loops).toHaveLength(1);
    press(hand, 'Escape');
    expect(editor.state).toMatchObject({ tool: 'select', keyboardPoint: null });
  });
});

describe('drawing without a pointer', () => {
  it('puts points with Space, takes them back with Backspace and ends with Enter', () => {
    const { editor, hand } = openEditor();
    press(hand, 'l', 'Enter', ' ', 'ArrowUp', ' ', 'Backspace');
    hand.key('ArrowUp', { shift: true });
    press(hand, ' ', 'Enter');
    expect(editor.state.site.lanes[0]?.centreline).toEqual([[0, 0], [0, 1.1]]); // prettier-ignore
    expect(editor.state).toMatchObject({ tool: 'select', keyboardPoint: null });
  });

  it('places things of one point', () => {
    const { editor, hand } = openEditor();
    press(hand, 'j', 'ArrowRight', ' ');
    expect(editor.state.site.marks).toMatchObject([{ kind: 'pull-box', points: [[0.1, 0]] }]);
  });

  it('keeps to a fine place that is off the grid', () => {
    const { editor, hand } = openEditor();
    press(hand, 'c', 'Enter');
    hand.key('ArrowRight', { alt: true });
    hand.key('ArrowRight', { alt: true });
    press(hand, ' ');
    digits(hand, '2');
    press(hand, 'Enter');
    expect(shapeOf(editor)).toMatchObject({ kind: 'circle', diameter: 2 });
    expect((shapeOf(editor) as Extract<Shape, { kind: 'circle' }>).centre[0]).toBeCloseTo(0.02, 9);
  });

  it('inserts, places, sizes, turns, connects and deletes a loop in twelve presses beside the numbers', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 6)] }));
    let presses = 0;
    const count = (key: string, held: Parameters<Hand['key']>[1] = {}): void => {
      presses += 1;
      expect(hand.key(key, held), key).toBe(true);
    };
    count('r');
    count('Enter');
    count('Enter');
    digits(hand, '1.8');
    count('Tab');
    digits(hand, '2.4');
    count('Enter');
    expect(shapeOf(editor, 'L2')).toMatchObject({ width: 1.8, length: 2.4 });
    count('ArrowRight', { shift: true });
    count('t');
    expect(shapeOf(editor, 'L2')).toMatchObject({ rotation: 90 });
    count('a', { control: true });
    expect(editor.run('join-in-series')).toBe(true);
    presses += 1;
    expect(editor.state.site.circuits.filter(({ strings }) => strings.flat().length === 2)).toHaveLength(1);
    count('PageUp');
    expect(editor.state.selection).toHaveLength(1);
    count('Delete');
    expect(editor.state.site.loops).toHaveLength(1);
    expect(presses).toBeLessThanOrEqual(12);
  });
});

describe('walking through the plan', () => {
  const LANE = { id: 'lane1', centreline: [[0, -6], [0, 6]], width: 3.5 }; // prettier-ignore

  it('selects the first thing with Enter and goes round in the order of reading', () => {
    const { editor, hand } = openEditor(siteWith({ lanes: [LANE], shapes: [square(0, 3), square(0, -3)] }));
    const walked = ['Enter', 'PageDown', 'PageDown', 'PageDown', 'PageUp'].map((key) => {
      hand.key(key);
      return editor.state.selection.map(({ id }) => id).join();
    });
    expect(walked).toEqual(['lane1', 'L2', 'L1', 'lane1', 'L1']);
  });

  it('passes over what is hidden', () => {
    const site = siteWith({ shapes: [square(0, 3), square(0, -3)] });
    const { editor, hand } = openEditor({
      ...site,
      loops: [{ ...site.loops[0]!, hidden: true }, site.loops[1]!]
    });
    press(hand, 'PageDown', 'PageDown');
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: 'L2' }]);
  });

  it('makes the selected loop wider and longer by the step of a nudge, as one step to undo', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    press(hand, 'Enter');
    hand.key('ArrowRight', { alt: true });
    hand.key('ArrowRight', { alt: true, shift: true });
    hand.key('ArrowDown', { alt: true });
    expect(shapeOf(editor)).toMatchObject({ width: 2.11, length: 1.99, centre: [0, 0] });
    editor.undo();
    expect(shapeOf(editor)).toMatchObject({ width: 2, length: 2 });
  });
});
