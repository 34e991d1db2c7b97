import { describe, expect, it } from 'vitest';
import { RecentCache } from '#analysis/recent-cache';

const never = (): number => {
  throw new Error('made a second time');
};

describe('a cache of what was asked for lately', () => {
  it('makes a value once', () => {
    const cache = new RecentCache<string, number>(3);
    expect(cache.get('a', () => 1)).toBe(1);
    expect(cache.get('a', never)).toBe(1);
    expect(cache.has('a')).toBe(true);
    expect(cache.has('b')).toBe(false);
  });

  it('keeps values that are nothing: 0 is one', () => {
    const cache = new RecentCache<string, number>(3);
    cache.get('a', () => 0);
    expect(cache.get('a', never)).toBe(0);
  });

  it('forgets what was not asked for, and keeps what is asked for again and again', () => {
    const cache = new RecentCache<number, number>(10);
    cache.get(-1, () => 7);
    for (let k = 0; k < 100; k++) {
      cache.get(k, () => k);
      expect(cache.get(-1, never)).toBe(7);
    }
    expect(cache.has(3)).toBe(false);
    expect(cache.has(99)).toBe(true);
    expect(cache.get(3, () => 4)).toBe(4);
  });

  it('holds at least as many as its size', () => {
    const cache = new RecentCache<number, number>(10);
    for (let k = 0; k < 57; k++) cache.get(k, () => k);
    for (let k = 47; k < 57; k++) expect(cache.has(k)).toBe(true);
  });
});
