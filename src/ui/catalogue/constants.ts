/** A cable's constants per length as people write them, which depends on the display system. */
import { cableConstants } from '#analysis/electrical/lead';
import { BOUNDS } from '#plan/bounds';
import type { LeadInCable } from '#plan/catalogue/cables';
import type { Cable, DisplayUnits } from '#plan/schema';
import { FOOT } from '#units/constants';

/** Hertz at which the constants are shown; the solver computes them at the circuit's own frequency. */
const SHOWN_AT = 50e3;

export interface CableConstant {
  readonly key: 'resistancePerMetre_ohm' | 'inductancePerMetre_H' | 'capacitancePerMetre_F';
  readonly name: 'resistance' | 'inductance' | 'capacitance';
  readonly bounds: { readonly min: number; readonly max: number };
  /** What is written is so many times the figure per metre in SI. */
  readonly scale: Readonly<Record<DisplayUnits, number>>;
}

export const CABLE_CONSTANTS: readonly CableConstant[] = [
  {
    key: 'resistancePerMetre_ohm',
    name: 'resistance',
    bounds: BOUNDS.resistancePerMetre,
    scale: { metric: 1e3, imperial: 1000 * FOOT }
  },
  {
    key: 'inductancePerMetre_H',
    name: 'inductance',
    bounds: BOUNDS.inductancePerMetre,
    scale: { metric: 1e6, imperial: 1e6 * 100 * FOOT }
  },
  {
    key: 'capacitancePerMetre_F',
    name: 'capacitance',
    bounds: BOUNDS.capacitancePerMetre,
    scale: { metric: 1e12, imperial: 1e12 * FOOT }
  }
];

/** What follows from the cable's conductors alone, per metre in SI; null where it has no geometry. */
export function computedConstant(cable: Cable, { name }: CableConstant, temperature: number): number | null {
  if (cable.conductorDiameter === undefined || cable.spacing === undefined) return null;
  const { id, conductorDiameter, spacing, relativePermittivity } = cable;
  const bare: LeadInCable = {
    id,
    name: '',
    conductorDiameter,
    spacing,
    ...(relativePermittivity === undefined ? {} : { relativePermittivity })
  };
  return cableConstants(bare, SHOWN_AT, temperature)[name];
}
