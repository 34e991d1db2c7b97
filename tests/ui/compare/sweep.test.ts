import { describe, expect, it } from 'vitest';
import type { SweepPicture } from '#analysis/sweep/results';
import type { Variable } from '#plan/variables/variable';
import { axisOf } from '../../../src/ui/compare/sweep/axis';
import { cellEdges, doubtRings, levelOf, levelsOf, limitEdges } from '../../../src/ui/compare/sweep/cells';
import { limitsOf, linePath, rangeOf, valueAt, wrapped } from '../../../src/ui/compare/sweep/curves';
import { legendPlaces } from '../../../src/ui/compare/sweep/legend';
import { limitNames, type LimitName, type Spot } from '../../../src/ui/compare/sweep/limit-names';
import { sweepChoices, type Curves } from '#ui/compare/sweep/choices.svelte.ts';
import { isOf, planOf, type SweepPlan } from '../../../src/ui/compare/sweep/plan';
import { spanOf, valuesOf } from '../../../src/ui/compare/sweep/spans';
import { bigSite } from '../../support/big-site';

const metres = { least: 0.5, most: 10, step: 0.05, isWhole: false, choices: null };
const turns = { least: 1, most: 20, step: 1, isWhole: true, choices: null };
const same = (value: number) => value;

describe('the values that a number runs through', () => {
  it('has the ends of what was chosen, evenly between them', () => {
    const span = spanOf(metres, { from: 1, to: 3, points: 5 }, 'axis', 1.8);
    expect(valuesOf(metres, span)).toEqual([1, 1.5, 2, 2.5, 3]);
  });
  it('takes every whole number, each once, and no other', () => {
    expect(valuesOf(turns, spanOf(turns, { from: 2, to: 5 }, 'axis', 3))).toEqual([2, 3, 4, 5]);
    const few = valuesOf(turns, spanOf(turns, { from: 1, to: 20, points: 4 }, 'family', 3));
    expect(few.every((value) => Number.isInteger(value))).toBe(true);
    expect([few[0], few.at(-1), new Set(few).size]).toEqual([1, 20, few.length]);
  });
  it('has whole curves about the design, itself among them', () => {
    expect(valuesOf(turns, spanOf(turns, {}, 'family', 3))).toEqual([1, 2, 3, 4, 5]);
  });
  it('stays within what can be, whatever was chosen', () => {
    const span = spanOf(metres, { from: -4, to: 99 }, 'axis', null);
    expect([span.from, span.to]).toEqual([0.5, 10]);
  });
});

describe('doubtful cells of a map', () => {
  it('have a ring in their middle, each by itself, and none where nothing is drawn', () => {
    const grid = [
      [1, 2],
      [3, null]
    ];
    const edges = [0, 10, 20];
    const rings = (points: Parameters<typeof doubtRings>[1]) =>
      doubtRings(grid, points, edges, edges, same, (value) => 100 - value);
    expect(rings([])).toEqual([]);
    // the same place of x in both rows, of which one alone is doubtful
    expect(rings([{ row: 1, at: 0 }])).toEqual([{ x: 5, y: 85, radius: 2.5 }]);
    expect(rings([{ row: 0, at: 1 }, { row: 1, at: 1 }])).toEqual([{ x: 15, y: 95, radius: 2.5 }]); // prettier-ignore
    const wide = [0, 100, 200];
    expect(doubtRings(grid, [{ row: 0, at: 0 }], wide, wide, same, same)[0]!.radius).toBe(3);
  });
});

