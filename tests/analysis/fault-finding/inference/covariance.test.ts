import { describe, expect, it } from 'vitest';
import { relativeOf, type StraySpread } from '#analysis/fault-finding/inference/covariance';
import { withSteelSlack } from '#analysis/fault-finding/inference/steel-slack';
import { figure } from '../support/prepared';

const shares = new Map([
  ['L1', 0.5],
  ['L2', 0.5]
]);
const one = figure('loop', 'inductance_H', { loop: 'L1' });
const other = figure('loop', 'inductance_H', { loop: 'L2' });
const both = figure('cabinet', 'inductance_H');
const now = (asked: typeof one) => ({ asked, isBaseline: false });

const spread = (inputs: StraySpread['inputs'], model = 0): StraySpread => ({
  inputs,
  derivatives: [1, 2, 3].map(() => inputs.map(() => 0.02)),
  model: [model, model, model]
});

describe('how figures stray together', () => {
  it('each loop’s dimensions are its own, and average out over a circuit', () => {
    const matrix = relativeOf([one, other, both].map(now), shares)(spread(['dimensions']));
    const v = 0.0004;
    expect([...matrix].map((each) => each / v)).toEqual(
      [1, 0, 0.5, 0, 1, 0.5, 0.5, 0.5, 0.5].map((each) => expect.closeTo(each, 10) as number)
    );
  });

  it('what is one for the circuit moves all of them', () => {
    const matrix = relativeOf([one, other, both].map(now), shares)(spread(['temperature']));
    for (const each of matrix) expect(each).toBeCloseTo(0.0004, 12);
  });

  it('another day has another temperature, but the same dimensions and the same model', () => {
    const days = [now(both), { asked: both, isBaseline: true }, now(one)];
    const [, across] = relativeOf(days, shares)(spread(['temperature', 'leadInLength'], 0.01));
    expect(across).toBeCloseTo(0.0004 + 0.0001, 12);
  });

  it('steel that nobody drew leaves its own effect open, more so on Q', () => {
    const asked = [both, figure('cabinet', 'q'), figure('cabinet', 'resistanceDc_ohm')];
    const wide = withSteelSlack(spread([]), asked, [90, 10, 2], [100, 20, 2]);
    const [l, q, r] = relativeOf(
      asked.map((each) => ({ asked: each, isBaseline: false })),
      shares
    )(wide).filter((_, k) => k % 4 === 0);
    expect(r).toBe(0);
    expect(Math.sqrt(q!)).toBeGreaterThan(2 * Math.sqrt(l!));
    expect(Math.sqrt(l!)).toBeGreaterThan(0.01);
    expect(Math.sqrt(l!)).toBeLessThan(0.05);
  });
});
