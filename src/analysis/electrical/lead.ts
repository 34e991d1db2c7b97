/** Tail and lead-in of a circuit as lines at one frequency. */
import { dcResistancePerMetre } from '#physics/wire/round-wire';
import { lineChain, twistedPair, type Chain, type LineConstants } from '#physics/circuit/line';
import { cableOf, isBuiltIn, USUAL_DIELECTRIC, type LeadInCable } from '#plan/catalogue/cables';
import type { Wire } from '#plan/catalogue/wires';
import type { Circuit, Site } from '#plan/schema';

/** The tail is the loop's own wire, its two ends twisted together: insulation against insulation. */
export const tailConstants = (wire: Wire, frequency: number, temperature: number): LineConstants =>
  twistedPair(
    wire.insulatedDiameter,
    wire.conductorDiameter,
    wire.insulationPermittivity,
    frequency,
    temperature
  );

export const tailChain = (wire: Wire, length: number, frequency: number, temperature: number): Chain =>
  lineChain(tailConstants(wire, frequency, temperature), length, frequency);

/**
 * Constants of a cable. A built-in one follows from its geometry at the operating frequency and temperature; of a user's
 * own what is stated is taken as it stands and the rest follows from the geometry. Its dielectric counts as polyethylene
 * where the file does not say.
 */
export const cableConstants = (cable: LeadInCable, frequency: number, temperature: number): LineConstants => {
  const { conductorDiameter: diameter, spacing, relativePermittivity = USUAL_DIELECTRIC } = cable;
  const computed =
    diameter !== undefined && spacing !== undefined
      ? twistedPair(spacing, diameter, relativePermittivity, frequency, temperature)
      : null;
  const stated: Partial<LeadInCable> = isBuiltIn(cable) ? {} : cable;
  return {
    resistance: stated.resistancePerMetre_ohm ?? computed?.resistance ?? 0,
    inductance: stated.inductancePerMetre_H ?? computed?.inductance ?? 0,
    capacitance: cable.capacitancePerMetre_F ?? computed?.capacitance ?? 0
  };
};

/** Direct-current resistance of go and return, Ω/m. A stated resistance holds as it stands. */
export const leadInDcPerMetre = (cable: LeadInCable, temperature: number): number => {
  const { conductorDiameter: diameter } = cable;
  if (!isBuiltIn(cable) && cable.resistancePerMetre_ohm !== undefined) return cable.resistancePerMetre_ohm;
  return diameter === undefined ? 0 : 2 * dcResistancePerMetre(diameter / 2, temperature);
};

/** The cables of a lead-in from the pull box to the cabinet. */
export const cablesInRow = (
  { leadIn }: Circuit,
  site: Pick<Site, 'cables'>
): readonly { readonly cable: LeadInCable; readonly length: number }[] =>
  [leadIn, ...(leadIn.further ?? [])].flatMap(({ cable: id, length }) => {
    const cable = cableOf(id, site);
    return cable && length > 0 ? [{ cable, length }] : [];
  });

export const leadInChains = (
  circuit: Circuit,
  site: Pick<Site, 'cables' | 'temperature_C'>,
  frequency: number
): Chain[] =>
  cablesInRow(circuit, site).map(({ cable, length }) =>
    lineChain(cableConstants(cable, frequency, site.temperature_C), length, frequency)
  );

/** Go and return of the lead-in at direct current, Ω. */
export const leadInDcResistance = (circuit: Circuit, site: Pick<Site, 'cables' | 'temperature_C'>): number =>
  cablesInRow(circuit, site).reduce(
    (sum, { cable, length }) => sum + leadInDcPerMetre(cable, site.temperature_C) * length,
    0
  );
