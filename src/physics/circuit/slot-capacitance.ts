/**
 * Capacitance of a loop's winding in its slot.
 *
 * Turn to turn: two round wires side by side, C' = πε0εr/acosh(D/d) per metre, each gap carrying 1/N of the voltage:
 * C'·P·(N−1)/N² seen at the ends (P one turn's length). To the ground: the wire in coaxial layers of insulation, slot fill
 * out to half the slot width, and pavement out to the slot's depth; the voltage falls linearly along the winding, so a
 * third of the total counts. An engineering estimate: layers are not round, wires of a column screen one another, and
 * the pavement's permittivity is poorly known. A pavement that conducts (wet, salted) is a dielectric with a complex
 * permittivity: it raises the capacitance towards that of insulation and fill alone, and loses power.
 */
import { EPSILON0 } from '../constants';
import { add, complex, divide } from '../numeric/complex';

export interface SlotDielectric {
  readonly conductorRadius: number;
  readonly insulatedRadius: number;
  readonly insulationPermittivity: number;
  readonly slotWidth: number;
  readonly slotDepth: number;
  readonly fillPermittivity: number;
  readonly pavementPermittivity: number;
  /** S/m; 0 for a pavement that does not conduct. */
  readonly pavementConductivity: number;
}

/** Between two neighbouring wires, F/m. Distances between axes `D` > conductor diameter `d`, metres. */
export const pairCapacitancePerMetre = (D: number, d: number, relativePermittivity: number): number =>
  (Math.PI * EPSILON0 * relativePermittivity) / Math.acosh(D / d);

/** What lies across a pair of ends: siemens and farads, in parallel. */
export interface Leakage {
  readonly capacitance: number;
  readonly conductance: number;
}

/**
 * One wire to the ground around the slot, F/m and S/m, at `frequency`. The pavement has the complex permittivity
 * εr − jσ/(ωε0). A wire wider than the slot counts as filling it.
 */
export const groundLeakagePerMetre = (slot: SlotDielectric, frequency: number): Leakage => {
  const omega = 2 * Math.PI * frequency;
  const wall = Math.max(slot.slotWidth / 2, slot.insulatedRadius);
  const far = Math.max(slot.slotDepth, wall * 1.01);
  const inside =
    Math.log(slot.insulatedRadius / slot.conductorRadius) / slot.insulationPermittivity +
    Math.log(wall / slot.insulatedRadius) / slot.fillPermittivity;
  const pavement = complex(slot.pavementPermittivity, -slot.pavementConductivity / (omega * EPSILON0));
  const elastance = add(complex(inside), divide(complex(Math.log(far / wall)), pavement));
  const { re, im } = divide(complex(2 * Math.PI * EPSILON0), elastance);
  return { capacitance: re, conductance: -omega * im + 0 };
};

/** Effective values at the ends of a loop: between its turns, and to the ground. */
export interface WindingLeakage {
  /** F */
  readonly turns: number;
  readonly ground: Leakage;
}

/** `wireLength` metres in `turns` turns, at `frequency`. */
export const windingLeakage = (
  slot: SlotDielectric,
  wireLength: number,
  turns: number,
  frequency: number
): WindingLeakage => {
  const between = pairCapacitancePerMetre(
    2 * slot.insulatedRadius,
    2 * slot.conductorRadius,
    slot.insulationPermittivity
  );
  const { capacitance, conductance } = groundLeakagePerMetre(slot, frequency);
  return {
    turns: (between * wireLength * (turns - 1)) / turns ** 3,
    ground: { capacitance: (capacitance * wireLength) / 3, conductance: (conductance * wireLength) / 3 }
  };
};

/** Frequency, Hz, at which an inductance of L henries resonates with C farads. */
export const resonance = (L: number, C: number): number => 1 / (2 * Math.PI * Math.sqrt(L * C));

/** Inductance, H, that a bridge reads on L henries with C farads across it: L/(1 − ω²LC). */
export const apparentInductance = (L: number, C: number, frequency: number): number =>
  L / (1 - (2 * Math.PI * frequency) ** 2 * L * C);
