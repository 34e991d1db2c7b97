/** Tail and lead-in of a circuit as lines at one frequency. */
import { copperResistivity } from '#physics/wire/round-wire';
import { lineChain, twistedPair, type Chain, type LineConstants } from '#physics/circuit/line';
import { cableOf, type LeadInCable } from '#plan/catalogue/cables';
import type { Wire } from '#plan/catalogue/wires';
import type { Circuit, Site } from '#plan/schema';

/** The tail is the loop's own wire, its two ends twisted together: insulation against insulation. */
export const tailChain = (wire: Wire, length: number, frequency: number, temperature: number): Chain =>
  lineChain(
    twistedPair(
      wire.insulatedDiameter,
      wire.conductorDiameter,
      wire.insulationPermittivity,
      frequency,
      temperature
    ),
    length,
    frequency
  );

const leadInConstants = (cable: LeadInCable, frequency: number, temperature: number): LineConstants => {
  const capacitance = cable.capacitancePerMetre_F;
  const { conductorDiameter, spacing } = cable;
  // a user's own cable states its resistance and inductance at the operating frequency
  if (conductorDiameter === undefined || spacing === undefined)
    return {
      resistance: cable.resistancePerMetre_ohm,
      inductance: cable.inductancePerMetre_H,
      capacitance
    };
  return { ...twistedPair(spacing, conductorDiameter, 1, frequency, temperature), capacitance };
};

export const leadInChains = (
  { leadIn }: Circuit,
  site: Pick<Site, 'cables' | 'temperature_C'>,
  frequency: number
): Chain[] => {
  const cable = cableOf(leadIn.cable, site);
  if (!cable || leadIn.length === 0) return [];
  return [lineChain(leadInConstants(cable, frequency, site.temperature_C), leadIn.length, frequency)];
};

/** Go and return of the lead-in at direct current, Ω. */
export const leadInDcResistance = (
  { leadIn }: Circuit,
  site: Pick<Site, 'cables' | 'temperature_C'>
): number => {
  const cable = cableOf(leadIn.cable, site);
  if (!cable) return 0;
  const own = cable.conductorDiameter === undefined;
  const warming = own ? 1 : copperResistivity(site.temperature_C) / copperResistivity(20);
  return cable.resistancePerMetre_ohm * leadIn.length * warming;
};
