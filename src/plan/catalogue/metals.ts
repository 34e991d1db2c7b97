/**
 * Reinforcing bars and covers where the file does not say. Mild steel: resistivity about 1.7·10⁻⁷ Ω·m; a relative
 * permeability of 100 at the small fields here is an assumption (40 to 400 occur). Only the losses depend on it.
 */
import type { Steel } from '../schema';

export interface Metal {
  /** Ω·m */
  readonly resistivity: number;
  readonly relativePermeability: number;
}

export const MILD_STEEL: Metal = { resistivity: 1.7e-7, relativePermeability: 100 };

export const metalOf = ({ resistivity_ohm_m, relativePermeability }: Steel): Metal => ({
  resistivity: resistivity_ohm_m ?? MILD_STEEL.resistivity,
  relativePermeability: relativePermeability ?? MILD_STEEL.relativePermeability
});
