/**
 * Round copper wires: the textbook's Bessel functions by their power series (Abramowitz and Stegun 9.1.10). Good to 1e-9 up
 * to |x| = 15, which is 14 AWG at some 500 kHz.
 */
import { c, over, times, type C } from './nodal';

const MU0 = 4e-7 * Math.PI;
export const EPSILON0 = 8.8541878128e-12;
/** Ω·m at 20 °C and per kelvin: annealed copper, IEC 60028. */
const RHO_20 = 1.7241e-8;
const ALPHA_20 = 0.00393;
const TERMS = 80;

/** J of a whole order n ≥ 0. */
const bessel = (n: number, x: C): C => {
  const half = c(x.re / 2, x.im / 2);
  let term = c(1);
  for (let k = 1; k <= n; k++) term = times(term, c(half.re / k, half.im / k));
  const square = times(half, half);
  let sum = term;
  for (let k = 1; k < TERMS; k++) {
    const factor = -1 / (k * (k + n));
    term = times(term, c(square.re * factor, square.im * factor));
    sum = c(sum.re + term.re, sum.im + term.im);
  }
  return sum;
};

const resistivity = (temperature: number): number => RHO_20 * (1 + ALPHA_20 * (temperature - 20));

export const dcPerMetre = (radius: number, temperature: number): number =>
  resistivity(temperature) / (Math.PI * radius * radius);

/** (1 − j)·a/δ */
const argument = (radius: number, omega: number, temperature: number): C => {
  const delta = Math.sqrt((2 * resistivity(temperature)) / (omega * MU0));
  return c(radius / delta, -radius / delta);
};

/** Of a straight wire alone: Ω/m, H/m within the copper. */
export const skin = (
  radius: number,
  omega: number,
  temperature: number
): { readonly resistance: number; readonly inductance: number } => {
  const ka = argument(radius, omega, temperature);
  const ratio = over(times(ka, bessel(0, ka)), bessel(1, ka));
  const dc = dcPerMetre(radius, temperature);
  return { resistance: (dc * ratio.re) / 2, inductance: (dc * ratio.im) / (2 * omega) };
};

/** Watts a metre in a transverse field of 1 A/m peak. */
export const transverseLoss = (radius: number, omega: number, temperature: number): number => {
  const ka = argument(radius, omega, temperature);
  return omega * MU0 * Math.PI * radius * radius * Math.abs(over(bessel(2, ka), bessel(0, ka)).im);
};

/** Of two insulated wires twisted, `spacing` between their axes: the two-wire line with skin effect. */
export const pairOf = (
  spacing: number,
  diameter: number,
  relativePermittivity: number,
  omega: number,
  temperature: number
): { readonly resistance: number; readonly inductance: number; readonly capacitance: number } => {
  const reach = Math.acosh(spacing / diameter);
  const own = skin(diameter / 2, omega, temperature);
  return {
    resistance: 2 * own.resistance,
    inductance: (MU0 / Math.PI) * reach + 2 * own.inductance,
    capacitance: (Math.PI * EPSILON0 * relativePermittivity) / reach
  };
};
