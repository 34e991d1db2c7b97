import { describe, expect, it } from 'vitest';
import type { Point, Site } from '#plan/schema';
import { centreOf } from '#plan/shapes/index';
import { repeatSelection, setGap } from '#editor/arranging';
import { allRefs } from '#editor/selection';
import type { Editor } from '#editor/types';
import { openEditor } from './hand';
import { siteWith, square } from './sites';

const LANE = { id: 'lane1', name: 'Exit', centreline: [[0, -20], [0, 20]], width: 3.5 }; // prettier-ignore

const centres = (editor: Editor): Point[] =>
  editor.state.site.loops.map(({ shape }) => {
    const [x, y] = centreOf(shape);
    return [Math.round(x * 1e6) / 1e6 + 0, Math.round(y * 1e6) / 1e6 + 0];
  });

function opened(change: (site: Site) => Site = (site) => site) {
  const shapes = [square(0, -6), square(0.5, 0), square(1, 9)];
  const { editor } = openEditor(change(siteWith({ shapes, lanes: [LANE] })));
  editor.select(['L1', 'L2', 'L3'].map((id) => ({ kind: 'loop', id }) as const));
  return editor;
}

const lockFirst = (site: Site): Site => ({
  ...site,
  loops: site.loops.map((loop, index) => (index === 0 ? { ...loop, locked: true } : loop))
});

describe('arranging', () => {
  it('is one step, named, that keeps the selection', () => {
    const editor = opened();
    const { site, selection } = editor.state;
    expect(editor.run('align-left')).toBe(true);
    expect(centres(editor).map(([x]) => x)).toEqual([0, 0, 0]);
    expect(editor.state.undoLabel).toBe('Align 3 loops');
    expect(editor.state.selection).toEqual(selection);
    editor.undo();
    expect(editor.state.site).toBe(site);
  });

  it('leaves what is locked, goes by it, and says so', () => {
    const editor = opened(lockFirst);
    editor.run('align-right');
    expect(centres(editor).map(([x]) => x)).toEqual([0, 0, 0]);
    expect(editor.state.notice?.text).toContain('locked');
  });

  it('spaces loops along their lane', () => {
    const editor = opened();
    editor.run('distribute-lane');
    expect(centres(editor)).toEqual([[0, -6], [0.5, 1.5], [1, 9]]); // prettier-ignore
  });

  it('sets a gap to the tenth of a millimetre', () => {
    const editor = opened();
    expect(setGap(editor, 'y', 1.2345)).toBe(true);
    expect(centres(editor).map(([, y]) => y)).toEqual([-6, -2.7655, 0.469]);
    expect(setGap(editor, 'y', 1.2345)).toBe(false);
  });

  it('repeats as far as the lane goes and says how often', () => {
    const editor = opened();
    editor.select([{ kind: 'loop', id: 'L3' }]);
    const [lane] = editor.state.site.lanes;
    expect(repeatSelection(editor, lane!, 5, 4).made).toBe(2);
    expect(centres(editor).slice(3)).toEqual([[1, 13], [1, 17]]); // prettier-ignore
    expect(editor.state.notice?.text).toContain('2 copies were made of 5');
    expect(editor.state.undoLabel).toBe('Repeat loop');
  });

  it('asks the page for figures', () => {
    const editor = opened();
    editor.run('set-gap');
    expect(editor.state.asked).toBe('gap');
    editor.ask(null);
    editor.run('repeat-along-lane');
    expect(editor.state.asked).toBe('repeat');
  });

  it('mirrors across the middle of the lane', () => {
    const editor = opened();
    editor.run('mirror-lane');
    expect(centres(editor)).toEqual([[0, -6], [-0.5, 0], [-1, 9]]); // prettier-ignore
  });

  it('centres each in its lane, straight across it, and leaves what is there already', () => {
    const editor = opened();
    editor.run('centre-in-lane');
    expect(centres(editor)).toEqual([[0, -6], [0, 0], [0, 9]]); // prettier-ignore
    const { site } = editor.state;
    editor.run('centre-in-lane');
    expect(editor.state.site).toBe(site);
  });

  it('changes nothing where nothing may be changed', () => {
    const editor = opened();
    editor.setReadOnly(true);
    const { site } = editor.state;
    for (const id of [
      'align-left',
      'distribute-y',
      'mirror-x',
      'lock',
      'hide',
      'delete',
      'paste',
      'duplicate'
    ])
      editor.run(id);
    expect(editor.state.site).toBe(site);
  });
});

describe('the loops of a lane', () => {
  it('are chosen from the lane or from one of them', () => {
    const editor = opened();
    const all = editor.state.selection;
    editor.select([{ kind: 'lane', id: 'lane1' }]);
    editor.run('select-lane-loops');
    expect(editor.state.selection).toEqual(all);
    editor.select([{ kind: 'loop', id: 'L2' }]);
    editor.run('select-lane-loops');
    expect(editor.state.selection).toEqual(all);
  });
});

describe('lock and hide', () => {
  it('toggles the lock, and everything unlocks at once', () => {
    const editor = opened();
    const { site } = editor.state;
    editor.run('lock');
    expect(editor.state.undoLabel).toBe('Lock 3 loops');
    editor.run('delete');
    expect(editor.state.site.loops).toHaveLength(3);
    expect(editor.state.notice?.text).toContain('Ctrl+L');
    editor.run('lock');
    expect(editor.state.undoLabel).toBe('Unlock 3 loops');
    expect(JSON.stringify(editor.state.site)).toBe(JSON.stringify(site));
  });

  it('takes a layer off as well when it is the layer that holds', () => {
    const editor = opened((site) => ({ ...site, layers: { loops: { locked: true } } }));
    editor.run('lock');
    expect(editor.state.site.layers).toBeUndefined();
  });

  it('deletes, cuts, turns and mirrors all but the locked ones', () => {
    for (const command of ['delete', 'cut', 'rotate-left', 'mirror-y']) {
      const editor = opened(lockFirst);
      const [first] = editor.state.site.loops;
      editor.run(command);
      expect(editor.state.site.loops[0]).toBe(first);
      expect(editor.state.revision).toBe(1);
      expect(editor.state.notice?.text).toContain('One thing is locked');
    }
  });

  it('hides, lets go, and is out of reach of every hand but the outline', () => {
    const editor = opened();
    editor.run('hide');
    expect(editor.state.selection).toEqual([]);
    expect(editor.state.notice?.text).toContain('still counted');
    editor.run('select-all');
    expect(editor.state.selection.map(({ kind }) => kind)).toEqual(['lane']);
    editor.run('show-all');
    editor.run('select-all');
    expect(editor.state.selection).toEqual(allRefs(editor.state.site));
  });
});
