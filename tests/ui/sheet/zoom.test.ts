import { expect, test } from 'vitest';
import { fitted, stepZoom, ZOOM } from '#ui/sheet/zoom';

const A3 = { width: 420, height: 297 };

test('a whole page fits into its room with a margin, whichever side is short', () => {
  for (const [width, height] of [
    [900, 300],
    [300, 900],
    [640, 480]
  ] as const) {
    const size = fitted(A3, width, height);
    expect(A3.width * size).toBeLessThanOrEqual(width - 24 + 1e-9);
    expect(A3.height * size).toBeLessThanOrEqual(height - 24 + 1e-9);
    const spare = Math.min(width - 24 - A3.width * size, height - 24 - A3.height * size);
    expect(spare).toBeCloseTo(0, 9);
  }
});

test('a room that is not there yet asks for no paper of negative size', () => {
  expect(fitted(A3, 0, 0)).toBeGreaterThan(0);
});

test('steps lead to the ends and no further, and two of them double the size', () => {
  expect(stepZoom(stepZoom(1, 1), 1)).toBeCloseTo(2, 9);
  expect(stepZoom(1, -1)).toBe(ZOOM.least);
  expect(stepZoom(ZOOM.most, 1)).toBe(ZOOM.most);
});
