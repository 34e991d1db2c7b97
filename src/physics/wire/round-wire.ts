/**
 * Impedance per metre of a round wire, most often of copper.
 *
 * Skin effect: Z' = (ρ/πa²)·(ka/2)·J0(ka)/J1(ka), k = (1−j)/δ, δ = √(2ρ/ωµ0) — the exact solution for a straight round
 * wire far from others (Ramo, Whinnery & Van Duzer, *Fields and Waves*; tabulated in NBS Circular 74). Time factor e^{+jωt}.
 * Proximity: loss of the same wire in a uniform transverse field of peak value H,
 * P' = ωµ0πa²·|Im(J2(ka)/J0(ka))|·H², which tends to πσω²µ0²a⁴H²/8 at low frequency.
 * Copper: 1.7241·10⁻⁸ Ω·m and 0.00393 /K at 20 °C (IEC 60028 annealed copper).
 */
import { MU0 } from '../constants';
import { besselRatio } from '../numeric/bessel-ratio';
import { complex, divide, multiply, scale, type Complex } from '../numeric/complex';

const RESISTIVITY_20 = 1.7241e-8;
const COEFFICIENT_20 = 0.00393;

/** Resistivity of copper, Ω·m, at a temperature in °C. */
export const copperResistivity = (temperature: number): number =>
  RESISTIVITY_20 * (1 + COEFFICIENT_20 * (temperature - 20));

/** DC resistance per metre, Ω/m, of a wire of radius `a` metres. */
export const dcResistancePerMetre = (a: number, temperature: number): number =>
  copperResistivity(temperature) / (Math.PI * a * a);

/** ka of a wire of radius `a`, metres; resistivity in Ω·m. */
const argument = (a: number, frequency: number, resistivity: number, relativePermeability = 1): Complex => {
  const skinDepth = Math.sqrt(resistivity / (Math.PI * frequency * MU0 * relativePermeability));
  return complex(a / skinDepth, -a / skinDepth);
};

export interface InternalImpedance {
  /** Ω/m */
  readonly resistance: number;
  /** Internal inductance, H/m; µ0/8π at low frequency. */
  readonly inductance: number;
}

/** Radius over skin depth from which on the first terms of the asymptotic series are good to 1e-7; the fraction is slow there. */
const THIN_SKIN = 1_000;

/** Skin effect alone, at `frequency` hertz > 0, of a wire of any metal; resistivity in Ω·m. */
export const roundConductorImpedance = (
  a: number,
  frequency: number,
  resistivity: number,
  relativePermeability: number
): InternalImpedance => {
  const ka = argument(a, frequency, resistivity, relativePermeability);
  const ratio =
    ka.re > THIN_SKIN
      ? complex(ka.re / 2 + 0.25, ka.re / 2)
      : multiply(scale(ka, 0.5), divide(complex(1), besselRatio(1, ka)));
  const dc = resistivity / (Math.PI * a * a);
  return { resistance: dc * ratio.re, inductance: (dc * ratio.im) / (2 * Math.PI * frequency) };
};

/** Of copper. */
export const internalImpedance = (a: number, frequency: number, temperature: number): InternalImpedance =>
  roundConductorImpedance(a, frequency, copperResistivity(temperature), 1);

/** Loss in W/m of a wire in a uniform transverse field of peak value 1 A/m. */
export const transverseFieldLoss = (a: number, frequency: number, temperature: number): number => {
  const ka = argument(a, frequency, copperResistivity(temperature));
  const ratio = multiply(besselRatio(2, ka), besselRatio(1, ka));
  return 2 * Math.PI * frequency * MU0 * Math.PI * a * a * Math.abs(ratio.im);
};

/**
 * Proximity resistance in Ω per metre of slot, summed over a column of `count` wires at `pitch` metres that all carry
 * the same current in the same direction. The field of the others is taken as that of line currents.
 */
export const proximityResistance = (
  a: number,
  pitch: number,
  count: number,
  frequency: number,
  temperature: number
): number => {
  let fieldSquares = 0;
  for (let i = 0; i < count; i++) {
    let field = 0;
    for (let j = 0; j < count; j++) if (j !== i) field += 1 / (2 * Math.PI * pitch * (j - i));
    fieldSquares += field * field;
  }
  return 2 * transverseFieldLoss(a, frequency, temperature) * fieldSquares;
};
