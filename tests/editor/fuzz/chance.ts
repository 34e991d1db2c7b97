/** Choices that a seed decides: the same seed makes the same hand for ever. */
import type { Point } from '#plan/schema';
import type { Modifiers } from '#editor/types';

export interface Chance {
  /** From 0, less than 1. */
  next(): number;
  below(count: number): number;
  yes(share: number): boolean;
  of<T>(list: readonly T[]): T;
  some<T>(list: readonly T[], most: number): T[];
  point(): Point;
  held(): Modifiers;
}

/** Mulberry's thirty-two bits: short, and good enough to scatter hands. */
export function chanceOf(seed: number): Chance {
  let state = seed >>> 0;
  function next(): number {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }
  const below = (count: number): number => Math.floor(next() * count);
  const along = (most: number): number => Math.round((2 * next() - 1) * most * 97) / 97;
  const chance: Chance = {
    next,
    below,
    yes: (share) => next() < share,
    of: (list) => list[below(list.length)]!,
    some: (list, most) => Array.from({ length: 1 + below(most) }, () => chance.of(list)),
    point: () => [along(9), along(7)],
    held: () => ({ shift: chance.yes(0.2), alt: chance.yes(0.2), control: chance.yes(0.1) })
  };
  return chance;
}
