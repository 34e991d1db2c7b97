import { describe, expect, it } from 'vitest';
import { rounded } from '#units/digits';

describe('rounding to decimals', () => {
  it.each([
    // 17.1 m and 5 % are 17.955 m, whichever side of it the binary fraction lies
    [17.955, 2, '17.96'],
    [17.1 * 1.05, 2, '17.96'],
    [-17.955, 2, '-17.96'],
    [1.005, 2, '1.01'],
    [17.9549, 2, '17.95'],
    [2.5, 0, '3'],
    [0, 2, '0.00'],
    [123456789012.4, 1, '123456789012.4']
  ])('%s to %s places is %s', (value, places, text) => {
    expect(rounded(value, places)).toBe(text);
  });
});
