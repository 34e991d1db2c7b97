import { describe, expect, it } from 'vitest';
import { cycleFrequencies, swingOf } from '#physics/coupling/frequency-meter';
import {
  coupledFlow,
  fullSwing,
  startRun,
  VOLTAGE_1,
  VOLTAGE_2,
  type Oscillator
} from '#physics/coupling/oscillators';
import { crossingsOf, meanOf, oscillator, within } from '../support/beating';
import { relativeError } from '../support/reference';

const far = oscillator(80e3, 10, 2);

/** Peaks of the first tank's voltage in the last ten cycles of 4 ms. */
const amplitudeOf = (tank: Oscillator, step = 1 / (50e3 * 200)): number => {
  let most = 0;
  startRun(coupledFlow(tank, far, 0), fullSwing(tank, far), step).advance(
    Math.round(0.004 / step),
    (time, state) => {
      if (time > 0.0038) most = Math.max(most, Math.abs(state[VOLTAGE_1]!));
    }
  );
  return most;
};

describe('one oscillator that nothing couples to', () => {
  it.each([
    [5, 1.2],
    [10, 4],
    [40, 2],
    [40, 8]
  ])('of Q %f, driven %f times too hard, keeps the amplitude asked for', (q, excess) => {
    // the balance of the first harmonic leaves out the others, which weigh 1/Q
    expect(relativeError(amplitudeOf(oscillator(50e3, q, excess)), 5)).toBeLessThan(0.5 / q);
  });

  it.each([5, 8, 20])('of Q %f with a hint of limiting runs at √(1 − 1/Q²)/(2π√(LC))', (q) => {
    // series resistance R, fed by the conductance RC/L that makes up for it: LC·s² + 1 − R²C/L = 0, hand-solved
    const [crossings] = crossingsOf(oscillator(50e3, q, 1.02), far, 0, 0.02, 1 / (50e3 * 60));
    const wanted = 50e3 * Math.sqrt(1 - 1 / (q * q));
    expect(relativeError(meanOf(within(crossings, 0.01, 0.02)), wanted)).toBeLessThan(2e-5);
  });

  it('does not swing', () => {
    const [crossings] = crossingsOf(oscillator(50e3, 15, 3), far, 0, 0.006, 1 / (50e3 * 120));
    expect(swingOf(cycleFrequencies(within(crossings, 0.004, 0.006))) / 50e3).toBeLessThan(1e-6);
  });
});

describe('two coupled tanks', () => {
  it('that ring together and against each other do so at 1/(2π√(LC(1 ± k))), without loss', () => {
    // equal tanks, Q so high that nothing is lost and the feed is as weak; the modes by hand from the symmetry
    const tank = oscillator(50e3, 1e9, 2);
    const k = 0.2;
    for (const [phase, sign] of [
      [0, 1],
      [Math.PI, -1]
    ] as const) {
      const crossings: number[] = [];
      let before = 1;
      const step = 1 / (50e3 * 200);
      const start = fullSwing(tank, tank, phase);
      startRun(coupledFlow(tank, tank, k), start, step).advance(20_000, (time, state, slope) => {
        const voltage = state[VOLTAGE_1]!;
        if (before < 0 && voltage >= 0) crossings.push(time - voltage / slope[VOLTAGE_1]!);
        before = voltage;
      });
      const wanted = 50e3 / Math.sqrt(1 + sign * k);
      expect(relativeError(meanOf(crossings), wanted)).toBeLessThan(1e-6);
    }
  });

  it('start with the second as far before its top as is asked for', () => {
    const tank = oscillator(50e3, 1e9, 2);
    // a third of a cycle before its top, a third of 20 µs later it is there
    const state = fullSwing(tank, tank, (2 * Math.PI) / 3);
    const step = 1 / (50e3 * 300);
    startRun(coupledFlow(tank, tank, 0), state, step).advance(100, () => {});
    expect(relativeError(state[VOLTAGE_2]!, 5)).toBeLessThan(1e-4);
    expect(relativeError(state[VOLTAGE_1]!, 5 * Math.cos((2 * Math.PI) / 3))).toBeLessThan(1e-4);
  });

  it('have the same swing whichever way the second is wound', () => {
    const [a, b] = [oscillator(50e3, 10, 3), oscillator(51.5e3, 10, 3)];
    const [plus, minus] = [0.01, -0.01].map((k) =>
      swingOf(cycleFrequencies(within(crossingsOf(a, b, k, 0.01)[0], 0.004, 0.01)))
    );
    expect(relativeError(plus!, minus!)).toBeLessThan(0.01);
  });

  it('are solved the better the shorter the step: with the fourth power', () => {
    const [a, b] = [oscillator(50e3, 10, 2), oscillator(52e3, 10, 2, 2e-4)];
    const ends = [40, 80, 160].map((perCycle) => {
      const state = fullSwing(a, b);
      const step = 1 / (50e3 * perCycle);
      startRun(coupledFlow(a, b, 0.05), state, step).advance(20 * perCycle, () => {});
      return state[VOLTAGE_1]!;
    });
    const [first, second] = [ends[0]! - ends[1]!, ends[1]! - ends[2]!];
    expect(Math.abs(Math.log2(Math.abs(first / second)) - 4)).toBeLessThan(0.4);
  });
});
