import { describe, expect, it } from 'vitest';
import type { Mark, Point } from '#plan/schema';
import type { Drawing, LineDrawing, TextDrawing } from '#scenes/drawing';
import { hatching } from '#scenes/hatching';
import { laneLinesScene } from '#scenes/lanes';
import { boxNamesScene, marksScene } from '#scenes/marks';
import { LIGHT } from '#scenes/theme';
import { screenToPlan } from '#editor/viewport';
import { siteWith } from '../editor/sites';
import { editorOf } from './frames';

const view = editorOf(siteWith({})).state.viewport;
const onPlan = (points: readonly Point[]) => points.map((at) => screenToPlan(view, at));

const drawn = (mark: Omit<Mark, 'id'>, units: 'metric' | 'imperial' = 'metric') =>
  marksScene(siteWith({ marks: [{ id: 'm1', ...mark }] }).marks, view, units, LIGHT);
const lines = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is LineDrawing => each.kind === 'line');
const texts = (drawings: readonly Drawing[]) =>
  drawings.filter((each): each is TextDrawing => each.kind === 'text').map(({ text }) => text);

describe('the name of a box', () => {
  it('is written once more over the wires, at the same place; notes and long things are not', () => {
    const box = { kind: 'pull-box', points: [[1, 1]] } as const;
    const { marks } = siteWith({
      marks: [
        { id: 'm1', ...box },
        { id: 'm2', kind: 'note', points: [[2, 2]], text: 'Drain here' },
        { id: 'm3', kind: 'conduit', points: [[0, 0], [4, 0]], text: 'Two cables' }, // prettier-ignore
        { id: 'm4', kind: 'cabinet', points: [[9000, 0]] }
      ]
    });
    const names = boxNamesScene(marks, view, LIGHT);
    expect(texts(names)).toEqual(['Pull box']);
    expect(drawn(box)).toContainEqual(names[0]);
  });
});

describe('a gate', () => {
  it('that swings shows the way of its tip and where it stands open, dashed', () => {
    const dashed =
      lines(drawn({ kind: 'gate', points: [[1, 1], [4, 1]], opening: { kind: 'swing', angle: 90 } })) // prettier-ignore
        .filter(({ stroke }) => stroke?.dash);
    expect(dashed).toHaveLength(2);
    const arc = onPlan(dashed[0]!.points);
    for (const [x, y] of arc) expect(Math.hypot(x - 1, y - 1)).toBeCloseTo(3, 9);
    expect(arc.at(-1)![0]).toBeCloseTo(1, 9);
    expect(arc.at(-1)![1]).toBeCloseTo(4, 9);
    expect(onPlan(dashed[1]!.points)[0]).toEqual([1, 1]);
  });

  it('that slides shows where it stands open, beside its closed leaf', () => {
    const [open] =
      lines(drawn({ kind: 'gate', points: [[0, 0], [4, 0]], opening: { kind: 'slide', travel: -4 } })) // prettier-ignore
        .filter(({ stroke }) => stroke?.dash);
    const points = onPlan(open!.points);
    expect(points.map(([x]) => Math.round(x * 1e6) / 1e6)).toEqual([-4, 0]);
    expect(points[0]![1]).toBe(points[1]![1]);
    expect(points[0]![1]).not.toBe(0);
  });

  it('of which nothing is known is a leaf only', () => {
    expect(lines(drawn({ kind: 'gate', points: [[0, 0], [4, 0]] })).some(({ stroke }) => stroke?.dash)).toBe(false); // prettier-ignore
  });
});

describe('a dimension', () => {
  const mark = { kind: 'dimension', points: [[0, 0], [3, 4]], offset: 1 } as const; // prettier-ignore

  it('says the length in the units that the document shows, after its own text', () => {
    expect(texts(drawn(mark))).toEqual(['5.00 m']);
    expect(texts(drawn({ ...mark, text: 'Gate' }))).toEqual(['Gate 5.00 m']);
    expect(texts(drawn({ ...mark, points: [[0, 0], [0, 3.048]] }, 'imperial'))).toEqual(['10\'-0"']); // prettier-ignore
  });

  it('has its line as far to the left of its points as it says', () => {
    const line = lines(drawn(mark)).map(({ points }) => onPlan(points)).find(([from]) => Math.hypot(from![0] + 0.8, from![1] - 0.6) < 1e-9); // prettier-ignore
    expect(line![1]![0]).toBeCloseTo(2.2, 9);
    expect(line![1]![1]).toBeCloseTo(4.6, 9);
  });
});

