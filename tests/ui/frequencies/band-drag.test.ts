import { beforeEach, describe, expect, it } from 'vitest';
import type { Bench } from '#ui/bench';
import { createEditor } from '#editor/create-editor';
import type { Editor } from '#editor/types';
import { updateSite } from '#plan/edits/index';
import { BandDrag } from '#ui/frequencies/band-drag.svelte.ts';
import { putOnSetting } from '#ui/frequencies/edits';
import { rowsOf } from '#ui/frequencies/rows';
import { channelOf, siteOf } from './sites';

let editor: Editor;
let bench: Bench;
let drag: BandDrag;

/** As much of a bench as a hand on a band needs: the real editor. */
function open(given: number | undefined = undefined): void {
  const more = given === undefined ? {} : { frequency_Hz: given };
  editor = createEditor(siteOf([{ circuit: 'A', unit: 'U2', setting: 1, ...more }]));
  bench = {
    editor,
    get state() {
      return editor.state;
    }
  } as Bench;
  drag = new BandDrag(bench);
}

const row = () => rowsOf(editor.state.site, [channelOf('A', 40_000)])[0]!;
const setting = () => editor.state.site.circuits[0]?.channel?.frequencySetting;
/** At a pixel for every 100 Hz. */
const press = (hertz: number) => {
  drag.press(row(), hertz / 100, hertz);
};
const move = (hertz: number) => {
  drag.move(hertz / 100, hertz);
};

beforeEach(() => {
  open();
});

describe('a band in the hand', () => {
  it('goes to the nearest setting at once, and all of it is one step', () => {
    press(40_400);
    move(45_500);
    expect(setting()).toBe(2);
    move(58_000);
    expect(setting()).toBe(3);
    expect(drag.release()).toBeNull();
    expect(editor.state.undoLabel).toBe('Change the frequency setting of Lane A');
    editor.undo();
    expect(setting()).toBe(1);
    expect(editor.state.undoLabel).toBeNull();
  });

  it('is held where it was taken: what counts is how far it went', () => {
    press(44_000);
    move(48_500);
    expect(setting()).toBe(1);
    move(49_500);
    expect(setting()).toBe(2);
  });

  it('leaves the very same site and no step when it is given up, or brought back', () => {
    const { site } = editor.state;
    press(40_000);
    move(60_000);
    expect(drag.giveUp()).toBe(true);
    expect(editor.state.site).toBe(site);
    expect([editor.state.undoLabel, editor.state.redoLabel]).toEqual([null, null]);
    press(40_000);
    move(60_000);
    move(40_000);
    drag.release();
    expect(editor.state.site).toBe(site);
    expect(editor.state.undoLabel).toBeNull();
  });

  it('keeps the steps of two drags apart', () => {
    press(40_000);
    move(50_000);
    drag.release();
    drag.press({ ...row(), readout: channelOf('A', 50_000) }, 500, 50_000);
    move(60_000);
    drag.release();
    editor.undo();
    expect(setting()).toBe(2);
  });

  it('is clicked when it hardly moves', () => {
    press(40_000);
    move(40_300);
    expect(drag.held).toBeNull();
    expect(drag.release()).toBe('A');
    expect(editor.state.undoLabel).toBeNull();
    expect(drag.release()).toBeNull();
    expect(drag.giveUp()).toBe(false);
  });

  it('is let go of when the site changes under the hand', () => {
    press(40_000);
    move(50_000);
    editor.commit({ label: 'Rename', site: updateSite(editor.state.site, { name: 'Another' }) });
    const { site } = editor.state;
    move(60_000);
    expect(drag.held).toBeNull();
    expect(drag.giveUp()).toBe(false);
    expect(editor.state.site).toBe(site);
  });

  it('stays where its frequency is given', () => {
    open(71_000);
    press(71_000);
    move(60_000);
    drag.release();
    expect(editor.state.undoLabel).toBeNull();
  });
});

describe('a remedy’s setting', () => {
  it('also takes the place of a given frequency, as a step of its own', () => {
    open(71_000);
    putOnSetting(bench, 'A', 2, null);
    expect(editor.state.site.circuits[0]?.channel).toMatchObject({ frequencySetting: 2, frequency_Hz: null });
    putOnSetting(bench, 'A', 3, null);
    editor.undo();
    expect(setting()).toBe(2);
  });
});
