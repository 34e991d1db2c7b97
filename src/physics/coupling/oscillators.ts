/**
 * Two tanks whose inductances are coupled, each kept going by a current that saturates: the circuit itself, integrated in
 * time, to judge the closed forms in `beat.ts` by.
 *
 *   L1·di1/dt + M·di2/dt + R1·i1 = v1        C1·dv1/dt = I1·tanh(v1/u1) − i1
 *   M·di1/dt + L2·di2/dt + R2·i2 = v2        C2·dv2/dt = I2·tanh(v2/u2) − i2
 *
 * with M = k·√(L1·L2), R = ωL/Q, ω = 1/√(LC); solved for di/dt exactly, |k| < 1. The current that keeps a tank going has
 * `EXCESS` times the small-signal conductance R·C/L that its losses need, and saturates where the fundamental of
 * I·tanh((A/u)·sin) feeds just those losses at the amplitude A that is asked for (first harmonic balance; harmonics put
 * the true amplitude within a few per cent of it for Q over 5). How a real unit limits its amplitude is not known here;
 * to first order the swing of the frequency does not depend on it.
 */
import { rungeKutta, type Flow } from '../numeric/runge-kutta';

export interface Oscillator {
  /** H, F. */
  readonly inductance: number;
  readonly capacitance: number;
  /** Of the inductance with its series resistance, at 1/(2π√(LC)). */
  readonly q: number;
  /** V, of the voltage over the tank. */
  readonly amplitude: number;
  /** Small-signal conductance of the feeding current over that of the losses, above 1; `EXCESS` if not given. */
  readonly excess?: number;
}

/** Common practice: enough to start surely, without squaring the current off. */
const EXCESS = 2;

/** (1/π)·∫₀²ᵖ tanh(x·sin φ)·sin φ dφ, by the trapezoidal rule, which converges exponentially over a period. */
const fundamentalOfTanh = (x: number): number => {
  const points = 96;
  let sum = 0;
  for (let n = 0; n < points; n++) {
    const sine = Math.sin((2 * Math.PI * (n + 0.5)) / points);
    sum += Math.tanh(x * sine) * sine;
  }
  return (2 * sum) / points;
};

/** Amplitude over u at which the current feeds just what is lost: excess·F(x) = x, by bisection. */
const saturationOf = (excess: number): number => {
  let low = 0;
  let high = (4 / Math.PI) * excess;
  for (let n = 0; n < 60; n++) {
    const middle = (low + high) / 2;
    if (excess * fundamentalOfTanh(middle) > middle) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

interface Feed {
  readonly resistance: number;
  /** A, and 1/V: I·tanh(v·steepness). */
  readonly current: number;
  readonly steepness: number;
}

const feedOf = ({ inductance, capacitance, q, amplitude, excess = EXCESS }: Oscillator): Feed => {
  const resistance = Math.sqrt(inductance / capacitance) / q;
  const conductance = (excess * resistance * capacitance) / inductance;
  const steepness = saturationOf(excess) / amplitude;
  return { resistance, current: conductance / steepness, steepness };
};

/** What stands where in the state: v1, i1, v2, i2. */
export const VOLTAGE_1 = 0;
export const VOLTAGE_2 = 2;

export const coupledFlow = (a: Oscillator, b: Oscillator, k: number): Flow => {
  const [feed1, feed2] = [feedOf(a), feedOf(b)];
  const { inductance: l1, capacitance: c1 } = a;
  const { inductance: l2, capacitance: c2 } = b;
  const mutual = k * Math.sqrt(l1 * l2);
  const determinant = l1 * l2 - mutual * mutual;
  const [own1, own2, cross] = [l2 / determinant, l1 / determinant, mutual / determinant];
  const { resistance: r1, current: most1, steepness: steep1 } = feed1;
  const { resistance: r2, current: most2, steepness: steep2 } = feed2;
  return {
    size: 4,
    slopeAt: (_, state, slope) => {
      const v1 = state[0]!;
      const i1 = state[1]!;
      const v2 = state[2]!;
      const i2 = state[3]!;
      const over1 = v1 - r1 * i1;
      const over2 = v2 - r2 * i2;
      slope[0] = (most1 * Math.tanh(v1 * steep1) - i1) / c1;
      slope[1] = own1 * over1 - cross * over2;
      slope[2] = (most2 * Math.tanh(v2 * steep2) - i2) / c2;
      slope[3] = own2 * over2 - cross * over1;
    }
  };
};

/** At full swing: the first at the top of its voltage, the second `phase` radians before its own. */
export const fullSwing = (a: Oscillator, b: Oscillator, phase = 0): Float64Array => {
  const current = ({ inductance, capacitance, amplitude }: Oscillator): number =>
    amplitude * Math.sqrt(capacitance / inductance);
  return Float64Array.of(a.amplitude, 0, b.amplitude * Math.cos(phase), -current(b) * Math.sin(phase));
};

export interface Run {
  /** Moves on by as many steps; calls `heard` after each with the time, the state and its slope. */
  readonly advance: (
    steps: number,
    heard: (time: number, state: Float64Array, slope: Float64Array) => void
  ) => void;
}

/** `step`, s; a fortieth of a cycle leaves 5·10⁻⁶ of the frequency, the same of both. */
export const startRun = (flow: Flow, state: Float64Array, step: number): Run => {
  const stepper = rungeKutta(flow);
  const slope = new Float64Array(flow.size);
  let taken = 0;
  return {
    advance: (steps, heard) => {
      for (let n = 0; n < steps; n++) {
        stepper(state, taken * step, step);
        taken++;
        flow.slopeAt(taken * step, state, slope);
        heard(taken * step, state, slope);
      }
    }
  };
};