describe('what a chart draws', () => {
  const figure = { kind: 'inductance', subject: 'C1' } as const;
  const limit = (value: number) => ({ kind: 'most', value, wants: 'below' }) as const;

  it('breaks the line where there is no value', () => {
    expect(linePath([1, 2, 3, 4], [1, null, 3, 4], same, same)).toBe('M1.0 1.0M3.0 3.0L4.0 4.0');
  });
  it('reads straight between two values, and nothing in a gap or beside them', () => {
    expect(valueAt([1, 3], [10, 20], 1.5)).toBe(12.5);
    expect(valueAt([1, 3], [10, null], 2)).toBeNull();
    expect([valueAt([1, 3], [10, 20], 0.9), valueAt([1, 3], [10, 20], 3.1)]).toEqual([null, null]);
    expect([valueAt([1, 3], [10, 20], 1), valueAt([1, 3], [10, 20], 3)]).toEqual([10, 20]);
  });
  it('draws a near limit in, and tells of one that would press the curve flat', () => {
    const swept = { figure, values: [[10, 12]], present: 11, limits: [limit(13), limit(1000)] };
    const { near, far } = limitsOf(swept);
    expect([near, far].map((all) => all.map(({ value }) => value))).toEqual([[13], [1000]]);
    const [low, high] = rangeOf(swept, 'linear')!;
    expect(low).toBeLessThan(10);
    expect(high).toBeGreaterThan(13);
    expect(high).toBeLessThan(20);
  });
  it('has nothing to draw without values', () => {
    expect(rangeOf({ figure, values: [[null]], present: null, limits: [] }, 'linear')).toBeNull();
  });

  it('draws what only its last bits change as flat, amid the height', () => {
    const noisy = { figure, values: [[1, 1 + 1e-12, 1 - 1e-12]], present: 1, limits: [] };
    const [low, high] = rangeOf(noisy, 'linear')!;
    expect(high - low).toBeGreaterThan(1e-3);
    expect((low + high) / 2).toBeCloseTo(1, 9);
    const [none, some] = rangeOf({ ...noisy, values: [[0, 0]], present: 0 }, 'linear')!;
    expect(none).toBeLessThan(some);
  });
  it('ticks in the unit that is read: feet of 0.3048 m', () => {
    const { ticks, unit, place, invert } = axisOf({
      kind: 'length',
      system: 'imperial',
      domain: [0, 3.048],
      pixels: [0, 100],
      perTick: 20
    });
    expect(unit).toBe('ft');
    expect(ticks.map(({ text }) => text)).toEqual(['0', '2', '4', '6', '8', '10']);
    expect(ticks[1]!.value).toBeCloseTo(0.6096, 12);
    expect(place(1.524)).toBeCloseTo(50, 9);
    expect(invert(50)).toBeCloseTo(1.524, 9);
  });
  it('puts as many names into a row as there is room for', () => {
    const rows = legendPlaces(['aaaa', 'bbbb', 'cccc'], 0, 160, 5).map(({ row }) => row);
    expect(rows).toEqual([0, 0, 1]);
  });
  it('breaks a heading between words', () => {
    expect(wrapped('one two three', 8)).toEqual(['one two', 'three']);
  });
});

describe('a map', () => {
  it('has cells that meet halfway between their values', () => {
    expect(cellEdges([1, 2, 4])).toEqual([0.5, 1.5, 3, 5]);
  });
  it('draws a limit between the cells that keep to it and those that do not', () => {
    const wants = { kind: 'most', value: 2.5, wants: 'below' } as const;
    expect(limitEdges([[1, 2, 3]], [0, 1, 2, 3], [0, 1], wants, same, same)).toBe('M2 0V1');
    expect(limitEdges([[1, null, 3]], [0, 1, 2, 3], [0, 1], wants, same, same)).toBe('');
  });
  it('puts every value into the last level that it reaches', () => {
    const levels = levelsOf([[0.4, 1.2, 3.9]]);
    for (const value of [0.4, 1.2, 3.9]) {
      const n = levelOf(value, levels);
      expect(levels[n]).toBeLessThanOrEqual(value);
      expect(levels[n + 1] ?? Infinity).toBeGreaterThan(value);
    }
  });
});

