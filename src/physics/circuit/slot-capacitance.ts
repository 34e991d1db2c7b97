/**
 * Capacitance of a loop's winding in its slot.
 *
 * Turn to turn: two round wires side by side, C' = πε0εr/acosh(D/d) per metre, each gap carrying 1/N of the voltage:
 * C'·P·(N−1)/N² seen at the ends (P one turn's length). To the ground: the wire in coaxial layers of insulation, slot fill
 * out to half the slot width, and pavement out to the slot's depth; the voltage falls linearly along the winding, so a
 * third of the total counts. An engineering estimate: layers are not round, wires of a column screen one another, and
 * the pavement's permittivity is poorly known.
 */
import { EPSILON0 } from '../constants';

export interface SlotDielectric {
  readonly conductorRadius: number;
  readonly insulatedRadius: number;
  readonly insulationPermittivity: number;
  readonly slotWidth: number;
  readonly slotDepth: number;
  readonly fillPermittivity: number;
  readonly pavementPermittivity: number;
}

/** Between two neighbouring wires, F/m. Distances between axes `D` > conductor diameter `d`, metres. */
export const pairCapacitancePerMetre = (D: number, d: number, relativePermittivity: number): number =>
  (Math.PI * EPSILON0 * relativePermittivity) / Math.acosh(D / d);

/** One wire to the ground around the slot, F/m. A wire wider than the slot counts as filling it. */
export const groundCapacitancePerMetre = (slot: SlotDielectric): number => {
  const wall = Math.max(slot.slotWidth / 2, slot.insulatedRadius);
  const far = Math.max(slot.slotDepth, wall * 1.01);
  const elastance =
    Math.log(slot.insulatedRadius / slot.conductorRadius) / slot.insulationPermittivity +
    Math.log(wall / slot.insulatedRadius) / slot.fillPermittivity +
    Math.log(far / wall) / slot.pavementPermittivity;
  return (2 * Math.PI * EPSILON0) / elastance;
};

/** Effective capacitance at the ends of a loop, F: `wireLength` metres in `turns` turns. */
export const windingCapacitance = (slot: SlotDielectric, wireLength: number, turns: number): number => {
  const between = pairCapacitancePerMetre(
    2 * slot.insulatedRadius,
    2 * slot.conductorRadius,
    slot.insulationPermittivity
  );
  return (
    (between * wireLength * (turns - 1)) / turns ** 3 + (groundCapacitancePerMetre(slot) * wireLength) / 3
  );
};

/** Frequency, Hz, at which an inductance of L henries resonates with C farads. */
export const resonance = (L: number, C: number): number => 1 / (2 * Math.PI * Math.sqrt(L * C));
