import { describe, expect, it } from 'vitest';
import { plainColour } from '../../src/app/chart-picture';

describe('a colour as every viewer knows it', () => {
  it.each([
    ['rgb(10, 99, 105)', '#0a6369', 1],
    ['rgba(255, 0, 0, 0.25)', '#ff0000', 0.25],
    ['rgb(0 128 255 / 0.5)', '#0080ff', 0.5],
    ['color(srgb 1 0 0.5)', '#ff0080', 1],
    ['color(srgb 0 0 0 / 0.14)', '#000000', 0.14],
    ['none', 'none', 1]
  ])('%s', (computed, colour, opacity) => {
    expect(plainColour(computed)).toEqual({ colour, opacity });
  });
});
