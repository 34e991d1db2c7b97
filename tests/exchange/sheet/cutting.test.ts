import { describe, expect, it, test } from 'vitest';
import { cuttingPlanOf } from '#analysis/takeoff/cutting-plan';
import type { Cut, CuttingPlan } from '#analysis/takeoff/results';
import { clipped } from '#exchange/sheet/parts/clip';
import { baselineDrawings } from '#exchange/sheet/parts/baseline';
import { freeAmong } from '#exchange/sheet/parts/covered';
import { cuttingFigures } from '#exchange/sheet/parts/cutting';
import { cutFigure } from '#exchange/sheet/parts/cut-figure';
import type { Point } from '#plan/schema';
import type { Drawing, LineDrawing, TextDrawing } from '#scenes/drawing';
import { loop, siteOf, square as squareAt } from '../../analysis/support/sites';
import { extentOf, overlap, textExtent } from './extent';

const area = { left: 20, top: 30, width: 100, height: 60 };

const cut = (order: number, from: Point, to: Point, more: Partial<Cut> = {}): Cut => ({
  id: `L1/${order}`,
  order,
  loop: 'L1',
  sharedWith: [],
  kind: 'side',
  from,
  to,
  circle: null,
  length: Math.hypot(to[0] - from[0], to[1] - from[1]),
  depth: 0.05,
  width: 0.008,
  overcut: { from: 0, to: 0 },
  setOut: null,
  ...more
});

const square: readonly Cut[] = [
  cut(1, [0, 0], [1.8, 0]),
  cut(2, [1.8, 0], [1.8, 1.8]),
  cut(3, [1.8, 1.8], [0, 1.8]),
  cut(4, [0, 1.8], [0, 0]),
  cut(5, [0, 0], [-30, -4], { kind: 'home run' })
];

const lines = (drawings: readonly Drawing[]): LineDrawing[] =>
  drawings.filter((drawing): drawing is LineDrawing => drawing.kind === 'line' && !drawing.fill);
const texts = (drawings: readonly Drawing[]): TextDrawing[] =>
  drawings.filter((drawing): drawing is TextDrawing => drawing.kind === 'text');

describe('the part of a line in a box', () => {
  it('is all of it, a part, or nothing', () => {
    expect(clipped([30, 40], [50, 50], area)).toEqual([
      [30, 40],
      [50, 50]
    ]);
    expect(clipped([0, 40], [200, 40], area)).toEqual([
      [20, 40],
      [120, 40]
    ]);
    expect(clipped([70, 0], [70, 300], area)).toEqual([
      [70, 30],
      [70, 90]
    ]);
    expect(clipped([0, 0], [10, 100], area)).toBeNull();
    expect(clipped([0, 10], [200, 10], area)).toBeNull();
  });
});

describe('the cuts of a loop', () => {
  const figure = cutFigure('Exit', square, []);
  const drawings = figure.draw(50, 70);

  it('stay in their figure, the way home included', () => {
    for (const drawing of drawings) {
      const { left, top, right, bottom } = extentOf(drawing);
      expect(left).toBeGreaterThanOrEqual(50 - 0.8);
      expect(right).toBeLessThanOrEqual(50 + figure.width + 0.8);
      expect(top).toBeGreaterThanOrEqual(70);
      expect(bottom).toBeLessThanOrEqual(70 + figure.height + 0.8);
    }
  });

  it('are drawn at the scale that is written beside them', () => {
    const stated = texts(drawings).find(({ text }) => /1:\d+$/.test(text))!;
    const scale = Number(/1:(\d+)$/.exec(stated.text)![1]);
    const lengths = lines(drawings).map(({ points: [from, to] }) =>
      Math.hypot(to![0] - from![0], to![1] - from![1])
    );
    expect(lengths.filter((length) => Math.abs(length * scale - 1800) < 1e-6)).toHaveLength(4);
  });

  it('have each their number, none on another', () => {
    const numbers = texts(drawings).filter(({ text }) => /^\d+$/.test(text));
    expect(numbers.map(({ text }) => text)).toEqual(['1', '2', '3', '4', '5']);
    for (const [k, one] of numbers.entries())
      for (const other of numbers.slice(k + 1))
        expect(overlap(textExtent(one), textExtent(other))).toBe(false);
  });

  it('run on past their ends where the blade does', () => {
    const over = cutFigure('Exit', [cut(1, [0, 0], [2, 0], { overcut: { from: 0.1, to: 0.2 } })], []);
    const stated = texts(over.draw(0, 0)).find(({ text }) => /1:\d+$/.test(text))!;
    const scale = Number(/1:(\d+)$/.exec(stated.text)![1]);
    const lengths = lines(over.draw(0, 0))
      .filter(({ points: [from, to] }) => from![1] === to![1])
      .map(({ points: [from, to] }) => (Math.abs(to![0] - from![0]) * scale) / 1000);
    for (const expected of [2, 0.1, 0.2])
      expect(lengths.some((length) => Math.abs(length - expected) < 1e-9)).toBe(true);
  });

  it('are a circle where the loop is round', () => {
    const round = cutFigure('Round', [cut(1, [0.9, 0], [0.9, 0], { kind: 'round', circle: { centre: [0, 0], radius: 0.9 } })], []); // prettier-ignore
    const radii = round.draw(0, 0).flatMap((drawing) => (drawing.kind === 'circle' ? [drawing.radius] : []));
    expect(Math.max(...radii)).toBeCloseTo(900 / 50, 6);
  });
});