describe('names of limits', () => {
  const plot = { left: 50, right: 450, top: 20, bottom: 220 };
  const named = (limits: readonly { readonly text: string; readonly at: number }[], curve: readonly Spot[]) =>
    limitNames(limits, [curve], plot, 12, 6);
  /** Every pixel of the curve. */
  const isClear = ({ ground }: LimitName, curve: readonly Spot[]): boolean =>
    curve.slice(1).every((to, k) => {
      const from = curve[k]!;
      return Array.from({ length: 401 }, (_, n) => n / 400).every((share) => {
        const [x, y] = [from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)];
        return x < ground.left || x > ground.right || y < ground.top || y > ground.bottom;
      });
    });
  const TRIP = [{ text: 'Trip threshold 0.10 %', at: 120 }];

  it.each([
    ['rising through the left end', [{ x: 50, y: 124 }, { x: 200, y: 116 }, { x: 450, y: 30 }]], // prettier-ignore
    ['through both ends', [{ x: 50, y: 116 }, { x: 150, y: 90 }, { x: 350, y: 90 }, { x: 450, y: 116 }]], // prettier-ignore
    ['steep, through the middle', [{ x: 240, y: 220 }, { x: 260, y: 20 }]], // prettier-ignore
    ['straight up', [{ x: 440, y: 220 }, { x: 440, y: 20 }]], // prettier-ignore
    ['just above all along', [{ x: 50, y: 112 }, { x: 450, y: 113 }]] // prettier-ignore
  ] as const)('stand where no curve runs: %s', (_, curve) => {
    const [name] = named(TRIP, curve);
    expect(isClear(name!, curve)).toBe(true);
    // at its line
    expect(Math.min(Math.abs(name!.ground.top - 120), Math.abs(name!.ground.bottom - 120))).toBeLessThan(4);
    expect(name!.ground.left).toBeGreaterThanOrEqual(plot.left);
    expect(name!.ground.right).toBeLessThanOrEqual(plot.right);
  });

  it('do not stand on one another, nor on the line of another', () => {
    const limits = [...TRIP, { text: 'Release 0.06 %', at: 132 }];
    const names = named(limits, [{ x: 50, y: 60 }, { x: 450, y: 60 }]); // prettier-ignore
    for (const [k, { ground }] of names.entries()) {
      const other = limits[1 - k]!.at;
      expect(other < ground.top || other > ground.bottom).toBe(true);
    }
    const [a, b] = names.map(({ ground }) => ground);
    expect(a!.right < b!.left || b!.right < a!.left || a!.bottom < b!.top || b!.bottom < a!.top).toBe(true);
  });

  it('stay within the plot at its upper and its lower end', () => {
    for (const at of [22, 218]) {
      const [name] = named([{ text: 'At most 2 mH', at }], []);
      expect(name!.ground.top).toBeGreaterThanOrEqual(plot.top);
      expect(name!.ground.bottom).toBeLessThanOrEqual(plot.bottom);
    }
  });
});

describe('a picture of a sweep', () => {
  const drawn = bigSite(2);
  const planned = (second: Variable | null, curves: Curves = 'map'): SweepPlan => {
    Object.assign(sweepChoices, { x: { kind: 'turns', subject: 'L1' }, second, curves, figures: null });
    return planOf(drawn, [], sweepChoices)!;
  };
  const pictureOf = ({ wish }: SweepPlan): SweepPicture => ({
    ...{ x: wish.x, family: wish.family, designs: wish.designs, present: { x: 3, family: null } },
    figures: wish.figures.map((figure) => ({ figure, values: [[1]], present: 1, limits: [] })),
    doubtful: []
  });
  const depth = { kind: 'slotDepth', subject: 'L1' } as const;
  const wire = { kind: 'wire', subject: 'L1' } as const;

  it('is shown for what was asked, and under no other second number', () => {
    const plan = planned(depth);
    expect(isOf(plan, pictureOf(plan))).toBe(true);
    expect(isOf(planned(wire), pictureOf(plan))).toBe(false);
    expect(isOf(planned(null, 'one'), pictureOf(plan))).toBe(false);
    expect(isOf(plan, pictureOf(planned(null, 'one')))).toBe(false);
  });
});
