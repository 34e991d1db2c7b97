import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COARSER, fillBetween, refined, runsFor } from '#analysis/passing/samples';
import { SEED } from '../../physics/support/arbitraries';

describe('the places of a pass', () => {
  it('are every one inside the intervals and every fourth outside, each once', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.array(
          fc.tuple(
            fc.double({ min: -10, max: 130, noNaN: true }),
            fc.double({ min: 0, max: 40, noNaN: true })
          ),
          {
            maxLength: 3
          }
        ),
        (cells, spans) => {
          const last = cells * COARSER;
          const intervals = spans.map(([from, length]) => [from, from + length] as const);
          const places = runsFor(last, intervals).flatMap(({ from, count, every }) =>
            Array.from({ length: count }, (_, k) => from + k * every)
          );
          expect(new Set(places).size).toBe(places.length);
          for (let k = 0; k <= last; k += COARSER) expect(places).toContain(k);
          for (let k = 0; k <= last; k++)
            if (intervals.some(([from, to]) => k >= from && k <= to && to > 0)) expect(places).toContain(k);
          expect(Math.min(...places)).toBe(0);
          expect(Math.max(...places)).toBe(last);
        }
      ),
      { seed: SEED, numRuns: 200 }
    );
  });
});

describe('the curve between known places', () => {
  /** Of the seventh degree. */
  const polynomial = (k: number): number => {
    const t = k / 20 - 1;
    return 2 - 0.3 * t + 0.2 * t ** 2 - t ** 3 + 0.5 * t ** 4 - 0.3 * t ** 5 + 0.7 * t ** 6 + t ** 7;
  };

  it('is the polynomial of the seventh degree through eight of them', () => {
    const wanted = Float64Array.from({ length: 41 }, (_, k) => polynomial(k));
    const values = wanted.map((value, k) => (k % COARSER === 0 ? value : 0));
    const isKnown = Uint8Array.from(wanted, (_, k) => (k % COARSER === 0 ? 1 : 0));
    fillBetween(values, isKnown, COARSER);
    values.forEach((value, k) => {
      expect(value).toBeCloseTo(wanted[k]!, 9);
    });
    expect(isKnown.every((known) => known === 1)).toBe(true);
  });

  it('is straight where only two are known', () => {
    const values = Float64Array.of(1, 0, 0, 0, 3);
    fillBetween(values, Uint8Array.of(1, 0, 0, 0, 1), COARSER);
    expect([...values]).toEqual([1, 1.5, 2, 2.5, 3]);
  });

  it('keeps what is known', () => {
    const values = Float64Array.of(1, 7, 0, 0, 3);
    fillBetween(values, Uint8Array.of(1, 1, 0, 0, 1), COARSER);
    expect(values[1]).toBe(7);
  });

  it.each([1, 2, 3])('divides its steps by %i without leaving the polynomial', (per) => {
    const samples = Float64Array.from({ length: 14 }, (_, k) => polynomial(k * per));
    const values = refined(samples, per);
    expect(values).toHaveLength(13 * per + 1);
    values.forEach((value, k) => {
      expect(value).toBeCloseTo(polynomial(k), 9);
    });
  });
});
