import { describe, expect, it } from 'vitest';
import type { Drawing, RingsDrawing, TextDrawing } from '#scenes/drawing';
import type { Contour, MapPicture } from '#scenes/frame';
import { placeContourLabels } from '#scenes/contour-labels';
import { mapLabelsScene, mapScene } from '#scenes/map';
import { pathsScene } from '#scenes/paths';
import { LIGHT } from '#scenes/theme';
import type { Point } from '#plan/schema';
import { siteWith } from '../editor/sites';
import { editorOf } from './frames';

const view = editorOf(siteWith({})).state.viewport;
const circle = (radius: number, [x, y]: Point = [0, 0]): Point[] =>
  Array.from({ length: 40 }, (_, k) => [
    x + radius * Math.cos((k * Math.PI) / 20),
    y + radius * Math.sin((k * Math.PI) / 20)
  ]);
const contour = (level: number, radius: number, isThreshold = false): Contour => ({
  level,
  rings: [circle(radius)],
  isThreshold,
  label: isThreshold ? 'trip' : String(level)
});
const picture = (isPreliminary = false): MapPicture => ({
  contours: [contour(1, 3), contour(2, 2), contour(1, 2.5, true)],
  isPreliminary
});
const rings = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is RingsDrawing => each.kind === 'rings');

describe('a response map on the plan', () => {
  it('adds one tone a level, and none for the threshold', () => {
    const filled = rings(mapScene(picture(), view, LIGHT)).filter(({ fill }) => fill !== undefined);
    expect(filled.map(({ fill }) => fill)).toEqual([LIGHT.mapFill, LIGHT.mapFill]);
    // the rightmost point of the outer circle, 3 m from the middle at 50 pixels a metre
    expect(filled[0]?.rings[0]?.[0]).toEqual([650, 400]);
  });

  it('draws the threshold last, strongest and in another colour', () => {
    const lines = rings(mapScene(picture(), view, LIGHT)).flatMap(({ stroke }) => stroke ?? []);
    expect(lines.map(({ colour }) => colour)).toEqual([LIGHT.mapLine, LIGHT.mapLine, LIGHT.call]);
    expect(lines[2]!.width).toBeGreaterThan(lines[0]!.width);
  });

  it('breaks its lines while something better is on its way, but not the threshold', () => {
    const dashes = rings(mapScene(picture(true), view, LIGHT)).flatMap(({ stroke }) =>
      stroke ? [stroke.dash !== undefined] : []
    );
    expect(dashes).toEqual([true, true, false]);
  });

  it('writes every level on its own line, clear of the others', () => {
    const texts = mapLabelsScene(picture(), view, LIGHT).filter(
      (each): each is TextDrawing => each.kind === 'text'
    );
    expect(texts.map(({ text }) => text).sort()).toEqual(['1', '2', 'trip']);
    for (const { text, at } of texts) {
      const radius = Math.hypot(at[0] - 500, at[1] - 400) / 50;
      expect(radius).toBeCloseTo({ '1': 3, '2': 2, trip: 2.5 }[text]!, 6);
    }
    const [a, b] = texts;
    expect(Math.hypot(a!.at[0] - b!.at[0], a!.at[1] - b!.at[1])).toBeGreaterThan(15);
  });

  it('is nothing without a map', () => {
    expect(mapScene(null, view, LIGHT)).toEqual([]);
    expect(mapLabelsScene(null, view, LIGHT)).toEqual([]);
  });
});

describe('labels of contour lines', () => {
  const screen = { width: 400, height: 300 };
  const ring = (y: number): Point[] => [[100, y], [300, y], [300, y + 100], [100, y + 100]]; // prettier-ignore

  it('keep clear of other writing', () => {
    const wants = [{ rings: [ring(100)], width: 40 }];
    const [free] = placeContourLabels(wants, screen);
    const covered = [{ left: 0, right: 400, bottom: 80, top: 120 }];
    const [moved] = placeContourLabels(wants, screen, covered);
    expect(free![1]).toBe(100);
    expect(moved![1]).toBeGreaterThan(120);
    expect(placeContourLabels(wants, screen, [{ left: 0, right: 400, bottom: 0, top: 300 }])).toEqual([null]);
  });

  it('stay on the screen and leave out a line without room', () => {
    const [above, tiny] = placeContourLabels(
      [
        { rings: [ring(-40)], width: 40 },
        { rings: [circle(5, [200, 200])], width: 40 }
      ],
      screen
    );
    expect(above).toEqual([300, 60]);
    expect(tiny).toBeNull();
  });
});

describe('paths on the plan', () => {
  const site = siteWith({ paths: [{ id: 'p1', points: [[0, 0], [4, 0], [4, 0]] }] }); // prettier-ignore

  it('are broken lines with an arrow in the direction of travel', () => {
    const [run, head] = pathsScene(site.paths, view, LIGHT);
    expect(run).toMatchObject({ kind: 'line', points: [[500, 400], [700, 400], [700, 400]] }); // prettier-ignore
    expect(run).toHaveProperty('stroke.dash');
    expect(head?.kind === 'line' ? head.points : []).toEqual([[689, 405], [700, 400], [689, 395]]); // prettier-ignore
  });

  it('are left out where they are out of sight', () => {
    expect(pathsScene(site.paths, { ...view, centre: [900, 0] }, LIGHT)).toEqual([]);
  });
});
