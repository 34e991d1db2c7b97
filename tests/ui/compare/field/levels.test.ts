import { describe, expect, it } from 'vitest';
import { placeAt, edgesOf } from '#ui/compare/field/frame';
import { colourOf, COLOURS, levelsFor, MOST_LEVELS, roundStep } from '#ui/compare/field/levels';
import { logRingsOver } from '#ui/compare/field/rings';
import { strengthsOf } from '#ui/compare/field/sample';
import { pictureOf } from './pictures';

describe('steps of field strength', () => {
  const decades = (from: number, to: number): Float64Array =>
    Float64Array.from({ length: 1001 }, (_, k) => 10 ** (from + ((to - from) * k) / 1000));

  it('are one, two and five in each decade', () => {
    expect(levelsFor(decades(-8, -6))).toEqual([2e-8, 5e-8, 1e-7, 2e-7, 5e-7]);
  });

  it('are not too many to be told apart, and the strongest stay', () => {
    const levels = levelsFor(decades(-13, -5.1));
    expect(levels).toHaveLength(MOST_LEVELS);
    expect(levels.at(-1)).toBe(5e-6);
  });

  it('do not follow the few nodes beside a wire', () => {
    const strengths = decades(-8, -6);
    strengths[1000] = 1;
    expect(levelsFor(strengths)).toEqual(levelsFor(decades(-8, -6)));
  });

  it('are none without a field', () => {
    expect(levelsFor(new Float64Array(50))).toEqual([]);
  });

  it('use all colours, each later one never before an earlier', () => {
    const colours = Array.from({ length: 6 }, (_, n) => colourOf(n, 6));
    expect(colours[0]).toBe(0);
    expect(colours[5]).toBe(COLOURS - 1);
    expect([...colours].sort((a, b) => a - b)).toEqual(colours);
    expect(new Set(colours).size).toBe(6);
  });
});

describe('round steps', () => {
  it.each([
    [1.8, 9, 0.2],
    [0.95, 10, 0.1],
    [7, 10, 1],
    [3, 10, 0.5],
    [0, 8, 0]
  ])('%f in %f parts is by %f', (most, count, step) => {
    expect(roundStep(most, count)).toBe(step);
  });
});

describe('lines of equal strength', () => {
  it('run round a long wire as circles whose radius is µ0/2π over the strength', () => {
    // outside a straight wire B = µ0·I/2πr (Ampère's law)
    const [x, y] = [2, 0.5];
    const picture = pictureOf(
      (u, v) => [2e-7 / Math.max(1e-3, Math.hypot(u - x, v - y)), 0, 0],
      {},
      { columns: 121, rows: 61 }
    );
    const rings = logRingsOver(picture, strengthsOf(picture), 5e-7, (column, row) =>
      placeAt(edgesOf(picture.plane), picture, column, row)
    );
    expect(rings).toHaveLength(1);
    for (const [u, v] of rings[0]!) expect(Math.hypot(u - x, v - y)).toBeCloseTo(0.4, 2);
  });
});