// two squares side by side: six holes, two of them in corners of both
test('a hole in a corner that two loops share is in the picture of either', () => {
  const site = siteOf({
    loops: [loop('L1', squareAt(0, 0)), loop('L2', squareAt(1.8, 0))],
    estimate: { coreHoles: true }
  });
  const plan = cuttingPlanOf(site);
  expect(plan.holes).toHaveLength(6);
  const [, , row] = cuttingFigures(site, plan)(190, 200).pieces;
  const drawings = row!.draw(0, 0);
  // a hole is drawn white with a strong rim, no smaller than half a millimetre
  const holes = drawings.filter(({ kind, ...rest }) => kind === 'circle' && 'stroke' in rest && rest.stroke?.width === 0.35); // prettier-ignore
  expect(holes).toHaveLength(8);
});

describe('the baseline on the plan', () => {
  const plan = (points: readonly Point[]): CuttingPlan => ({
    baseline: { name: 'Kerb \u202Eside', points },
    cuts: [],
    holes: [],
    unplaced: [],
    totals: [],
    cautions: []
  });
  const paper = {
    area,
    scale: 100,
    place: ([x, y]: Point): Point => [70 + 10 * x, 60 - 10 * y],
    units: 'metric' as const,
    isFree: () => true
  };

  it('is drawn where it is seen, with its name and its stations', () => {
    const drawings = baselineDrawings(plan([[-2, -1], [200, -1]]), paper); // prettier-ignore
    const [first] = lines(drawings);
    expect(first!.points).toEqual([
      [50, 70],
      [120, 70]
    ]);
    const written = texts(drawings).map(({ text }) => text);
    expect(written).toContain('Baseline: Kerb side');
    expect(written).toContain('0');
    expect(written).toContain('5 m');
    const station = texts(drawings).find(({ text }) => text === '5 m')!;
    expect(station.at[0]).toBeCloseTo(70 + 10 * (-2 + 5), 6);
  });

  // a loop at 1:500 is smaller than the text of a station
  it('never hides a cut: a station is written on its other side, or has its stroke alone', () => {
    const at = (drawings: readonly Drawing[], station: string) => texts(drawings).find(({ text }) => text === station)?.at; // prettier-ignore
    const drawn = (cuts: readonly Cut[]) =>
      baselineDrawings({ ...plan([[-5, 0], [20, 0]]), cuts }, { ...paper, isFree: freeAmong(cuts, [], paper.place) }); // prettier-ignore
    // the station of 5 m stands at x = 0, which is 70 mm; its text 4.2 mm below or above the line at 60 mm
    expect(at(drawn([]), '5 m')).toEqual([70, 64.2]);
    const below = cut(1, [-0.3, -0.42], [0.3, -0.42]);
    expect(at(drawn([below]), '5 m')).toEqual([70, 55.8]);
    const across = cut(2, [0, -1], [0, 1]);
    const around = [-0.25, 0, 0.25].map((x, k) => cut(3 + k, [x, -1], [x, 1]));
    expect(at(drawn([across, ...around]), '5 m')).toBeUndefined();
    const round = cut(9, [0.2, -0.42], [0.2, -0.42], { circle: { centre: [0, -0.42], radius: 0.2 } });
    expect(at(drawn([round]), '5 m')).toEqual([70, 55.8]);
    const strokes = (cuts: readonly Cut[]) => lines(drawn(cuts)).filter(({ points: [a, b] }) => a![0] === 70 && b![0] === 70); // prettier-ignore
    expect(strokes([across, ...around])).toHaveLength(1);
  });

  it('has its name where nothing else is written', () => {
    const way = plan([[0, 0], [2, 0]]); // prettier-ignore
    const name = (written: readonly Drawing[]) =>
      texts(baselineDrawings(way, { ...paper, isFree: freeAmong([], written, paper.place) })).find(({ text }) => text.startsWith('Baseline'))!; // prettier-ignore
    const first = name([]);
    expect(first.at[0]).toBeLessThan(70);
    const second = name([first]);
    expect(second.at[0]).toBeGreaterThan(90);
    const third = name([first, second]);
    for (const other of [first, second]) expect(overlap(textExtent(third), textExtent(other))).toBe(false);
  });

  it('is nothing where it does not come into sight, or has no length', () => {
    expect(baselineDrawings(plan([[-2, 100], [20, 100]]), paper)).toEqual([]); // prettier-ignore
    expect(baselineDrawings(plan([[1, 1], [1, 1]]), paper)).toEqual([]); // prettier-ignore
    expect(baselineDrawings({ ...plan([]), baseline: null }, paper)).toEqual([]);
  });
});
