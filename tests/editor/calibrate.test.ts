import { describe, expect, it } from 'vitest';
import { addUnderlay, newLines, newUnderlay, scaleUnderlay } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import type { Picture } from '#plan/schema';
import { pixelUnder, spanOnPlan } from '#plan/underlays';
import { pickAll, pickAt } from '#editor/picking';
import { openEditor } from './hand';
import { siteWith, square } from './sites';

const picture: Picture = { mediaType: 'image/png', data: 'iVBORw0KGgo=', width: 400, height: 300 };

/** A picture of 8 m by 6 m about the middle of a plan, on which one loop may be drawn. */
function withPicture(base = emptySite(), locked = true) {
  const made = newUnderlay(base, { name: 'Photo', picture, at: [0, 0], metresPerPixel: 0.02 });
  return openEditor(addUnderlay(base, { ...made, locked }));
}

describe('the tool that scales a picture', () => {
  it('takes two clicks, or one drag, exactly where the hand is', () => {
    for (const clicks of [true, false]) {
      const { editor, hand } = withPicture();
      editor.run('tool-calibrate');
      if (clicks) {
        hand.click([-1.234, 0.5]);
        hand.click([2.345, 0.5]);
      } else hand.drag([-1.234, 0.5], [2.345, 0.5]);
      expect(editor.state.span?.from[0]).toBeCloseTo(-1.234, 9);
      expect(editor.state.span?.to[0]).toBeCloseTo(2.345, 9);
    }
  });

  it('scales the lines of a drawing in metres, of which a hand span is less than one', () => {
    const lines = { width: 8, height: 6, paths: [[[0, 0], [8, 6]]] } as const; // prettier-ignore
    const base = emptySite();
    const { editor, hand } = openEditor(
      addUnderlay(base, newLines(base, { name: 'Yard', lines, at: [0, 0], metresPerUnit: 1 }))
    );
    editor.run('tool-calibrate');
    hand.click([-1, 0]);
    hand.click([-0.5, 0]);
    expect(editor.state.span).toEqual({ from: [-1, 0], to: [-0.5, 0] });
    const [underlay] = editor.state.site.underlays;
    const span = {
      from: pixelUnder(underlay!, [-1, 0]),
      to: pixelUnder(underlay!, [-0.5, 0]),
      distance_m: 1
    };
    const [scaled] = scaleUnderlay(editor.state.site, underlay!.id, span).underlays;
    expect(scaled).toMatchObject({ metresPerPixel: 2, scaledBy: { distance_m: 1 }, lines });
    expect(spanOnPlan(scaled!)).toEqual([[-1, 0], [0, 0]]); // prettier-ignore
  });

  it('takes no point beside the picture, and no two points that are one', () => {
    const { editor, hand } = withPicture();
    editor.run('tool-calibrate');
    hand.click([5, 0]);
    expect(editor.state.busy).toBe(false);
    hand.click([0, 0]);
    hand.click([0.01, 0]);
    expect(editor.state.span).toBeNull();
    hand.click([5, 0]);
    expect(editor.state.span).toBeNull();
    hand.click([3, 0]);
    expect(editor.state.span).toEqual({ from: [0, 0], to: [3, 0] });
  });

  it('lets an end be dragged while the distance is waited for', () => {
    const { editor, hand } = withPicture();
    editor.run('tool-calibrate');
    hand.click([0, 0]);
    hand.click([3, 0]);
    hand.drag([3.05, 0], [3.05, 1]);
    expect(editor.state.span?.from).toEqual([0, 0]);
    expect(editor.state.span?.to[1]).toBeCloseTo(1, 9);
    // Over the rim of the picture it goes back to where it was.
    hand.drag([3, 1], [3, 9]);
    expect(editor.state.span?.to[1]).toBeCloseTo(1, 9);
  });

  it('drops the points on Escape, then itself, and leaves the document alone', () => {
    const { editor, hand } = withPicture();
    const before = editor.state.site;
    editor.run('tool-calibrate');
    hand.click([0, 0]);
    hand.click([3, 0]);
    editor.cancel();
    expect(editor.state.span).toBeNull();
    expect(editor.state.tool).toBe('calibrate');
    editor.cancel();
    expect(editor.state.tool).toBe('select');
    expect(editor.state.site).toBe(before);
  });
});

describe('a picture that was scaled', () => {
  it('is measured by the tape as what was typed', () => {
    for (const distance_m of [7.2, 12.345, 0.9, 88]) {
      const { editor, hand } = withPicture();
      editor.run('tool-calibrate');
      hand.click([-1.5, 1]);
      hand.click([2.5, -1]);
      const { span, site } = editor.state;
      const [underlay] = site.underlays;
      const next = scaleUnderlay(site, underlay!.id, {
        from: pixelUnder(underlay!, span!.from),
        to: pixelUnder(underlay!, span!.to),
        distance_m
      });
      editor.commit({ label: 'Scale', site: next });
      const [from, to] = spanOnPlan(next.underlays[0]!)!;
      editor.fit('all');
      editor.run('tool-measure');
      hand.drag(from, to, { alt: true });
      const read = Number.parseFloat(editor.state.overlay.guides[0]!.label);
      expect(Math.abs(read / distance_m - 1)).toBeLessThan(1e-3);
    }
  });
});

describe('a picture under the hand', () => {
  it('is not in the way while it is locked, and is found beneath by alt', () => {
    const { editor, hand } = withPicture(siteWith({ shapes: [square(0, 0)] }));
    expect(pickAt(editor.state.site, [3, 2], 0.1)).toBeNull();
    hand.drag([3, 2], [3.5, 2.5]);
    expect(editor.state.selection).toEqual([]);
    hand.click([3, 2], { alt: true });
    expect(editor.state.selection).toEqual([{ kind: 'underlay', id: 'picture1' }]);
    hand.click([0, 0]);
    expect(editor.state.selection).toEqual([{ kind: 'loop', id: 'L1' }]);
    expect(pickAll(editor.state.site, [0, 0], 0.1).map(({ ref }) => ref.kind)).toEqual(['loop', 'underlay']);
  });

  it('is dragged once it is unlocked and selected', () => {
    const { editor, hand } = withPicture(emptySite(), false);
    editor.setSnap({ ...editor.state.snap, grid: false, objects: false });
    hand.click([1, 1]);
    hand.drag([1, 1], [2, 1]);
    expect(editor.state.site.underlays[0]?.at[0]).toBeCloseTo(1, 6);
  });

  it('asks the page for a file, and not where nothing may be changed', () => {
    const { editor } = withPicture();
    expect(editor.run('insert-underlay')).toBe(true);
    expect(editor.state.asked).toBe('picture');
    editor.ask(null);
    editor.setReadOnly(true);
    expect(editor.run('insert-underlay')).toBe(false);
  });
});
