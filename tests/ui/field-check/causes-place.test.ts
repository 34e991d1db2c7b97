import { describe, expect, test } from 'vitest';
import { axisOf } from '#ui/field-check/causes/chart';
import { placesOf } from '#ui/field-check/causes/place';
import { circuit, loop, siteOf, square, unit } from '../../analysis/support/sites';

const marks = [
  { id: 'box', kind: 'pull-box', points: [[0, 0]] },
  { id: 'cab', kind: 'cabinet', points: [[10, 10]] }
];
/** From the box 10 m east, then 10 m north; 5 m of slack. */
const route = { from: 'box', to: 'cab', via: [[10, 0]], allowance: 5 };
const drawn = (further: readonly object[] = []) => {
  const site = siteOf({
    marks,
    loops: [loop('L1', square(-5, 0))],
    units: [unit('U1')],
    circuits: [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 25, route, further } })]
  });
  return { site, circuit: site.circuits[0]! };
};

describe('where a fault lies on the drawn way', () => {
  test('half of the length, counted from the cabinet, is the bend', () => {
    const { site, circuit: own } = drawn();
    const places = placesOf(site, own, { distance_m: 12.5, low: 10, high: 15 });
    const [stretch, point] = places;
    expect(point).toEqual({ kind: 'point', at: [10, 0] });
    // 10 of 25 m are 8 of 20 m on the plan
    expect(stretch).toEqual({
      kind: 'line',
      points: [
        [8, 0],
        [10, 0],
        [10, 2]
      ]
    });
  });

  test('at the cabinet and at the pull box', () => {
    const { site, circuit: own } = drawn();
    const at = (distance_m: number) =>
      placesOf(site, own, { distance_m, low: distance_m, high: distance_m }).at(-1);
    expect(at(0)).toEqual({ kind: 'point', at: [10, 10] });
    expect(at(25)).toEqual({ kind: 'point', at: [0, 0] });
  });

  test('a further cable towards the cabinet has no drawn way', () => {
    const { site, circuit: own } = drawn([{ cable: 'pair-14', length: 40 }]);
    expect(placesOf(site, own, { distance_m: 20, low: 18, high: 22 })).toEqual([]);
    expect(placesOf(site, own, { distance_m: 52.5, low: 52, high: 53 }).at(-1)).toEqual({
      kind: 'point',
      at: [10, 0]
    });
  });

  test('nothing where the way is not drawn', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0))],
      units: [unit('U1')],
      circuits: [circuit('C1', ['L1'])]
    });
    expect(placesOf(site, site.circuits[0]!, { distance_m: 3, low: 2, high: 4 })).toEqual([]);
  });
});

describe('the axis of what causes would read', () => {
  test('holds every range', () => {
    const { at } = axisOf(
      [
        { low: 10, high: 20 },
        { low: 15, high: 40 }
      ],
      100,
      4
    );
    expect(at(10)).toBeGreaterThan(0);
    expect(at(40)).toBeLessThan(100);
    expect(at(25)).toBeCloseTo(50, 9);
  });
  test('goes by powers of ten where one range is a thousand times the other', () => {
    const { at, ticks } = axisOf(
      [
        { low: 1e5, high: 1e6 },
        { low: 1e8, high: 1e9 }
      ],
      100,
      4
    );
    expect(ticks.every((tick) => Number.isInteger(Math.log10(tick)))).toBe(true);
    expect(at(1e8) - at(1e7)).toBeCloseTo(at(1e7) - at(1e6), 9);
  });
  test('of a single value has room on both sides', () => {
    const { at } = axisOf([{ low: 5, high: 5 }], 100, 4);
    expect(at(5)).toBeCloseTo(50, 9);
  });
});
