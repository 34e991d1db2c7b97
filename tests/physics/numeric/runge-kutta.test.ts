import { describe, expect, it } from 'vitest';
import { rungeKutta, type Flow } from '#physics/numeric/runge-kutta';

/** Runs to `end` in as many steps. */
const run = (flow: Flow, start: readonly number[], end: number, steps: number): Float64Array => {
  const state = Float64Array.from(start);
  const stepper = rungeKutta(flow);
  for (let n = 0; n < steps; n++) stepper(state, (n * end) / steps, end / steps);
  return state;
};

const CASES: readonly {
  readonly name: string;
  readonly flow: Flow;
  readonly start: readonly number[];
  readonly end: number;
  readonly steps: number;
  readonly wanted: number;
}[] = [
  {
    name: "y' = −y: exp(−t)",
    flow: { size: 1, slopeAt: (_, y, slope) => void (slope[0] = -y[0]!) },
    start: [1],
    end: 2,
    steps: 20,
    wanted: Math.exp(-2)
  },
  {
    name: "y' = y·cos t: exp(sin t), an equation that knows the time",
    flow: { size: 1, slopeAt: (time, y, slope) => void (slope[0] = y[0]! * Math.cos(time)) },
    start: [1],
    end: 5,
    steps: 40,
    wanted: Math.exp(Math.sin(5))
  },
  {
    name: "x'' + 0.2·x' + x = 0: exp(−0.1t)·cos(√0.99·t) from the slope −0.1",
    flow: {
      size: 2,
      slopeAt: (_, y, slope) => {
        slope[0] = y[1]!;
        slope[1] = -y[0]! - 0.2 * y[1]!;
      }
    },
    start: [1, -0.1],
    end: 10,
    steps: 80,
    wanted: Math.exp(-1) * Math.cos(Math.sqrt(0.99) * 10)
  },
  {
    name: "y' = y² : 1/(1 − t), not linear",
    flow: { size: 1, slopeAt: (_, y, slope) => void (slope[0] = y[0]! ** 2) },
    start: [1],
    end: 0.5,
    steps: 20,
    wanted: 2
  }
];

describe('the classical Runge–Kutta method', () => {
  it.each(CASES)('is of fourth order: $name', ({ flow, start, end, steps, wanted }) => {
    const errors = [1, 2, 4].map((times) => Math.abs(run(flow, start, end, steps * times)[0]! - wanted));
    // half the step, a sixteenth of the error
    for (const [coarse, fine] of [errors.slice(0, 2), errors.slice(1)])
      expect(Math.abs(Math.log2(coarse! / fine!) - 4)).toBeLessThan(0.2);
    expect(errors[2]).toBeLessThan(1e-7);
  });

  it('is exact for a polynomial of third degree in time', () => {
    const flow: Flow = { size: 1, slopeAt: (time, _, slope) => void (slope[0] = 4 * time ** 3 - 2 * time) };
    expect(run(flow, [1], 3, 1)[0]).toBeCloseTo(1 + 81 - 9, 10);
  });

  it('leaves the time alone: two runs with one stepper give the same', () => {
    const { flow, start } = CASES[1]!;
    const stepper = rungeKutta(flow);
    const [first, second] = [Float64Array.from(start), Float64Array.from(start)];
    stepper(first, 1, 0.1);
    stepper(second, 1, 0.1);
    expect(second).toEqual(first);
  });
});
