import { describe, expect, it } from 'vitest';
import type { LineDrawing } from '#scenes/drawing';
import { steelScene } from '#scenes/steel';
import { LIGHT } from '#scenes/theme';
import type { Point, Steel } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';

const view = (scale: number): Viewport => ({ centre: [0, 0], scale, width: 1000, height: 800 });
const OUTLINE: readonly Point[] = [[-1.5, -1], [1.5, -1], [1.5, 1], [-1.5, 1]]; // prettier-ignore
const MAT: Steel = { id: 's1', kind: 'mat', depth: 0.1, pitch: 0.25, barRadius: 0.006, outline: OUTLINE };
const PLATE: Steel = { id: 's2', kind: 'plate', depth: -0.05, outline: OUTLINE };

const barsOf = (steel: Steel, scale: number) =>
  steelScene([steel], view(scale), 'metric', LIGHT).filter(
    (each): each is LineDrawing => each.kind === 'line' && each.stroke?.colour === LIGHT.steelBars
  );
const wordsOf = (steel: Steel, scale: number) =>
  steelScene([steel], view(scale), 'metric', LIGHT).flatMap((each) =>
    each.kind === 'text' ? [each.text] : []
  );

describe('steel on the plan', () => {
  it('shows every bar of a mat at its pitch when they can be told apart', () => {
    // 3 m by 2 m at 250 mm: 13 bars one way and 9 the other.
    expect(barsOf(MAT, 200)).toHaveLength(13 + 9);
    const upright = barsOf(MAT, 200).filter(({ points: [a, b] }) => Math.abs(a![0] - b![0]) < 1e-6);
    const places = upright.map(({ points: [a] }) => a![0]).sort((a, b) => a - b);
    for (const [index, x] of places.slice(1).entries()) expect(x - places[index]!).toBeCloseTo(50, 3);
  });

  it('thins them out from afar', () => {
    expect(barsOf(MAT, 20).length).toBeLessThan(13);
    expect(barsOf(MAT, 20).length).toBeGreaterThan(2);
  });

  it('keeps bars inside an outline of any form', () => {
    const points: Point[] = [[-1, -1], [1, -1], [1, 1], [0, 0], [-1, 1]]; // prettier-ignore
    const [x, y] = planToScreen(view(200), [0, 0.01]);
    const level = barsOf({ ...MAT, outline: points }, 200)
      .map((bar) => ({ from: bar.points[0]!, to: bar.points[1]! }))
      .filter(({ from, to }) => Math.abs(from[1] - to[1]) < 1e-6);
    const crossing = level.filter(
      ({ from, to }) => Math.min(from[0], to[0]) < x && Math.max(from[0], to[0]) > x
    );
    expect(level.filter(({ from }) => from[1] < y).length).toBeGreaterThan(4);
    expect(crossing.length).toBeGreaterThan(2);
    // Above the notch's tip no level bar runs across the notch.
    expect(crossing.filter(({ from }) => from[1] < y)).toEqual([]);
  });

  it('draws a plate as a tone and says in words what each is', () => {
    expect(barsOf(PLATE, 200)).toEqual([]);
    const [fill] = steelScene([PLATE], view(200), 'metric', LIGHT);
    expect(fill).toMatchObject({ kind: 'line', closed: true, fill: LIGHT.plateFill });
    expect(wordsOf(PLATE, 200)).toEqual(['Plate, 50 mm above the road']);
    expect(wordsOf(MAT, 200)).toEqual(['Mat, bars every 250 mm, 100 mm deep']);
  });

  it('does not draw what is out of sight, nor the bars of a mile of road', () => {
    const road: Point[] = [[-1.5, -2000], [1.5, -2000], [1.5, 2000], [-1.5, 2000]]; // prettier-ignore
    expect(barsOf({ ...MAT, outline: road }, 200).length).toBeLessThan(60);
    const away = OUTLINE.map(([x, y]): Point => [x + 500, y]);
    expect(steelScene([{ ...MAT, outline: away }], view(200), 'metric', LIGHT)).toEqual([]);
  });
});
