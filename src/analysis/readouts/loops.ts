/** What a loop is by itself, at its circuit's frequency. */
import { apparentInductance, resonance } from '#physics/circuit/slot-capacitance';
import type { Complex } from '#physics/numeric/complex';
import { pavementOf } from '#plan/catalogue/pavements';
import type { Site } from '#plan/schema';
import type { ModelledLoop } from '../electrical/circuit-input';
import { conditionsOf, coverOf, impedanceOf, leakageOf } from '../electrical/loop-model';
import type { LoopReadout } from '../results';

/** The pavement's permittivity dry and wet; as stated for a material that the catalogue does not know. */
export const permittivities = ({ pavement }: Pick<Site, 'pavement'>): readonly [number, number] =>
  pavementOf(pavement.material)?.range ?? [pavement.relativePermittivity, pavement.relativePermittivity];

/** `steel`: what steel adds to the loop's inductance, H; its imaginary part is a loss. */
export const loopReadout = (
  { loop, model }: ModelledLoop,
  site: Site,
  frequency: number,
  steel: Complex
): LoopReadout => {
  const conditions = conditionsOf(site);
  const impedance = impedanceOf(model, frequency, conditions, loop.addedResistance_ohm);
  const inductance = impedance.inductance + steel.re;
  const omega = 2 * Math.PI * frequency;
  const leakage = (pavementPermittivity: number) =>
    leakageOf(model, loop, frequency, { ...conditions, pavementPermittivity });
  const capacitanceAt = (permittivity: number): number => {
    const { turns, ground } = leakage(permittivity);
    return turns + ground.capacitance;
  };
  const { turns, ground } = leakage(conditions.pavementPermittivity);
  const capacitance = turns + ground.capacitance;
  const [dry, wet] = permittivities(site).map(capacitanceAt) as [number, number];
  const { copper, skin, proximity, pavement, added } = impedance.resistances;
  return {
    id: loop.id,
    frequency_Hz: frequency,
    inductance_H: inductance,
    resistanceDc_ohm: copper,
    resistanceAc_ohm: impedance.resistance - omega * steel.im,
    capacitance_F: capacitance,
    selfResonance_Hz: resonance(inductance, capacitance),
    apparentInductance_H: apparentInductance(inductance, capacitance, frequency),
    turnCapacitance_F: turns,
    groundCapacitance_F: ground.capacitance,
    capacitanceRange_F: { dry, wet },
    apparentInductanceRange_H: {
      dry: apparentInductance(inductance, dry, frequency),
      wet: apparentInductance(inductance, wet, frequency)
    },
    selfResonanceRange_Hz: { dry: resonance(inductance, dry), wet: resonance(inductance, wet) },
    losses: {
      copperDc_ohm: copper,
      skin_ohm: skin,
      proximity_ohm: proximity,
      // a conductance across an inductance is, in series, G·(ωL)² ohms
      pavement_ohm: pavement + ground.conductance * (omega * inductance) ** 2,
      steel_ohm: -omega * steel.im,
      added_ohm: added
    },
    steelInductance_H: steel.re,
    wireLength_m: model.winding.wireLength,
    slotLength_m: model.sawCut,
    cover_m: coverOf(model)
  };
};
