import { describe, expect, it } from 'vitest';
import { placeAfterKey } from '#ui/parts/step-keys';

const REACH = { from: -2, to: 10, fine: 0.5, coarse: 4 };
const after = (key: string, place: number, shiftKey = false) =>
  placeAfterKey({ key, shiftKey }, place, REACH);

describe('the keys of a line along a chart', () => {
  it('go a step either way, and a longer one with shift', () => {
    expect(['ArrowLeft', 'ArrowDown'].map((key) => after(key, 3))).toEqual([2.5, 2.5]);
    expect(['ArrowRight', 'ArrowUp'].map((key) => after(key, 3))).toEqual([3.5, 3.5]);
    expect(after('ArrowRight', 3, true)).toBe(7);
    expect(after('ArrowLeft', 3, true)).toBe(-1);
  });

  it('stay between the ends, and go to them', () => {
    expect(after('ArrowRight', 9, true)).toBe(10);
    expect(after('ArrowLeft', -1.8)).toBe(-2);
    expect([after('Home', 3), after('End', 3)]).toEqual([-2, 10]);
  });

  it('leave every other key alone', () => {
    expect(['Enter', 'Tab', 'a', 'PageUp'].map((key) => after(key, 3))).toEqual([null, null, null, null]);
  });
});
