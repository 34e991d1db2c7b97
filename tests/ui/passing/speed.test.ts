import { describe, expect, it } from 'vitest';
import type { LoopPair, PairDirection, PairPicture } from '#analysis/speed-pair/results';
import { keyOf, pairChosen, responsesAt, rowsOf, widest, zeroOf } from '#ui/passing/speed/rows';
import { lackOf, shareText, spacingText, thresholdNotice } from '#ui/passing/speed/words';
import { passOf, side, triangle } from '../../analysis/speed-pair/triangle';

const SPACING = 5;
const shown = {
  displayUnits: 'metric' as const,
  circuits: [],
  vehicles: [],
  lanes: []
};

const direction = (thresholds: readonly [number, number]): PairDirection => {
  const sides = [
    side(-0.9, thresholds[0], { circuit: 'C1' }),
    side(-0.9 + SPACING, thresholds[1], { circuit: 'C2' })
  ] as const;
  const pass = passOf([triangle(0, 0.02), triangle(SPACING, 0.02)], sides);
  return { sides, spacing_m: SPACING, passes: [pass] };
};
const picture = (forward: PairDirection): PairPicture => ({
  lane: 'a',
  length_m: 40,
  forward,
  backward: forward,
  spacingTolerance_m: 0
});
const rows = (thresholds: readonly [number, number], aim = 0.05) =>
  rowsOf(picture(direction(thresholds)), direction(thresholds), 10, aim);

describe('pairs that are offered', () => {
  const pairs: readonly LoopPair[] = [
    { lane: 'a', first: 'C1', second: 'C2', spacing_m: 3 },
    { lane: 'a', first: 'C2', second: 'C3', spacing_m: 5 }
  ];

  it('are the one that was chosen, or the first where that is gone', () => {
    expect(pairChosen(pairs, keyOf(pairs[1]!))).toBe(pairs[1]);
    expect(pairChosen(pairs, 'gone')).toBe(pairs[0]);
    expect(pairChosen([], null)).toBeNull();
  });
});

describe('rows of a pair', () => {
  it('hold the measurement and the spacing for the aim', () => {
    // trips 5.6 m apart: 0.6/(d + 0.6) = 5 % at 11.4 m
    const [row] = rows([0.004, 0.008]);
    expect(row?.measurement?.speed_m_s).toBeCloseTo(50 / 5.6, 9);
    expect(widest(rows([0.004, 0.008]))).toBeCloseTo(11.4, 9);
  });

  it('have no widest spacing where one vehicle has no speed, or there is none', () => {
    expect(widest(rows([0.004, 0.03]))).toBeNull();
    expect(widest([])).toBeNull();
  });

  it('read both responses so long after the first trip', () => {
    const { passes } = direction([0.004, 0.004]);
    // the first trips 2.4 m before its middle: a quarter of a second later at 10 m/s it is 0.1 m behind it
    expect(zeroOf(passes[0]!)).toBeCloseTo(-2.4, 9);
    const [first, second] = responsesAt(passes[0]!, 0.25, 10);
    expect(first).toBeCloseTo(0.02 * (1 - 0.1 / 3), 9);
    expect(second).toBe(0);
  });
});

describe('words', () => {
  it('say what is nought as nought, and what has no bound as such', () => {
    expect(shareText(shown, 1e-9)).toBe('0 %');
    expect(shareText(shown, 0.0123)).toBe('+1.2 %');
    expect(shareText(shown, -0.1071)).toBe('−11 %');
    expect(shareText(shown, Infinity)).toBe('any');
    expect(shareText(shown, null)).toBe('–');
  });

  it('name thresholds that differ with what they do, and are silent on equal ones', () => {
    const of = (thresholds: readonly [number, number]) =>
      thresholdNotice(shown, direction(thresholds), rows(thresholds)[0]);
    expect(of([0.004, 0.004])).toBeNull();
    expect(of([0.004, 0.008])).toMatch(/C1 0\.400 % and C2 0\.800 %.*−11 %/);
  });

  it('name the circuit that misses a vehicle', () => {
    const uneven = direction([0.004, 0.03]);
    expect(lackOf(shown, uneven, uneven.passes[0]!)).toBe('not detected by C2');
  });

  it('tell whether the spacing that is drawn is enough', () => {
    expect(spacingText(shown, { wanted: 4, now: 5, aim: 0.05 })).toMatch(
      /^The leading edges are 5\.00 m apart/
    );
    expect(spacingText(shown, { wanted: 11.4, now: 5, aim: 0.05 })).toMatch(
      /^With the leading edges 11\.40 m apart/
    );
    expect(spacingText(shown, { wanted: null, now: 5, aim: 0.05 })).toMatch(/no speed/);
  });
});
