/** f = 1/(2π√(LC)) by hand over the usual band of 20 to 100 kHz, and what loss does to it. */
import { describe, expect, it } from 'vitest';
import { oscillatorFrequency } from '#physics/coupling/beat';
import { createFrequencyMeter } from '#physics/coupling/frequency-meter';
import { rungeKutta } from '#physics/numeric/runge-kutta';
import { meanOf } from '../support/beating';
import { relativeError } from '../support/reference';

const LOSSLESS = 1e9;

describe('a tank without loss', () => {
  it.each([
    // L, C, the arithmetic, f
    [280e-6, 220e-9, 'LC = 6.16e-11, √ = 7.84857e-6, ×2π = 4.93140e-5', 20_278.2],
    [150e-6, 220e-9, 'LC = 3.3e-11, √ = 5.74456e-6, ×2π = 3.60942e-5', 27_705.3],
    [200e-6, 68e-9, 'LC = 1.36e-11, √ = 3.68782e-6, ×2π = 2.31712e-5', 43_156.9],
    [100e-6, 100e-9, 'LC = 1e-11, √ = 3.16228e-6, ×2π = 1.98692e-5', 50_329.2],
    [80e-6, 100e-9, 'LC = 8e-12, √ = 2.82843e-6, ×2π = 1.77715e-5', 56_269.8],
    [75e-6, 47e-9, 'LC = 3.525e-12, √ = 1.87750e-6, ×2π = 1.17967e-5', 84_769.7],
    [60e-6, 47e-9, 'LC = 2.82e-12, √ = 1.67929e-6, ×2π = 1.05513e-5', 94_775.4],
    [250e-6, 10.5e-9, 'LC = 2.625e-12, √ = 1.62019e-6, ×2π = 1.01799e-5', 98_232.6]
  ])('of %f H and %f F: %s, 1/ = %f Hz', (L, C, _, wanted) => {
    // the table has six digits
    expect(relativeError(oscillatorFrequency(L, C, LOSSLESS), wanted)).toBeLessThan(3e-6);
  });
});

describe('a tank with loss', () => {
  const [L, C] = [1e-4, 1e-7];
  const lossless = oscillatorFrequency(L, C, LOSSLESS);

  it.each([
    // 1/(8·25) = 0.005, 1/(8·64) = 0.001953125, 1/(8·400) = 0.0003125
    [5, 0.995],
    [8, 0.998046875],
    [20, 0.9996875]
  ])('of Q %f runs at %f of that', (q, wanted) => {
    expect(relativeError(oscillatorFrequency(L, C, q) / lossless, wanted)).toBeLessThan(1e-12);
  });

  it.each([5, 8, 20])('of Q %f rings as L·x″ + R·x′ + x/C = 0 does, √(1 − 1/4Q²), to the order 1/Q²', (q) => {
    const exact = lossless * Math.sqrt(1 - 1 / (4 * q * q));
    // the next term of the series is 1/(128·Q⁴)
    expect(relativeError(oscillatorFrequency(L, C, q), exact)).toBeLessThan(1.1 / (128 * q ** 4));
  });

  it.each([5, 20])('of Q %f rings so when integrated in time', (q) => {
    const resistance = Math.sqrt(L / C) / q;
    const stepper = rungeKutta({
      size: 2,
      slopeAt: (_, [charge, current], slope) => {
        slope[0] = current!;
        slope[1] = -(charge! / C + resistance * current!) / L;
      }
    });
    const state = Float64Array.of(1, 0);
    const meter = createFrequencyMeter();
    const step = 1 / (lossless * 100);
    for (let n = 1; n <= 1_500; n++) {
      stepper(state, 0, step);
      meter.hear(n * step, state[0]!, state[1]!);
    }
    expect(relativeError(meanOf(meter.crossings), oscillatorFrequency(L, C, q))).toBeLessThan(
      1.2 / (128 * q ** 4) + 1e-6
    );
  });
});
