/**
 * A circuit with turns of one of its loops shorted among themselves: its network with these turns as a ring that is coupled
 * with all the others, as field check puts faults into it. Undefined where nothing of the circuit is shorted.
 */
import type { Placement } from '#physics/field/filaments';
import type { Complex } from '#physics/numeric/complex';
import { complex } from '#physics/numeric/complex';
import type { VehicleBody } from '../electrical/bodies';
import { changeOf } from '../electrical/vehicle-effect';
import type { AskedFigure } from '../fault-finding/forward/contract';
import { aloneOf } from '../fault-finding/forward/core';
import { coilMatrix, windingsOf } from '../fault-finding/network/coils';
import { designOf, type Added, type Design, type Shared } from '../fault-finding/network/design';
import { stateWith } from '../fault-finding/network/faults';
import { createMaterials } from '../fault-finding/network/materials';
import { createMeter, givenCapacitance, type Meter, type MeterMeans } from '../fault-finding/network/meter';
import type { State } from '../fault-finding/network/state';
import { createTurnStore } from '../fault-finding/network/turn-store';
import type { Terminals } from '../results';
import type { SurveyedCircuit } from '../survey';
import type { Trial } from './trial';

export type ShortedTerminals = Terminals;

/** A contact of no resistance to speak of, Ω: the worst that a short can be. */
const CONTACT = 1e-6;
const VEHICLE = 'vehicle';

interface Network {
  readonly design: Design;
  readonly state: State;
  readonly meterWith: (added: Added | null) => Meter;
}

/** Materials and turns are kept by content: a drawing that is varied shares what was not touched. */
const shared: Shared = { materials: createMaterials(), turns: createTurnStore() };
const networks = new WeakMap<Trial, Map<string, Network>>();

export const networkOf = (trial: Trial, surveyed: SurveyedCircuit): Network | undefined => {
  const { shorted } = trial.experiment;
  const { circuit, solved, loops } = surveyed;
  if (!shorted || shorted.turns <= 0 || !loops.some(({ id }) => id === shorted.loop)) return undefined;
  const own = networks.get(trial) ?? new Map<string, Network>();
  networks.set(trial, own);
  const found = own.get(circuit.id);
  if (found) return found;
  const { site, survey } = trial;
  const design = designOf(site, circuit, aloneOf(survey, circuit, solved), shared);
  const state = stateWith(design, [
    {
      kind: 'shorted turns',
      subject: shorted.loop,
      values: { shortedTurns: shorted.turns, resistance_ohm: CONTACT }
    }
  ]);
  const unit = site.units.find(({ id }) => id === circuit.channel?.unit);
  const setting = circuit.channel?.frequency_Hz === null ? circuit.channel.frequencySetting : null;
  const isTuned = unit && setting !== null && unit.settings_F[setting - 1] !== undefined;
  const means = (capacitance: number | null, added: Added | null): MeterMeans => ({
    steelNear: null,
    otherCircuit: () => null,
    vehicle: () => added && [{ vehicle: VEHICLE, added }],
    settings_F: unit?.settings_F ?? [],
    designedSetting: isTuned ? setting : null,
    capacitance,
    operatingFrequency: solved.frequency
  });
  // a channel of a given frequency keeps the capacitance that this means, and runs on what the short leaves
  const capacitance =
    unit && typeof circuit.channel?.frequency_Hz === 'number'
      ? givenCapacitance(createMeter(design, means(null, null)), {
          frequency: solved.frequency,
          temperature: site.temperature_C
        })
      : null;
  const network = {
    design,
    state,
    meterWith: (added: Added | null) => createMeter(design, means(capacitance, added))
  };
  own.set(circuit.id, network);
  return network;
};

const atUnit = (quantity: AskedFigure['quantity'], vehicle: string | null = null): AskedFigure => ({
  ...{ quantity, vehicle, testPoint: 'unit', loop: null },
  ...{ meterFrequency_Hz: null, temperature_C: null, setting: null }
});

/** Null where the channel finds no frequency on what is left. */
export const shortedTerminals = (
  trial: Trial,
  surveyed: SurveyedCircuit
): ShortedTerminals | null | undefined => {
  const network = networkOf(trial, surveyed);
  if (!network) return undefined;
  const meter = network.meterWith(null);
  const read = (quantity: AskedFigure['quantity']): number => {
    const value = meter.read(network.state, atUnit(quantity));
    return typeof value === 'number' ? value : NaN;
  };
  const [inductance, q, direct] = [read('inductance_H'), read('q'), read('resistanceDc_ohm')];
  const running = read('frequency_Hz');
  const frequency = Number.isNaN(running) ? surveyed.solved.frequency : running;
  if (Number.isNaN(inductance)) return null;
  return {
    frequency_Hz: frequency,
    inductance_H: inductance,
    resistance_ohm: (2 * Math.PI * frequency * inductance) / q,
    q,
    resistanceDc_ohm: direct
  };
};

/** Of the loop by itself at the frequency at which its circuit runs with the short; at that of the sound one for none. */
export const shortedLoop = (
  trial: Trial,
  loop: string
): { readonly inductance: number; readonly resistance: number } | null => {
  const surveyed = [...trial.survey.circuits.values()].find(({ loops }) =>
    loops.some(({ id }) => id === loop)
  );
  const network = surveyed && networkOf(trial, surveyed);
  if (!network) return null;
  const { design, state } = network;
  const frequency = shortedTerminals(trial, surveyed)?.frequency_Hz ?? surveyed.solved.frequency;
  const point = { frequency, temperature: trial.site.temperature_C };
  const added = design.steelAt ? [design.steelAt(frequency)] : [];
  const { z, stride } = coilMatrix(design, state, windingsOf(design, state), point, added);
  const k = design.loops.findIndex(({ id }) => id === loop);
  const at = 2 * (k * stride + k);
  return { inductance: z[at + 1]! / (2 * Math.PI * frequency), resistance: z[at]! };
};

/** ΔL/L of a vehicle at a place; null where the channel finds no frequency. */
export const shortedResponse = (
  trial: Trial,
  surveyed: SurveyedCircuit,
  body: VehicleBody,
  place: Placement
): number | null | undefined => {
  const network = networkOf(trial, surveyed);
  if (!network) return undefined;
  const change = changeOf(surveyed.solved, body, place);
  const added: Added = (i, j): Complex => {
    const value = change[i]![j]!;
    return typeof value === 'number' ? complex(value) : value;
  };
  const value = network.meterWith(added).read(network.state, atUnit('deltaLOverL', VEHICLE));
  return typeof value === 'number' ? value : null;
};
