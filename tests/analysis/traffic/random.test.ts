import { describe, expect, it } from 'vitest';
import { exponential, lotsOf, mixed, normal } from '#analysis/traffic/random';

const many = <T>(count: number, make: () => T): readonly T[] => Array.from({ length: count }, make);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const deviation = (values: readonly number[]): number => {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((value) => (value - middle) ** 2)));
};

/** Marsaglia's generator on whole numbers of any size, as the paper writes it down, from the state that `before` is. */
const marsaglia = (before: bigint): bigint => {
  const mask = 0xffffffffn;
  let y = before;
  y ^= (y << 13n) & mask;
  y ^= y >> 17n;
  y ^= (y << 5n) & mask;
  return y & mask;
};

describe('numbers drawn by lot', () => {
  it('are Marsaglia’s xorshift with the shifts 13, 17, 5', () => {
    const lot = lotsOf(7, 1, 2);
    let state = BigInt(Math.round(lot() * 2 ** 32));
    for (let k = 0; k < 1_000; k++) {
      state = marsaglia(state);
      expect(BigInt(Math.round(lot() * 2 ** 32))).toBe(state);
    }
  });

  it('begin from MurmurHash3’s finalizer, which is one to one', () => {
    // fmix32(0) = 0 and fmix32(1) = 0x514e28b7: from memory of the reference implementation's published tests
    expect(mixed(0)).toBe(0);
    expect(mixed(1)).toBe(0x514e28b7);
    expect(new Set(Array.from({ length: 20_000 }, (_, k) => mixed(k))).size).toBe(20_000);
  });

  it('are the same for the same seed and keys, and have nothing to do with others', () => {
    const first = many(5, lotsOf(1, 2, 3));
    expect(many(5, lotsOf(1, 2, 3))).toEqual(first);
    for (const other of [lotsOf(2, 2, 3), lotsOf(1, 3, 3), lotsOf(1, 2, 4), lotsOf(1, 3, 2)])
      expect(many(5, other)).not.toEqual(first);
    const [a, b] = [many(4_000, lotsOf(1, 0, 1)), many(4_000, lotsOf(1, 0, 2))];
    const together = mean(a.map((value, k) => (value - 0.5) * (b[k]! - 0.5)));
    // the deviation of such a mean is 1/12/√4000 = 0.0013
    expect(Math.abs(together)).toBeLessThan(0.005);
  });

  it('spread as they should: three deviations of the mean are the tolerance', () => {
    const lot = lotsOf(11);
    const flat = many(20_000, lot);
    expect(Math.min(...flat)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...flat)).toBeLessThan(1);
    expect(Math.abs(mean(flat) - 0.5)).toBeLessThan((3 * Math.sqrt(1 / 12)) / Math.sqrt(20_000));
    const waits = many(20_000, () => exponential(lot));
    expect(Math.abs(mean(waits) - 1)).toBeLessThan(3 / Math.sqrt(20_000));
    expect(waits.filter((value) => value > 1).length / 20_000).toBeCloseTo(Math.exp(-1), 2);
    const bell = many(20_000, () => normal(lot, 8));
    expect(Math.abs(mean(bell))).toBeLessThan(3 / Math.sqrt(20_000));
    expect(deviation(bell)).toBeCloseTo(1, 1.5);
    expect(bell.filter((value) => Math.abs(value) < 1).length / 20_000).toBeCloseTo(0.683, 1.7);
    expect(Math.max(...many(20_000, () => normal(lot, 2)))).toBe(2);
  });
});
