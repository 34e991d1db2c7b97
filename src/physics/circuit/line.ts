/**
 * Tail and lead-in: uniform transmission lines as chain matrices,
 * V₁ = A·V₂ + B·I₂, I₁ = C·V₂ + D·I₂, with γ = √(Z'·Y') and Z0 = √(Z'/Y') (any text on transmission lines).
 */
import { MU0 } from '../constants';
import {
  add,
  complex,
  divide,
  hyperbolicCosine,
  hyperbolicSine,
  multiply,
  ONE,
  squareRoot,
  ZERO,
  type Complex
} from '../numeric/complex';
import { internalImpedance } from '../wire/round-wire';
import { pairCapacitancePerMetre } from './slot-capacitance';

/** Go and return together, per metre of run, at one frequency. Ω/m, H/m, F/m. */
export interface LineConstants {
  readonly resistance: number;
  readonly inductance: number;
  readonly capacitance: number;
}

export interface Chain {
  readonly a: Complex;
  readonly b: Complex;
  readonly c: Complex;
  readonly d: Complex;
  /** Of a line, (R' + jωL')·l: what is left of it without its capacitance, Ω. */
  readonly series?: Complex;
}

export const THROUGH: Chain = { a: ONE, b: ZERO, c: ZERO, d: ONE };

/** Nothing comes back from the far end of a line with more loss than this, and e to a larger power overflows. */
const MOST_NEPERS = 100;

/** A line of `length` metres at `frequency` hertz. */
export const lineChain = (line: LineConstants, length: number, frequency: number): Chain => {
  if (length === 0) return THROUGH;
  const omega = 2 * Math.PI * frequency;
  const series = complex(line.resistance * length, omega * line.inductance * length);
  const shunt = complex(0, omega * line.capacitance * length);
  const square = multiply(series, shunt);
  const root = squareRoot(square);
  const gamma = complex(Math.min(root.re, MOST_NEPERS), root.im);
  const cosine = hyperbolicCosine(gamma);
  // sinh(γ)/γ stays finite for a line without capacitance, where it is 1
  const ratio = root.re === 0 && root.im === 0 ? ONE : divide(hyperbolicSine(gamma), root);
  return { a: cosine, b: multiply(series, ratio), c: multiply(shunt, ratio), d: cosine, series };
};

/** Impedance at the near end of `chain` with `load` at the far end. */
export const inputImpedance = (chain: Chain, load: Complex): Complex =>
  divide(add(multiply(chain.a, load), chain.b), add(multiply(chain.c, load), chain.d));

/**
 * Constants of a twisted pair of insulated round wires: L' = (µ0/π)·acosh(D/d) plus the internal part of both wires,
 * R' of both wires with skin effect, C' of the pair. `spacing` D between axes and `diameter` d of the conductor in metres.
 * Proximity effect within the pair is left out: under 10 % of R' at D/d ≥ 2.
 */
export const twistedPair = (
  spacing: number,
  diameter: number,
  relativePermittivity: number,
  frequency: number,
  temperature: number
): LineConstants => {
  const internal = internalImpedance(diameter / 2, frequency, temperature);
  return {
    resistance: 2 * internal.resistance,
    inductance: (MU0 / Math.PI) * Math.acosh(spacing / diameter) + 2 * internal.inductance,
    capacitance: pairCapacitancePerMetre(spacing, diameter, relativePermittivity)
  };
};

/** A capacitance, F, with a conductance, S, across the wires, as a chain element. */
export const shuntCapacitance = (farads: number, frequency: number, conductance = 0): Chain => ({
  ...THROUGH,
  c: complex(conductance, 2 * Math.PI * frequency * farads)
});
