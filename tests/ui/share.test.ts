import { expect, test } from 'vitest';
import { BAR_LENGTH, barPart, responseWord, shownResponse, THRESHOLD_PART } from '#ui/readout/share';

test.each([
  [{ best: -0.03, worst: -0.01 }, 'detected'],
  [{ best: -0.03, worst: -0.002 }, 'detected'],
  [{ best: -0.03, worst: -0.001 }, 'on some paths'],
  [{ best: -0.001, worst: 0 }, 'missed'],
  [{ best: 0.01, worst: 0.02 }, 'missed']
] as const)('a pass of %o against 0.2 %% is %s', (response, word) => {
  expect(responseWord(response, 0.002)).toBe(word);
});

test('without a channel there is nothing to compare with', () => {
  expect(responseWord({ best: -0.03, worst: -0.01 }, null)).toBe('no threshold');
});

test('the bar fills up to its end and no further, and the threshold stands where one threshold ends', () => {
  expect(barPart(1)).toBe(THRESHOLD_PART);
  expect(barPart(BAR_LENGTH * 2)).toBe(1);
  expect(barPart(-1)).toBe(0);
  expect(barPart(Number.NaN)).toBe(0);
});

test.each([
  [0.0345678, 0.0345678, 3],
  [0.00131, 0.00131, 3],
  [0.000567, 0.00057, 2],
  [0.0000189, 0.00002, 1],
  [0.000001, 0, 1],
  [-0.0000001, 0, 1]
])('a response of %d is read as %d with %d digits', (response, value, digits) => {
  const shown = shownResponse(response);
  expect(shown.value).toBeCloseTo(value, 12);
  expect(shown.digits).toBe(digits);
});
