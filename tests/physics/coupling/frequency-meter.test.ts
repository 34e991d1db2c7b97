import { describe, expect, it } from 'vitest';
import {
  createFrequencyMeter,
  cycleFrequencies,
  measuredFrequency,
  swingOf
} from '#physics/coupling/frequency-meter';
import { relativeError } from '../support/reference';

const CARRIER = 50_000;

/** Crossings of A·sin(phase(t)), sampled 30 times a cycle. */
const heard = (
  phase: (time: number) => number,
  rate: (time: number) => number,
  duration: number,
  samples = 30
): readonly number[] => {
  const meter = createFrequencyMeter();
  for (let n = 0; n <= duration * CARRIER * samples; n++) {
    const time = n / (CARRIER * samples);
    meter.hear(time, 3 * Math.sin(phase(time)), 3 * Math.cos(phase(time)) * rate(time));
  }
  return meter.crossings;
};

describe('crossings', () => {
  it('of a sine are where it rises through zero, within a millionth of a cycle', () => {
    const crossings = heard(
      (t) => 2 * Math.PI * CARRIER * t - 1,
      () => 2 * Math.PI * CARRIER,
      0.002
    );
    expect(crossings).toHaveLength(100);
    crossings.forEach((time, n) => {
      expect(Math.abs(time * CARRIER - (n + 1 / (2 * Math.PI)))).toBeLessThan(1e-6);
    });
  });

  it('know how steeply the sine rises: its amplitude times 2πf', () => {
    const meter = createFrequencyMeter();
    for (let n = 0; n < 200; n++) {
      const time = n / (CARRIER * 30);
      const phase = 2 * Math.PI * CARRIER * time - 1;
      meter.hear(time, 3 * Math.sin(phase), 3 * 2 * Math.PI * CARRIER * Math.cos(phase));
    }
    expect(meter.slopes).toHaveLength(meter.crossings.length);
    for (const slope of meter.slopes)
      expect(relativeError(slope, 3 * 2 * Math.PI * CARRIER)).toBeLessThan(1e-4);
  });

  it('on a sample are counted once', () => {
    const meter = createFrequencyMeter();
    for (const [time, voltage] of [-1, 0, 1, 0, -1, 0, 1].entries()) meter.hear(time, voltage, 0);
    expect(meter.crossings).toHaveLength(2);
  });
});

describe('a frequency that swings', () => {
  const SWING = 300;
  const BEAT = 800;
  // f(t) = carrier + swing·cos(2π·beat·t); its integral is the phase
  const cycles = (t: number): number =>
    CARRIER * t + (SWING / (2 * Math.PI * BEAT)) * Math.sin(2 * Math.PI * BEAT * t);
  const frequency = (t: number): number => CARRIER + SWING * Math.cos(2 * Math.PI * BEAT * t);
  const crossings = heard(
    (t) => 2 * Math.PI * cycles(t),
    (t) => 2 * Math.PI * frequency(t),
    0.02
  );

  it('is followed cycle by cycle', () => {
    cycleFrequencies(crossings).forEach((found, n) => {
      const middle = (crossings[n]! + crossings[n + 1]!) / 2;
      expect(relativeError(found, frequency(middle))).toBeLessThan(1e-5);
    });
    expect(relativeError(swingOf(cycleFrequencies(crossings)), SWING)).toBeLessThan(0.005);
  });

  it.each([0.0004, 0.001, 0.00125, 0.0019, 0.005])(
    'read over %f s is the mean of the frequency over that time',
    (time) => {
      for (const from of [0.0011, 0.00234, 0.0071]) {
        const wanted = (cycles(from + time) - cycles(from)) / time;
        // counting cycles takes the frequency as constant within one
        expect(relativeError(measuredFrequency(crossings, from, time)!, wanted)).toBeLessThan(1e-5);
      }
    }
  );

  it('is not read where crossings are missing', () => {
    expect(measuredFrequency(crossings, 0.015, 0.0051)).toBeNull();
    expect(measuredFrequency(crossings, -0.001, 0.005)).toBeNull();
    expect(measuredFrequency([], 0, 1)).toBeNull();
    expect(measuredFrequency([0.5], 0.5, 0)).toBeNull();
  });
});

describe('the swing of readings', () => {
  it.each([
    [[], 0],
    [[7], 0],
    [[5, 9, 6], 2]
  ])('%j is %f', (readings, wanted) => {
    expect(swingOf(readings)).toBe(wanted);
  });
});
