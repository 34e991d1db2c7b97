import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Point } from '#plan/schema';
import type { Editor } from '#editor/types';
import { sectionMarksScene, sectionObstacles } from '#scenes/field';
import type { Frame } from '#scenes/frame';
import { helpScene, tapeObstacles } from '#scenes/help';
import { labelBoxes } from '#scenes/labels';
import { boxOfWriting, common, takenOf } from '#scenes/obstacles';
import { siteWith, square } from '../editor/sites';
import { editorOf, frameOf } from './frames';

const sectioned = (from: Point, to: Point, editor: Editor): Frame =>
  frameOf(editor, { field: { section: { from, to }, currents: [] } });

describe('a loop’s label beside a section', () => {
  it('leaves the middle of its loop for the line that goes through it', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0, 5)] }));
    const [usual] = labelBoxes(frameOf(editor));
    expect((usual!.left + usual!.right) / 2).toBe(500);
    for (const end of [
      [4, 0],
      [0, 4],
      [3, 3]
    ] as const) {
      const frame = sectioned([-end[0], -end[1]], end, editor);
      const [box] = labelBoxes(frame);
      for (const obstacle of sectionObstacles(frame)) expect(takenOf(box!, obstacle)).toBe(0);
    }
  });

  it('stays within a loop that fills the screen', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0, 30)] }));
    const [box] = labelBoxes(sectioned([-8, 0], [8, 0], editor));
    expect(box!.left).toBeGreaterThan(0);
    expect(box!.top < 400 || box!.bottom > 400).toBe(true);
    expect(box!.bottom > 0 && box!.top < 800).toBe(true);
  });

  it('goes to another side of a small loop', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0, 1)] }));
    const [usual] = labelBoxes(frameOf(editor));
    expect(usual!.left).toBeGreaterThan(525);
    const [box] = labelBoxes(sectioned([-3, 0], [3, 0], editor));
    expect(box!.top < 375 || box!.bottom > 425).toBe(true);
  });

  it('covers nothing of a section through a loop alone on the screen, wherever that runs', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0, 2)] }));
    const share = fc.double({ min: -4, max: 4, noNaN: true });
    fc.assert(
      fc.property(share, share, share, share, (x1, y1, x2, y2) => {
        const frame = sectioned([x1, y1], [x2, y2], editor);
        const [box] = labelBoxes(frame);
        const taken = sectionObstacles(frame).reduce((sum, each) => sum + takenOf(box!, each), 0);
        // at most a sliver of its nearest choice: a place one further on costs as much as seven pixels of a line
        expect(taken).toBeLessThan(0.02 * (box!.right - box!.left) * (box!.top - box!.bottom) + 60);
      })
    );
  });
});

describe('a loop’s label beside a tape', () => {
  function measured(from: Point, to: Point): Frame {
    const editor = editorOf(siteWith({ shapes: [square(0, 0, 5)] }));
    editor.setSnap({ ...editor.state.snap, grid: false, objects: false });
    editor.setTool('measure');
    const at = ([x, y]: Point, type: 'down' | 'move' | 'up') => {
      const held = { button: 0, pointer: 'mouse', shift: false, alt: true, control: false } as const;
      editor.pointer({ type, x: 500 + 50 * x, y: 400 - 50 * y, ...held });
    };
    at(from, 'down');
    at(to, 'move');
    at(to, 'up');
    return frameOf(editor);
  }

  it('keeps clear of its line and its texts', () => {
    const frame = measured([-2, 0.1], [2, 0.1]);
    const obstacles = tapeObstacles(frame);
    expect(obstacles.length).toBeGreaterThanOrEqual(3);
    const [box] = labelBoxes(frame);
    for (const obstacle of obstacles) expect(takenOf(box!, obstacle)).toBe(0);
    for (const each of helpScene(frame))
      if (each.kind === 'text') expect(common(box!, boxOfWriting(each, 1))).toBe(0);
  });

  it('is where it always was while nothing is measured yet', () => {
    const editor = editorOf(siteWith({ shapes: [square(0, 0, 5)] }));
    const usual = labelBoxes(frameOf(editor));
    editor.setTool('measure');
    editor.pointer({ type: 'move', x: 500, y: 400, button: 0, pointer: 'mouse', shift: false, alt: true, control: false }); // prettier-ignore
    expect(tapeObstacles(frameOf(editor))).toEqual([]);
    expect(labelBoxes(frameOf(editor))).toEqual(usual);
  });

  it('has the letters of a section along it beside its text', () => {
    const tape = measured([-2, 1], [2, 1]);
    const frame = { ...tape, field: { section: { from: [-2, 1], to: [2, 1] }, currents: [] } } as const;
    const letters = sectionMarksScene(frame).flatMap((each) => (each.kind === 'text' ? [each] : []));
    expect(letters).toHaveLength(2);
    for (const letter of letters)
      for (const each of helpScene(frame))
        if (each.kind === 'text') expect(common(boxOfWriting(letter, 1), boxOfWriting(each, 1))).toBe(0);
  });
});
