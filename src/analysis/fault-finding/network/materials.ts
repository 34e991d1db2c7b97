/** Wires and cables at any frequency and temperature, each computed once. */
import type { LineConstants } from '#physics/circuit/line';
import { internalImpedance, transverseFieldLoss } from '#physics/wire/round-wire';
import type { LeadInCable } from '#plan/catalogue/cables';
import type { Wire } from '#plan/catalogue/wires';
import { cableConstants, tailConstants } from '../../electrical/lead';
import { interpolated, type OfFrequency } from './interpolated';

interface WireAt {
  /** Internal impedance, Ω/m and H/m. */
  readonly resistance: number;
  readonly inductance: number;
  /** Loss in a transverse field of peak value 1 A/m, W/m. */
  readonly loss: number;
}

export interface Materials {
  wire(wire: Wire, frequency: number, temperature: number): WireAt;
  tail(wire: Wire, frequency: number, temperature: number): LineConstants;
  cable(cable: LeadInCable, frequency: number, temperature: number): LineConstants;
}

/** By whatever is looked up, then by temperature: that of a site's few readings. */
const store = <T extends object>(make: (what: T, temperature: number) => OfFrequency) => {
  const kept = new WeakMap<T, Map<number, OfFrequency>>();
  return (what: T, temperature: number): OfFrequency => {
    const known = kept.get(what) ?? new Map<number, OfFrequency>();
    kept.set(what, known);
    const found = known.get(temperature);
    if (found) return found;
    const made = make(what, temperature);
    known.set(temperature, made);
    return made;
  };
};

const flat = ({ resistance, inductance, capacitance }: LineConstants): readonly number[] => [
  resistance,
  inductance,
  capacitance
];

const asLine = ([resistance, inductance, capacitance]: readonly number[]): LineConstants => ({
  resistance: resistance!,
  inductance: inductance!,
  capacitance: capacitance!
});

export const createMaterials = (): Materials => {
  const wires = store<Wire>(({ conductorDiameter }, temperature) =>
    interpolated((frequency) => {
      const { resistance, inductance } = internalImpedance(conductorDiameter / 2, frequency, temperature);
      return [resistance, inductance, transverseFieldLoss(conductorDiameter / 2, frequency, temperature)];
    })
  );
  const tails = store<Wire>((wire, temperature) =>
    interpolated((frequency) => flat(tailConstants(wire, frequency, temperature)))
  );
  const cables = store<LeadInCable>((cable, temperature) =>
    interpolated((frequency) => flat(cableConstants(cable, frequency, temperature)))
  );
  return {
    wire: (wire, frequency, temperature) => {
      const [resistance, inductance, loss] = wires(wire, temperature)(frequency);
      return { resistance: resistance!, inductance: inductance!, loss: loss! };
    },
    tail: (wire, frequency, temperature) => asLine(tails(wire, temperature)(frequency)),
    cable: (cable, frequency, temperature) => asLine(cables(cable, temperature)(frequency))
  };
};
