import { describe, expect, it } from 'vitest';
import { outlineOf } from '#editor/outline';
import { pickAll, pickInBox } from '#editor/picking';
import { openEditor, withoutSnap } from './hand';
import { siteWith, square } from './sites';

const LANE = { id: 'lane1', name: 'Lane', centreline: [[0, -8], [0, 8]], width: 3 }; // prettier-ignore

function opened() {
  const made = openEditor(siteWith({ lanes: [LANE], shapes: [square(0, 0)] }));
  withoutSnap(made.editor);
  made.editor.setTool('path');
  return made;
}

function withPath() {
  const made = opened();
  for (const at of [[3, -3], [3, 3], [6, 3]] as const) made.hand.click(at); // prettier-ignore
  made.hand.key('Enter');
  return made;
}

describe('drawing a path', () => {
  it('is done point by point, ends with Enter and leaves the path selected', () => {
    const { editor } = withPath();
    expect(editor.state.site.paths).toEqual([
      { id: 'p1', name: 'Path 1', points: [[3, -3], [3, 3], [6, 3]] } // prettier-ignore
    ]);
    expect(editor.state).toMatchObject({ tool: 'select', undoLabel: 'Draw path' });
    expect(editor.state.selection).toEqual([{ kind: 'path', id: 'p1' }]);
  });

  it('is dropped with Escape', () => {
    const { editor, hand } = opened();
    const { site } = editor.state;
    hand.click([3, -3]);
    hand.click([3, 3]);
    hand.key('Escape');
    expect(editor.state.site).toBe(site);
    expect(editor.state).toMatchObject({ draft: null, busy: false });
  });

  it('has a key', () => {
    const { editor, hand } = opened();
    editor.setTool('select');
    hand.key('N');
    expect(editor.state.tool).toBe('path');
  });
});

describe('a path under the hand', () => {
  it('is taken by its line, moved, nudged, undone and deleted', () => {
    const { editor, hand } = withPath();
    editor.select([]);
    hand.drag([3, 0], [4, 0]);
    expect(editor.state.site.paths[0]?.points[0]).toEqual([4, -3]);
    hand.key('ArrowUp');
    expect(editor.state.site.paths[0]?.points[0]).toEqual([4, -2.99]);
    hand.key('z', { control: true });
    hand.key('z', { control: true });
    expect(editor.state.site.paths[0]?.points[0]).toEqual([3, -3]);
    hand.key('Delete');
    expect(editor.state.site.paths).toEqual([]);
    expect(editor.state.undoLabel).toBe('Delete path');
  });

  it('is bent by one of its points', () => {
    const { editor, hand } = withPath();
    hand.drag([3, 3], [4, 4]);
    expect(editor.state.site.paths[0]?.points).toEqual([[3, -3], [4, 4], [6, 3]]); // prettier-ignore
  });

  it('lies above lanes and below loops, and has no inside', () => {
    const { editor } = withPath();
    const kinds = (at: readonly [number, number]) =>
      pickAll(editor.state.site, at, 0.05).map(({ ref }) => ref.kind);
    expect(kinds([3, 1])).toEqual(['path']);
    expect(kinds([4, 1])).toEqual([]);
  });

  it('is taken by a box that it crosses, though not by one that the line from its end to its start would', () => {
    const { editor } = withPath();
    const box = (left: number, bottom: number) => ({ left, bottom, right: left + 0.4, top: bottom + 0.4 });
    expect(pickInBox(editor.state.site, box(2.8, 0), true)).toEqual([{ kind: 'path', id: 'p1' }]);
    expect(pickInBox(editor.state.site, box(4.3, -0.2), true)).toEqual([]);
  });

  it('stands in the outline with its length', () => {
    const { editor } = withPath();
    expect(outlineOf(editor.state.site).at(-1)).toMatchObject({
      name: 'Path 1',
      what: 'path',
      size: '9.00 m long'
    });
  });
});
