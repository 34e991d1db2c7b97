/** The electrical model of one drawn loop: what does not depend on frequency once, what does as functions. */
import { groundLossCoefficient } from '#physics/circuit/ground-loss';
import { windingLeakage, type WindingLeakage } from '#physics/circuit/slot-capacitance';
import { externalInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { FEW_SIDES, filamentsOf, type Filaments } from '#physics/field/filaments';
import { dcResistancePerMetre, internalImpedance, proximityResistance } from '#physics/wire/round-wire';
import type { Wire } from '#plan/catalogue/wires';
import type { Loop, Site } from '#plan/schema';
import { pathOf, problemOf } from '#plan/shapes/index';
import { windingOf } from './winding-of';

export interface LoopModel {
  /** Number of this geometry, the same for equal loops: the key of every pair's cache. */
  readonly key: number;
  /** The text that the number stands for. */
  readonly drawn: string;
  readonly wire: Wire;
  readonly winding: Winding;
  /** For the field at a vehicle. */
  readonly filaments: Filaments;
  /** The same with round loops more roughly, for searching. */
  readonly roughFilaments: Filaments;
  /** H, of the field outside the copper. */
  readonly external: number;
  readonly sawCut: number;
}

/** What a loop's geometry follows from, as one text. */
export const drawnOf = ({ shape, turns, slot }: Loop, wire: Wire | undefined): string =>
  JSON.stringify([
    shape,
    turns,
    slot,
    wire && [wire.conductorDiameter, wire.insulatedDiameter, wire.insulationPermittivity]
  ]);

/**
 * Null for a loop that cannot be wound: an impossible shape or an unknown wire. `inductanceOf`: for whoever keeps the
 * inductances of windings, H, of the field outside the copper.
 */
export const modelLoop = (
  loop: Loop,
  wire: Wire | undefined,
  key: number,
  inductanceOf: (winding: Winding) => number = externalInductance
): LoopModel | null => {
  if (!wire || problemOf(loop.shape)) return null;
  const winding = windingOf(loop, { conductor: wire.conductorDiameter, insulated: wire.insulatedDiameter });
  return {
    key,
    drawn: drawnOf(loop, wire),
    wire,
    winding,
    filaments: filamentsOf(winding),
    roughFilaments: filamentsOf(winding, FEW_SIDES),
    external: inductanceOf(winding),
    sawCut: pathOf(loop.shape).sawCut
  };
};

/** What the loop loses by itself, Ω in series. */
export interface LoopResistances {
  readonly copper: number;
  /** What skin and proximity effect add to the copper's direct-current resistance. */
  readonly skin: number;
  readonly proximity: number;
  /** Currents in a pavement that conducts. */
  readonly pavement: number;
  /** The user's own figure. */
  readonly added: number;
}

export interface LoopImpedance {
  /** Magnetic inductance with the internal part at this frequency, H; without steel. */
  readonly inductance: number;
  readonly resistances: LoopResistances;
  /** Their sum, Ω. */
  readonly resistance: number;
}

/** Under what the loop lies: what its figures depend on beside its geometry. */
export interface Conditions {
  readonly temperature: number;
  readonly pavementPermittivity: number;
  /** S/m */
  readonly pavementConductivity: number;
}

export const conditionsOf = ({
  temperature_C,
  pavement
}: Pick<Site, 'temperature_C' | 'pavement'>): Conditions => ({
  temperature: temperature_C,
  pavementPermittivity: pavement.relativePermittivity,
  pavementConductivity: pavement.conductivity_S_m ?? 0
});

const groundLosses = new WeakMap<LoopModel, number>();

/** Of the pavement's losses per its conductivity and the square of the frequency, Ω·m/S/Hz²; found once for a model. */
export const groundLossOf = (model: LoopModel): number => {
  const known = groundLosses.get(model) ?? groundLossCoefficient(model.roughFilaments);
  groundLosses.set(model, known);
  return known;
};

export const impedanceOf = (
  model: LoopModel,
  frequency: number,
  { temperature, pavementConductivity }: Conditions,
  added = 0
): LoopImpedance => {
  const { winding, external } = model;
  const { wireRadius, pitch, columns, wireLength } = winding;
  const internal = internalImpedance(wireRadius, frequency, temperature);
  const proximity = new Map<number, number>();
  for (const { wires } of columns)
    if (!proximity.has(wires))
      proximity.set(wires, proximityResistance(wireRadius, pitch, wires, frequency, temperature));
  const copper = dcResistanceOf(model, temperature);
  const resistances = {
    copper,
    skin: internal.resistance * wireLength - copper,
    proximity: columns.reduce((sum, { length, wires }) => sum + length * proximity.get(wires)!, 0),
    pavement:
      pavementConductivity === 0 ? 0 : pavementConductivity * frequency * frequency * groundLossOf(model),
    added
  };
  return {
    inductance: external + internal.inductance * wireLength,
    resistances,
    resistance: Object.values(resistances).reduce((sum, value) => sum + value, 0)
  };
};

export const dcResistanceOf = ({ winding }: LoopModel, temperature: number): number =>
  dcResistancePerMetre(winding.wireRadius, temperature) * winding.wireLength;

/** At the loop's own ends. */
export const leakageOf = (
  model: LoopModel,
  { slot, turns }: Loop,
  frequency: number,
  { pavementPermittivity, pavementConductivity }: Conditions
): WindingLeakage =>
  windingLeakage(
    {
      conductorRadius: model.wire.conductorDiameter / 2,
      insulatedRadius: model.wire.insulatedDiameter / 2,
      insulationPermittivity: model.wire.insulationPermittivity,
      slotWidth: slot.width,
      slotDepth: slot.depth,
      fillPermittivity: slot.relativePermittivity,
      pavementPermittivity,
      pavementConductivity
    },
    model.winding.wireLength,
    turns,
    frequency
  );

/** From the road surface down to the top of the uppermost wire, metres; negative if the wires stand out of the slot. */
export const coverOf = (model: LoopModel): number =>
  -Math.max(...model.winding.runs.flatMap((run) => run.heights)) - model.wire.insulatedDiameter / 2;
