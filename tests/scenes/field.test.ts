import { describe, expect, it } from 'vitest';
import type { Point } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { currentsScene, sectionLineScene, sectionMarksScene, sectionObstacles } from '#scenes/field';
import type { Frame, SectionLine } from '#scenes/frame';
import { GRIP } from '#scenes/section-line';
import { LIGHT } from '#scenes/theme';
import { siteWith } from '../editor/sites';
import { editorOf, frameOf } from './frames';

const view = editorOf(siteWith({})).state.viewport;
const lines = (drawings: readonly Drawing[]) =>
  drawings.flatMap((each) => (each.kind === 'line' ? [each] : []));

const VIEW = editorOf(siteWith({}));
const framed = (section: SectionLine | null, more: Partial<Frame> = {}) =>
  frameOf(VIEW, { field: { section, currents: [] }, ...more });
const texts = (drawings: readonly Drawing[]) =>
  drawings.flatMap((each) => (each.kind === 'text' ? [each] : []));

describe('a section on the plan', () => {
  const frame = framed({ from: [-2, 0], to: [2, 0] });
  const marks = sectionMarksScene(frame);

  it('is a broken line from end to end, at 50 pixels a metre round (500, 400)', () => {
    const [drawn] = lines(sectionLineScene(frame));
    expect(drawn!.points).toEqual([[400, 400], [600, 400]]); // prettier-ignore
    expect(drawn!.stroke!.dash).toBeDefined();
  });

  it('has its letter beyond both ends, clear of the grip that is there', () => {
    const letters = texts(marks);
    expect(letters.map(({ text }) => text)).toEqual(['A', 'A']);
    expect(letters[0]!.at[0]).toBeLessThan(400 - GRIP.half);
    expect(letters[1]!.at[0]).toBeGreaterThan(600 + GRIP.half);
  });

  it('is looked at to the left of its direction: from left to right one looks up the screen', () => {
    const tips = lines(marks).flatMap(({ fill, points }) => (fill === undefined ? [] : [points[0]!]));
    expect(tips).toHaveLength(2);
    for (const [, y] of tips) expect(y).toBeLessThan(400);
  });

  it('shows what it snaps to while a hand moves it', () => {
    const guide = { from: [0, -1], to: [0, 1], label: '' } as const;
    const drawn = lines(sectionLineScene(framed({ from: [-2, 0], to: [2, 0], guides: [guide] })));
    expect(drawn.map(({ points }) => points)).toContainEqual([[500, 450], [500, 350]]); // prettier-ignore
  });

  it('is nothing without a section or without a length, and nothing is in the way of labels then', () => {
    for (const none of [framed(null), framed({ from: [1, 1], to: [1, 1] }), frameOf(VIEW)]) {
      expect(sectionLineScene(none)).toEqual([]);
      expect(sectionMarksScene(none)).toEqual([]);
      expect(sectionObstacles(none)).toEqual([]);
    }
  });
});

describe('currents in a vehicle on the plan', () => {
  const ring: Point[] = [[-1, -1], [1, -1], [1, 1], [-1, 1], [-1, -1]]; // prettier-ignore

  it('are closed lines with heads in their direction', () => {
    const drawings = lines(currentsScene({ section: null, currents: [ring] }, view, LIGHT));
    const [line, ...heads] = drawings;
    expect(line).toMatchObject({ closed: true, points: [[450, 450], [550, 450], [550, 350], [450, 350], [450, 450]] }); // prettier-ignore
    expect(heads.length).toBeGreaterThan(0);
    // the first head is on the first side, whose current goes to the right: its tip is its rightmost corner
    const [tip, ...rest] = heads[0]!.points;
    for (const [x] of rest) expect(x).toBeLessThan(tip![0]);
  });

  it('have no head on a line too small to see', () => {
    const small = ring.map(([x, y]): Point => [x / 100, y / 100]);
    expect(currentsScene({ section: null, currents: [small] }, view, LIGHT)).toHaveLength(1);
  });
});
