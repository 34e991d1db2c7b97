import { describe, expect, it } from 'vitest';
import type { Point } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { currentsScene, sectionScene } from '#scenes/field';
import { LIGHT } from '#scenes/theme';
import { siteWith } from '../editor/sites';
import { editorOf } from './frames';

const view = editorOf(siteWith({})).state.viewport;
const lines = (drawings: readonly Drawing[]) =>
  drawings.flatMap((each) => (each.kind === 'line' ? [each] : []));

describe('a section on the plan', () => {
  const drawings = sectionScene({ section: { from: [-2, 0], to: [2, 0] }, currents: [] }, view, LIGHT);

  it('is a broken line from end to end, at 50 pixels a metre round (500, 400)', () => {
    expect(lines(drawings)[0]!.points).toEqual([[400, 400], [600, 400]]); // prettier-ignore
    expect(lines(drawings)[0]!.stroke!.dash).toBeDefined();
  });

  it('has its letter beyond both ends', () => {
    const letters = drawings.flatMap((each) => (each.kind === 'text' ? [each] : []));
    expect(letters.map(({ text }) => text)).toEqual(['A', 'A']);
    expect(letters[0]!.at[0]).toBeLessThan(400);
    expect(letters[1]!.at[0]).toBeGreaterThan(600);
  });

  it('is looked at to the left of its direction: from left to right one looks up the screen', () => {
    const tips = lines(drawings).flatMap(({ fill, points }) => (fill === undefined ? [] : [points[0]!]));
    expect(tips).toHaveLength(2);
    for (const [, y] of tips) expect(y).toBeLessThan(400);
  });

  it('is nothing without a section or without a length', () => {
    expect(sectionScene({ section: null, currents: [] }, view, LIGHT)).toEqual([]);
    expect(sectionScene({ section: { from: [1, 1], to: [1, 1] }, currents: [] }, view, LIGHT)).toEqual([]);
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