describe('arrows', () => {
  const ends: Pick<Mark, 'kind' | 'points'> = { kind: 'arrow', points: [[0, 0], [0, 5]] }; // prettier-ignore
  const reach = (turn: Mark['turn']) => {
    const points = lines(drawn({ ...ends, turn })).flatMap((each) => onPlan(each.points));
    return { left: Math.min(...points.map(([x]) => x)), right: Math.max(...points.map(([x]) => x)) };
  };

  it('point to the left of their way for left, to the right for right', () => {
    expect(-reach('left').left).toBeGreaterThan(2 * reach('left').right);
    expect(reach('right').right).toBeCloseTo(-reach('left').left, 9);
    expect(reach('left-right').left).toBeCloseTo(reach('left').left, 9);
    expect(reach('left-right').right).toBeCloseTo(reach('right').right, 9);
    expect(-reach('ahead').left).toBeCloseTo(reach('ahead').right, 9);
  });

  it('are painted over the lines between their parts', () => {
    const parts = lines(drawn({ ...ends, turn: 'ahead-left' }));
    expect(parts.map(({ stroke }) => stroke !== undefined)).toEqual([true, true, false, false]);
  });
});

describe('areas', () => {
  const corners: Point[] = [[0, 0], [4, 0], [4, 2], [0, 2]]; // prettier-ignore

  it('are closed: an island by its kerb, a cover by its frame', () => {
    for (const kind of ['island', 'cover'] as const) {
      const closed = lines(drawn({ kind, points: corners })).filter(({ points }) => points.length === 5);
      expect(closed.length).toBeGreaterThan(0);
      expect(onPlan(closed[0]!.points).at(-1)).toEqual([0, 0]);
    }
  });

  it('are hatched inside their outline only', () => {
    // The strokes run up; those at 0.5, 1, … 4 m are 2 m long each.
    const beside = corners.map(([x, y]): Point => [x + 0.25, y]);
    const strokes = hatching(beside, [0, 1], 0.5);
    expect(strokes).toHaveLength(8);
    for (const { from, to } of strokes) expect(Math.abs(to[1] - from[1])).toBeCloseTo(2, 9);
    // A notch from above down to the middle, between 1 and 3 m: the strokes that meet it are half as long.
    const notched: Point[] = [[0, 0], [4, 0], [4, 2], [3, 2], [3, 1], [1, 1], [1, 2], [0, 2]]; // prettier-ignore
    const lengths = hatching(notched, [0, 1], 0.4).map(({ from, to }) => Math.abs(to[1] - from[1]));
    expect(lengths.filter((length) => Math.abs(length - 1) < 1e-9)).toHaveLength(5);
    expect(hatching(corners, [0, 1], 1e-6)).toEqual([]);
  });

  it('carry their text in the middle, lines on their middle stretch', () => {
    const area = drawn({ kind: 'cover', points: corners, text: 'Water main' });
    const text = area.find((each): each is TextDrawing => each.kind === 'text');
    expect(text?.text).toBe('Water main');
    expect(screenToPlan(view, text!.at)).toEqual([2, 1]);
    expect(texts(drawn({ kind: 'joint', points: [[0, 0], [4, 0]], text: 'Open joint' }))).toEqual(['Open joint']); // prettier-ignore
  });
});

describe('lanes in a bend', () => {
  it('have one line from end to end on each side, so that dashes run on, and one between two of them', () => {
    const bend = (radius: number): Point[] =>
      Array.from({ length: 31 }, (_, step) => {
        const angle = (step * Math.PI) / 60;
        return [radius * Math.cos(angle) - 6, radius * Math.sin(angle) - 6];
      });
    const { lanes } = siteWith({
      lanes: [
        { id: 'lane1', centreline: bend(9), width: 3 },
        { id: 'lane2', centreline: bend(12), width: 3 }
      ]
    });
    const edges = lines(laneLinesScene(lanes, view, LIGHT)).filter(({ closed }) => !closed);
    expect(edges.map(({ points }) => points.length)).toEqual([31, 31, 31]);
    expect(edges.filter(({ stroke }) => stroke?.dash)).toHaveLength(1);
  });
});
