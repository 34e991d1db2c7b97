import { describe, expect, it } from 'vitest';
import { distance } from '#plan/geometry/points';
import type { Loop } from '#plan/schema';
import { netOf, planOver, sectionThrough, type LineWish } from '#ui/compare/field/planes';

const LOOP: Loop = {
  id: 'L1',
  name: '',
  turns: 3,
  wire: 'awg14',
  slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
  tail: { length: 0 },
  shape: { kind: 'rectangle', centre: [5, 3], width: 1.8, length: 2.4, rotation: 0, cornerCut: 0 }
};
const USUAL: LineWish = { line: 'across', angle: 0, offset: 0, ends: null, tape: null };
const through = (wish: Partial<LineWish>) => sectionThrough([LOOP], [5, 3], 90, { ...USUAL, ...wish });

describe('the plane of a section', () => {
  it('lies across the lane through the middle, from left to right as one drives', () => {
    const { from, to } = through({});
    expect([from[1], to[1]]).toEqual([3, 3]);
    expect(from[0]).toBeLessThan(4.1);
    expect(to[0]).toBeGreaterThan(5.9);
    expect(5 - from[0]).toBeCloseTo(to[0] - 5, 9);
  });

  it('lies along the lane, in its direction', () => {
    const { from, to } = through({ line: 'along' });
    expect([from[0], to[0]]).toEqual([5, 5]);
    expect(from[1]).toBeLessThan(1.8);
    expect(to[1]).toBeGreaterThan(4.2);
  });

  it('is moved to the left of its direction by an offset', () => {
    expect(through({ offset: 0.9 }).from[1]).toBeCloseTo(3.9, 9);
    expect(through({ line: 'along', offset: 0.9 }).from[0]).toBeCloseTo(4.1, 9);
  });

  it('has an angle of its own, and the very ends of a tape', () => {
    const { from, to } = through({ line: 'angle', angle: 30 });
    expect(Math.atan2(to[1] - from[1], to[0] - from[0])).toBeCloseTo(Math.PI / 6, 9);
    expect(through({ line: 'tape', tape: [[0, 0], [8, 6]] })).toMatchObject({ from: [0, 0], to: [8, 6] }); // prettier-ignore
  });

  it('has ends of its own, which go along with the loop', () => {
    expect(through({ line: 'ends', ends: [[-2, -1], [3, 1]] })).toMatchObject({ from: [3, 2], to: [8, 4] }); // prettier-ignore
    const elsewhere = sectionThrough([LOOP], [7, 3], 90, { ...USUAL, line: 'ends', ends: [[-2, -1], [3, 1]] }); // prettier-ignore
    expect(elsewhere).toMatchObject({ from: [5, 2], to: [10, 4] });
  });

  it('keeps a direction where the tape has none', () => {
    const plane = through({ line: 'tape', tape: [[1, 1], [1, 1]] }); // prettier-ignore
    expect(distance(plane.from, plane.to)).toBeGreaterThan(1);
  });

  it('shows the bottom of the slot', () => {
    const deep = { ...LOOP, slot: { ...LOOP.slot, depth: 0.5 } };
    expect(sectionThrough([deep], [5, 3], 90, USUAL).low_m).toBeLessThan(-0.5);
  });
});

describe('the plan at a height', () => {
  it('holds the loop and something round it', () => {
    const plane = planOver([LOOP], 0.4)!;
    expect(plane.z_m).toBe(0.4);
    expect(plane.from[0]).toBeLessThan(4.1 - 1);
    expect(plane.to[1]).toBeGreaterThan(4.2 + 1);
    expect(planOver([], 0.4)).toBeNull();
  });
});

describe('a net of nodes', () => {
  it('has cells as wide as high, and about as many nodes as asked for', () => {
    const { columns, rows } = netOf(4, 2, 7_200);
    expect([columns, rows]).toEqual([120, 60]);
  });
});
