import { describe, expect, it } from 'vitest';
import { updateSite } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import { createEditor } from '#editor/create-editor';
import { NO_HISTORY, recorded } from '#editor/history';
import type { Editor } from '#editor/types';
import type { Site } from '#plan/schema';
import { openEditor } from './hand';
import { siteWith, square } from './sites';

const rename = (editor: Editor, name: string, merge?: string) =>
  editor.commit({
    label: `Call it ${name}`,
    site: updateSite(editor.state.site, { name }),
    ...(merge === undefined ? {} : { merge })
  });

describe('history', () => {
  it('goes back to the start and forward to the end, the same objects', () => {
    const start = emptySite();
    const editor = createEditor(start);
    const sites = ['a', 'b', 'c', 'd'].map((name) => {
      rename(editor, name);
      return editor.state.site;
    });
    for (const site of [sites[2], sites[1], sites[0], start]) {
      editor.undo();
      expect(editor.state.site).toBe(site);
    }
    editor.undo();
    expect(editor.state.site).toBe(start);
    for (const site of sites) {
      editor.redo();
      expect(editor.state.site).toBe(site);
    }
  });

  it('names the steps that it would take back and repeat', () => {
    const editor = createEditor(emptySite());
    expect(editor.state.undoLabel).toBeNull();
    rename(editor, 'a');
    rename(editor, 'b');
    editor.undo();
    expect(editor.state.undoLabel).toBe('Call it a');
    expect(editor.state.redoLabel).toBe('Call it b');
  });

  it('keeps 200 steps', () => {
    const editor = createEditor(emptySite('start'));
    for (let step = 1; step <= 250; step++) rename(editor, `step ${step}`);
    for (let step = 0; step < 300; step++) editor.undo();
    expect(editor.state.site.name).toBe('step 50');
  });

  it('takes no step for a site that is the same object', () => {
    const editor = createEditor(emptySite());
    rename(editor, 'Untitled site');
    expect(editor.state.undoLabel).toBeNull();
    expect(editor.state.revision).toBe(0);
  });

  it('drops what was undone when something new is done, but not by selecting', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    rename(editor, 'a');
    editor.undo();
    hand.click([0, 0]);
    expect(editor.state.selection).toHaveLength(1);
    expect(editor.state.redoLabel).toBe('Call it a');
    rename(editor, 'b');
    expect(editor.state.redoLabel).toBeNull();
  });

  it('restores the selection that a step had', () => {
    const { editor, hand } = openEditor(siteWith({ shapes: [square(0, 0), square(4, 0)] }));
    hand.click([0, 0]);
    hand.key('Delete');
    expect(editor.state.selection).toEqual([]);
    hand.click([4, 0]);
    editor.undo();
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: 'L1' }]);
    editor.redo();
    expect(editor.state.selection).toEqual([]);
  });

  it('joins steps of the same kind until something else happens', () => {
    const { editor } = openEditor(siteWith({ shapes: [square(0, 0)] }));
    rename(editor, 'a', 'name');
    rename(editor, 'ab', 'name');
    editor.select([{ kind: 'loop', id: 'L1' }]);
    rename(editor, 'abc', 'name');
    editor.undo();
    expect(editor.state.site.name).toBe('ab');
    editor.undo();
    expect(editor.state.site.name).toBe('Quarry Row');
  });

  it('takes no step for a gesture that ends where it began', () => {
    const editor = createEditor(emptySite('start'));
    rename(editor, 'before');
    const start = editor.state.site;
    rename(editor, 'a', 'gesture');
    rename(editor, 'b', 'gesture');
    editor.commit({ label: 'Back', site: start, merge: 'gesture' });
    expect(editor.state.site).toBe(start);
    expect([editor.state.undoLabel, editor.state.redoLabel]).toEqual(['Call it before', null]);
    editor.undo();
    expect(editor.state.site.name).toBe('start');
  });

  it('joins no step to one from before something was taken back', () => {
    const editor = createEditor(emptySite('start'));
    rename(editor, 'a', 'typing');
    rename(editor, 'b');
    editor.undo();
    rename(editor, 'c', 'typing');
    editor.undo();
    expect(editor.state.site.name).toBe('a');
  });

  it('joins steps of one gesture only where each begins where the last one ended', () => {
    const [a, b, c] = [emptySite('a'), emptySite('b'), emptySite('c')];
    const step = (before: Site, after: Site) => ({
      label: 'Type',
      before: { site: before, selection: [] },
      after: { site: after, selection: [] },
      merge: 'typing'
    });
    expect(recorded(recorded(NO_HISTORY, step(a, b)), step(b, c)).past).toHaveLength(1);
    expect(recorded(recorded(NO_HISTORY, step(a, b)), step(a, c)).past).toHaveLength(2);
  });

  it('counts every change of the document, undo and redo included', () => {
    const editor = createEditor(emptySite());
    rename(editor, 'a');
    editor.undo();
    editor.redo();
    expect(editor.state.revision).toBe(3);
    editor.open(emptySite());
    expect(editor.state.revision).toBe(0);
    expect(editor.state.undoLabel).toBeNull();
  });

  it('tells its listeners once a change and not at all without one', () => {
    const editor = createEditor(emptySite());
    let calls = 0;
    const stop = editor.subscribe(() => (calls += 1));
    rename(editor, 'a');
    expect(calls).toBe(1);
    editor.select([]);
    expect(calls).toBe(1);
    stop();
    rename(editor, 'b');
    expect(calls).toBe(1);
  });
});
