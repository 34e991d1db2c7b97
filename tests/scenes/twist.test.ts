import { describe, expect, it } from 'vitest';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { twistedPair } from '#scenes/twist';

const way: readonly Point[] = [[0, 0], [100, 0], [100, 60]]; // prettier-ignore
const end = <T>(points: readonly T[]): T | undefined => points.at(-1);

describe('a twisted pair', () => {
  it('has two wires that begin and end where the way does', () => {
    for (const wire of twistedPair(way)) {
      expect(wire[0]).toEqual(way[0]);
      expect(end(wire)).toEqual(end(way));
    }
  });

  it('lays its wires on both sides of the way, in turn', () => {
    const [one, other] = twistedPair([[0, 0], [100, 0]]); // prettier-ignore
    const heights = one.slice(1, -1).map(([, y]) => Math.sign(y));
    expect(heights.slice(0, 4)).toEqual([1, -1, 1, -1]);
    expect(other.slice(1, -1).map(([, y]) => Math.sign(y))).toEqual(heights.map((side) => -side));
  });

  it('keeps to the way round its bends', () => {
    for (const wire of twistedPair(way))
      for (const [x, y] of wire)
        expect(Math.min(x <= 100 ? Math.abs(y) : 9, y >= 0 ? Math.abs(x - 100) : 9)).toBeLessThan(3);
  });

  it('never takes more points than are worth painting', () => {
    const [wire] = twistedPair([[0, 0], [80_000, 0]]); // prettier-ignore
    expect(wire.length).toBeLessThan(410);
    expect(distance(wire[0]!, end(wire)!)).toBeCloseTo(80_000, 6);
  });

  it('is nothing where there is no way', () => {
    expect(twistedPair([])).toEqual([[], []]);
    expect(twistedPair([[1, 1], [1, 1]])[0]).toEqual([[1, 1], [1, 1]]); // prettier-ignore
  });
});
