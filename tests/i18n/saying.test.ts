/** Words that are kept are said in the language of whoever reads them. */
import { afterEach, describe, expect, it } from 'vitest';
import { createEditor } from '#editor/create-editor';
import { describeRefs, sayRefs } from '#editor/selection';
import type { Ref } from '#editor/types';
import { speakLanguage } from '#i18n/load';
import { keysOf, t } from '#i18n/message';
import { saying, told } from '#i18n/saying';
import { demoSite } from '#plan/demo';
import { updateSite } from '#plan/edits/index';

const loops: readonly Ref[] = ['L1', 'L2'].map((id) => ({ kind: 'loop', id }));
const german = () => speakLanguage('de', ['page', 'views']);

afterEach(() => speakLanguage('en', ['page', 'views', 'analysis']));

describe('a saying', () => {
  it('says its message and what is said within it in the language of then, and leaves a name as it is', async () => {
    const moved = saying('step.moveThings', { things: sayRefs(loops) });
    const added = saying('step.addWire', { name: 'Loops' });
    const english = [moved(), added()];
    await german();
    expect(moved()).toBe(t('step.moveThings', { things: describeRefs(loops) }));
    expect(english).not.toContain(moved());
    expect(added()).toBe(t('step.addWire', { name: 'Loops' }));
    expect(english).not.toContain(added());
  });

  it('chooses by its count, and fills in numbers as the language writes them', async () => {
    expect([1, 3].map((count) => saying('step.lanes', { count })())).toEqual(['Draw lane', 'Draw 3 lanes']);
    const setting = saying('step.lanes', { count: 1.5 });
    await german();
    expect(setting()).toContain('1,5');
  });

  it('is told like a text that stays', () => {
    expect([told('as written'), told(saying('step.takeApart'))]).toEqual(['as written', t('step.takeApart')]);
  });
});

it('a message is found by its words, as long as nothing is filled in', () => {
  expect(keysOf(t('step.takeApart'))).toContain('step.takeApart');
  expect(keysOf(t('step.addWire', { name: 'x' }))).toEqual([]);
});

describe('the history in another language', () => {
  it('names what was done, and what was undone, anew; what is only a name stays', async () => {
    const editor = createEditor(demoSite());
    editor.commit({ label: 'as somebody called it', site: updateSite(editor.state.site, { name: 'A' }) });
    editor.select(loops);
    editor.run('delete');
    editor.select([]);
    editor.run('select-all');
    editor.run('nudge-right');
    editor.undo();
    const english = [editor.state.undoLabel, editor.state.redoLabel, ...editor.undoSteps()];

    await german();
    editor.retell();
    const { undoLabel, redoLabel } = editor.state;
    const deleted = t('step.deleteThings', { things: describeRefs(loops) });
    expect(undoLabel).toBe(deleted);
    expect(redoLabel).not.toBeNull();
    expect(english).not.toContain(undoLabel);
    expect(english).not.toContain(redoLabel);
    expect(editor.undoSteps()).toEqual([deleted, 'as somebody called it']);
  });
});
