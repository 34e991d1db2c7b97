/** The electrical model of one drawn loop: what does not depend on frequency once, what does as functions. */
import { windingCapacitance } from '#physics/circuit/slot-capacitance';
import { externalInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { FEW_SIDES, filamentsOf, type Filaments } from '#physics/vehicle/flux';
import { dcResistancePerMetre, internalImpedance, proximityResistance } from '#physics/wire/round-wire';
import type { Wire } from '#plan/catalogue/wires';
import type { Loop } from '#plan/schema';
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

/** Null for a loop that cannot be wound: an impossible shape or an unknown wire. */
export const modelLoop = (loop: Loop, wire: Wire | undefined, key: number): LoopModel | null => {
  if (!wire || problemOf(loop.shape)) return null;
  const winding = windingOf(loop, { conductor: wire.conductorDiameter, insulated: wire.insulatedDiameter });
  return {
    key,
    drawn: drawnOf(loop, wire),
    wire,
    winding,
    filaments: filamentsOf(winding),
    roughFilaments: filamentsOf(winding, FEW_SIDES),
    external: externalInductance(winding),
    sawCut: pathOf(loop.shape).sawCut
  };
};

export interface LoopImpedance {
  /** Magnetic inductance with the internal part at this frequency, H. */
  readonly inductance: number;
  /** Skin and proximity effect, Ω. */
  readonly resistance: number;
}

export const impedanceOf = (
  { winding, external }: LoopModel,
  frequency: number,
  temperature: number
): LoopImpedance => {
  const { wireRadius, pitch, columns, wireLength } = winding;
  const internal = internalImpedance(wireRadius, frequency, temperature);
  const proximity = new Map<number, number>();
  for (const { wires } of columns)
    if (!proximity.has(wires))
      proximity.set(wires, proximityResistance(wireRadius, pitch, wires, frequency, temperature));
  return {
    inductance: external + internal.inductance * wireLength,
    resistance: columns.reduce(
      (sum, { length, wires }) => sum + length * proximity.get(wires)!,
      internal.resistance * wireLength
    )
  };
};

export const dcResistanceOf = ({ winding }: LoopModel, temperature: number): number =>
  dcResistancePerMetre(winding.wireRadius, temperature) * winding.wireLength;

/** At the loop's own ends, F. */
export const capacitanceOf = (model: LoopModel, loop: Loop, pavementPermittivity: number): number =>
  windingCapacitance(
    {
      conductorRadius: model.wire.conductorDiameter / 2,
      insulatedRadius: model.wire.insulatedDiameter / 2,
      insulationPermittivity: model.wire.insulationPermittivity,
      slotWidth: loop.slot.width,
      slotDepth: loop.slot.depth,
      fillPermittivity: loop.slot.relativePermittivity,
      pavementPermittivity
    },
    model.winding.wireLength,
    loop.turns
  );

/** From the road surface down to the top of the uppermost wire, metres; negative if the wires stand out of the slot. */
export const coverOf = (model: LoopModel): number =>
  -Math.max(...model.winding.runs.flatMap((run) => run.heights)) - model.wire.insulatedDiameter / 2;
