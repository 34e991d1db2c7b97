/**
 * Steel that lies still near a loop: a set of currents with inductances L, resistances R = z·G and fluxes Φ per ampere of
 * the loop. The induced currents are −(L + s·G)⁻¹·Φ, s = z/(jω), and the loops' inductances change by
 * ΔM_ij = −Φᵢᵀ(L + s·G)⁻¹Φⱼ: a complex figure whose imaginary part is a loss (any text on coupled circuits).
 */
import type { Dipoles } from '../field/dipoles';
import type { Filaments } from '../field/filaments';
import type { CholeskyFactor } from '../numeric/cholesky';
import type { Complex } from '../numeric/complex';

export interface Screen {
  readonly size: number;
  /** Of L. */
  readonly factor: CholeskyFactor;
  /** G·x. */
  resist(x: Float64Array): Float64Array;
  /** Φ, webers per ampere in the wires. */
  fluxOf(filaments: Filaments): Float64Array;
  /** s at a frequency: the metal's impedance over jω. */
  ratioAt(frequency: number): Complex;
  /** The currents (A per ampere of the loop, in phase and a quarter period ahead) as dipoles on the plan. */
  dipolesOf(inPhase: Float64Array, ahead: Float64Array): Dipoles;
}
