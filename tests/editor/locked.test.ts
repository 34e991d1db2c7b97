import { describe, expect, it } from 'vitest';
import type { Shape, Site } from '#plan/schema';
import { selectionHandles } from '#editor/handles';
import { changesLocked } from '#editor/locks';
import type { Editor } from '#editor/types';
import { openEditor, withoutSnap } from './hand';
import { siteWith, square } from './sites';

const shapeOf = (editor: Editor, id: string): Shape =>
  (editor.state.draft ?? editor.state.site).loops.find((loop) => loop.id === id)!.shape;

/** The first of two loops is locked. */
function opened() {
  const site = siteWith({ shapes: [square(0, 0), square(4, 0)] });
  const locked: Site = { ...site, loops: [{ ...site.loops[0]!, locked: true }, site.loops[1]!] };
  const made = openEditor(locked);
  withoutSnap(made.editor);
  return made;
}

const BOTH = [{ kind: 'loop', id: 'L1' }, { kind: 'loop', id: 'L2' }] as const; // prettier-ignore

describe('a locked thing', () => {
  it('is selected by a press, stays under a drag, and the text says why', () => {
    const { editor, hand } = opened();
    const { site } = editor.state;
    hand.hold([0, 0], [1, 1], [2, 2]);
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: 'L1' }]);
    expect(editor.state.overlay.label?.text).toContain('locked');
    expect(editor.state.draft).toBeNull();
    hand.send('up', [2, 2]);
    expect(editor.state.site).toBe(site);
    expect(editor.state).toMatchObject({ busy: false, revision: 0 });
  });

  it('lets the rest of the selection go', () => {
    const { editor, hand } = opened();
    editor.select(BOTH);
    hand.drag([4, 0], [5, 1]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0, 0] });
    expect(shapeOf(editor, 'L2')).toMatchObject({ centre: [5, 1] });
    expect(editor.state.selection).toEqual(BOTH);
  });

  it('is passed over by nudges and keys that resize', () => {
    const { editor, hand } = opened();
    editor.select(BOTH);
    hand.key('ArrowRight', { shift: true });
    hand.key('ArrowRight', { alt: true, shift: true });
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0, 0], width: 2 });
    expect(shapeOf(editor, 'L2')).toMatchObject({ centre: [4.1, 0], width: 2.1 });
  });

  it('cannot be resized by its handles', () => {
    const { editor, hand } = opened();
    editor.select([BOTH[0]]);
    const { site, selection, viewport } = editor.state;
    const corner = selectionHandles(site, selection, viewport).find(({ id }) => id === 'ne');
    hand.drag(corner?.at ?? [1, 1], [3, 3]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ width: 2, length: 2, centre: [0, 0] });
  });

  it('counts by its layer too', () => {
    const site = siteWith({ shapes: [square(0, 0)] });
    const { editor, hand } = openEditor({ ...site, layers: { loops: { locked: true } } });
    hand.drag([0, 0], [1, 1]);
    expect(shapeOf(editor, 'L1')).toMatchObject({ centre: [0, 0] });
  });
});

describe('a plan that is only looked at', () => {
  it('keeps its things in their places and says why', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    editor.setReadOnly(true);
    const { site } = editor.state;
    hand.hold([0, 0], [1, 1]);
    expect(editor.state.overlay.label?.text).toContain('read only');
    hand.send('up', [1, 1]);
    hand.key('ArrowRight');
    editor.setTool('rectangle');
    hand.drag([-3, -3], [-1, -1]);
    expect(editor.state.overlay.label?.text).toContain('read only');
    editor.setTool('lane');
    hand.click([0, 0]);
    hand.click([0, 3]);
    hand.key('Enter');
    expect(editor.state.site).toBe(site);
    expect(editor.state.busy).toBe(false);
  });
});

describe('an edit of the whole site', () => {
  const site = siteWith({ shapes: [square(0, 0), square(4, 0)] });
  const [first, second] = [site.loops[0]!, site.loops[1]!];
  const held: Site = { ...site, loops: [{ ...first, locked: true }, second] };
  const withFirst = (change: object): Site => ({
    ...held,
    loops: [{ ...held.loops[0]!, ...change }, second]
  });

  it.each([
    ['moves it', { shape: square(1, 1) }, true],
    ['gives it other turns', { turns: 9 }, true],
    ['unlocks it', { locked: false }, false],
    ['unlocks and moves it', { locked: false, shape: square(1, 1) }, false],
    ['hides it', { hidden: true }, false],
    ['lets its tail follow the box', { tail: { ...first.tail, length: 77 } }, false]
  ])('that %s', (_, change, isRefused) => {
    expect(changesLocked(held, withFirst(change))).toBe(isRefused);
  });

  it('may lock something and change it in one go, and delete what is locked', () => {
    expect(changesLocked(site, withFirst({ shape: square(1, 1) }))).toBe(false);
    expect(changesLocked(held, { ...held, loops: [second] })).toBe(false);
  });
});
