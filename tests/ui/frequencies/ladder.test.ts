import { describe, expect, it } from 'vitest';
import { ladderOf, nearestRung, stepped, wayOf } from '#ui/frequencies/ladder';

/** In the order of a unit whose second setting is its lowest, and whose last does not oscillate. */
const ladder = ladderOf({
  settings: [
    { setting: 1, frequency_Hz: 50_000 },
    { setting: 2, frequency_Hz: 30_000 },
    { setting: 3, frequency_Hz: 80_000 },
    { setting: 4, frequency_Hz: null }
  ]
});

describe('the settings of a channel', () => {
  it('stand in the order of their frequencies, without those that do not oscillate', () => {
    expect(ladder.map(({ setting }) => setting)).toEqual([2, 1, 3]);
  });

  it.each([
    [-1e9, 2],
    [39_999, 2],
    [40_001, 1],
    [64_999, 1],
    [65_001, 3],
    [1e9, 3]
  ])('%d Hz is nearest to setting %d', (frequency, setting) => {
    expect(nearestRung(ladder, frequency)?.setting).toBe(setting);
  });

  it('are stepped through without falling off either end', () => {
    expect(stepped(ladder, 1, 1)?.setting).toBe(3);
    expect(stepped(ladder, 3, 1)?.setting).toBe(3);
    expect(stepped(ladder, 1, -1)?.setting).toBe(2);
    expect(stepped(ladder, 2, -1)?.setting).toBe(2);
    expect(stepped(ladder, 3, -Infinity)?.setting).toBe(2);
    expect(stepped(ladder, 2, Infinity)?.setting).toBe(3);
  });

  it('lead back from one that does not oscillate', () => {
    expect(stepped(ladder, 4, 1)?.setting).toBe(3);
    expect(stepped(ladder, 4, -1)?.setting).toBe(2);
  });

  it('have nothing to offer where none oscillates', () => {
    expect(nearestRung([], 50_000)).toBeNull();
    expect(stepped([], 1, 1)).toBeNull();
  });

  it('are stepped by the keys of a slider and no others', () => {
    expect([wayOf('ArrowUp'), wayOf('ArrowLeft'), wayOf('Home'), wayOf('End')]).toEqual([
      1,
      -1,
      -Infinity,
      Infinity
    ]);
    expect(wayOf('a')).toBeUndefined();
  });
});
