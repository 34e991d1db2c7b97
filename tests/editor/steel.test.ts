import { describe, expect, it } from 'vitest';
import { outlineOf } from '#editor/outline';
import { pickAll } from '#editor/picking';
import { openEditor, withoutSnap } from './hand';
import { siteWith, square } from './sites';

const LANE = { id: 'lane1', name: 'Lane', centreline: [[0, -8], [0, 8]], width: 3 }; // prettier-ignore

function opened() {
  const made = openEditor(siteWith({ lanes: [LANE], shapes: [square(0, 0)] }));
  withoutSnap(made.editor);
  made.editor.setTool('steel');
  return made;
}

describe('drawing steel', () => {
  it('makes a rectangle of a drag, shown before it is left', () => {
    const { editor, hand } = opened();
    hand.hold([-4, -3], [0, 0], [4, 3]);
    expect(editor.state.draft?.steel).toHaveLength(1);
    expect(editor.state.site.steel).toHaveLength(0);
    hand.send('up', [4, 3]);
    const corners = [[-4, -3], [4, -3], [4, 3], [-4, 3]]; // prettier-ignore
    expect(editor.state.site.steel).toMatchObject([{ id: 's1', kind: 'mat', outline: corners }]);
    expect(editor.state).toMatchObject({ tool: 'select', undoLabel: 'Draw steel mat' });
    expect(editor.state.selection).toEqual([{ kind: 'steel', id: 's1' }]);
  });

  it('makes any other outline of clicks', () => {
    const { editor, hand } = opened();
    for (const at of [[-4, -3], [4, -3], [0, 5]] as const) hand.click(at); // prettier-ignore
    expect(editor.state.site.steel).toHaveLength(0);
    hand.key('Enter');
    expect(editor.state.site.steel[0]?.outline).toEqual([[-4, -3], [4, -3], [0, 5]]); // prettier-ignore
  });

  it('drops either with Escape', () => {
    const { editor, hand } = opened();
    const { site } = editor.state;
    hand.hold([-4, -3], [4, 3]);
    hand.key('Escape');
    hand.click([-4, -3]);
    hand.click([4, -3]);
    hand.key('Escape');
    expect(editor.state.site).toBe(site);
    expect(editor.state).toMatchObject({ draft: null, busy: false });
  });

  it('goes in without a pointer, under the loops that are selected', () => {
    const { editor, hand } = opened();
    editor.setTool('select');
    editor.select([{ kind: 'loop', id: 'L1' }]);
    hand.key('B', { shift: true });
    expect(editor.state.site.steel[0]?.outline).toEqual([[-2, -2], [2, -2], [2, 2], [-2, 2]]); // prettier-ignore
  });
});

describe('steel under the hand', () => {
  function withMat() {
    const made = opened();
    made.hand.drag([-4, -3], [4, 3]);
    made.editor.select([]);
    return made;
  }

  it('is taken by its edge, moved, nudged and undone', () => {
    const { editor, hand } = withMat();
    hand.drag([-4, 1], [-3, 1]);
    expect(editor.state.site.steel[0]?.outline[0]).toEqual([-3, -3]);
    hand.key('ArrowUp');
    expect(editor.state.site.steel[0]?.outline[0]).toEqual([-3, -2.99]);
    hand.key('z', { control: true });
    hand.key('z', { control: true });
    expect(editor.state.site.steel[0]?.outline[0]).toEqual([-4, -3]);
    hand.key('Delete');
    expect(editor.state.site.steel).toHaveLength(0);
  });

  it('is resized by a corner', () => {
    const { editor, hand } = withMat();
    editor.select([{ kind: 'steel', id: 's1' }]);
    hand.drag([4, 3], [5, 4]);
    expect(editor.state.site.steel[0]?.outline[2]).toEqual([5, 4]);
    expect(editor.state.site.steel[0]?.outline[0]).toEqual([-4, -3]);
  });

  it('leaves loop and lane the first to be picked where they lie on it', () => {
    const { editor } = withMat();
    const kinds = (at: readonly [number, number]) =>
      pickAll(editor.state.site, at, 0.05).map(
        ({ ref, surface }) => `${ref.kind}${surface ? ', ground' : ''}`
      );
    expect(kinds([0.5, 0.5])).toEqual(['loop', 'lane, ground', 'steel, ground']);
    expect(kinds([3, 1])).toEqual(['steel, ground']);
  });

  it('lets a small plate in a lane be taken anywhere', () => {
    const { editor, hand } = opened();
    hand.drag([-0.4, 5], [0.4, 5.8]);
    expect(pickAll(editor.state.site, [0.1, 5.3], 0.02)[0]).toEqual({
      ref: { kind: 'steel', id: 's1' },
      surface: false,
      score: expect.any(Number) as number
    });
  });

  it('stands in the outline with its size and depth', () => {
    const { editor } = withMat();
    expect(outlineOf(editor.state.site).at(-1)).toMatchObject({
      name: 'steel mat',
      what: 'steel mat',
      size: '8.00 m × 6.00 m, 100 mm deep',
      position: '0.00 m, 0.00 m'
    });
  });
});
