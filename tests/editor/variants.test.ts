/** One step each: a switch from one design to another is taken back as a whole. */
import { describe, expect, it } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { keepVariant, removeVariant, switchTo, updateLoop } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { siteWith, square } from './sites';

describe('undo across designs', () => {
  it('brings back the design, what was kept over, and a removed variant', () => {
    const start = siteWith({ shapes: [square(0, 0)] });
    const editor = createEditor(start);
    const seen: Site[] = [start];
    const commit = (label: string, edit: (site: Site) => Site) => {
      editor.commit({ label, site: edit(editor.state.site) });
      seen.push(editor.state.site);
    };
    commit('Keep', (site) => keepVariant(site, 'First'));
    commit('Turns', (site) => updateLoop(site, 'L1', { turns: 7 }));
    commit('Keep', (site) => keepVariant(site, 'Second'));
    commit('Turns', (site) => updateLoop(site, 'L1', { turns: 8 }));
    commit('Switch', (site) => switchTo(site, 'V1', 'Before'));
    commit('Remove', (site) => removeVariant(site, 'V2'));
    expect(new Set(seen).size).toBe(7);
    expect(editor.state.site.loops[0]?.turns).toBe(start.loops[0]?.turns);

    for (const site of seen.slice(0, -1).toReversed()) {
      editor.undo();
      expect(editor.state.site).toBe(site);
    }
    for (const site of seen.slice(1)) {
      editor.redo();
      expect(editor.state.site).toBe(site);
    }
    editor.undo();
    editor.undo();
    expect(editor.state.site).toMatchObject({ variant: 'V2', loops: [{ turns: 8 }] });
    expect(editor.state.site.variants?.map(({ design }) => design.loops[0]?.turns)).toEqual([
      start.loops[0]?.turns,
      7
    ]);
    expect(editor.state.redoLabel).toBe('Switch');
  });
});
