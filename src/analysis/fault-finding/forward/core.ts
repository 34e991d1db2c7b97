/** A circuit with all that predicting its figures takes: as designed, and with each input off by its tolerance. */
import { tolerancesOf } from '#plan/catalogue/tolerances';
import type { Circuit, Site } from '#plan/schema';
import type { Alone } from '../../electrical/alone';
import type { SolvedCircuit } from '../../electrical/circuit-model';
import { built, type CircuitInputKey } from '../../tolerance/disturb';
import { shiftsOf, toleranceOf, type ShiftedCircuit } from '../../tolerance/shifts';
import type { Means } from '../../means';
import type { Survey } from '../../survey';
import type { Steps } from '../../steps';
import { designOf, type Design, type Shared } from '../network/design';
import { createMaterials } from '../network/materials';
import { createMeter, givenCapacitance, type Meter, type MeterMeans, type Stood } from '../network/meter';
import { standingVehicle, type StandingVehicle } from '../network/places';
import type { SteelNear } from '../network/steel-near';
import { createTurnStore } from '../network/turn-store';
import { vehicleChanges, type Changes, type VehicleChanges } from '../network/vehicle';

/** The circuit with one input off. */
export interface Shifted {
  /** Of its tolerance; 0 where there is no room. */
  readonly share: number;
  readonly design: Design;
  readonly meter: Meter;
}

export interface ShiftedEnds {
  readonly input: CircuitInputKey | 'vehicleHeight';
  readonly below: Shifted;
  readonly above: Shifted;
}

export interface Core {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly survey: Survey;
  readonly solved: SolvedCircuit;
  readonly nominal: Shifted;
  readonly ends: readonly ShiftedEnds[];
  /** Those that can be asked for. */
  readonly vehicles: readonly string[];
  readonly standing: readonly StandingVehicle[];
  /** Ids of the other circuits that can be computed. */
  readonly others: readonly string[];
  /** Whoever wants bars under the loops brings them here before asking for them. */
  readonly bring: (steel: SteelNear) => void;
}

const unitOf = (site: Site, circuit: Circuit) => site.units.find(({ id }) => id === circuit.channel?.unit);

/** Of every circuit of a survey, as designed. */
const designsOf = (survey: Survey, shared: Shared): ((id: string) => Design | null) => {
  const known = new Map<string, Design | null>();
  return (id) => {
    const found = known.get(id);
    if (found !== undefined) return found;
    const surveyed = survey.circuits.get(id);
    const made = surveyed
      ? designOf(survey.site, surveyed.circuit, aloneOf(survey, surveyed.circuit, surveyed.solved), shared)
      : null;
    known.set(id, made);
    return made;
  };
};

/** The resistance is not taken from here. */
export const aloneOf = (survey: Survey, circuit: Circuit, solved: SolvedCircuit): Alone => ({
  solved,
  resistanceDc: 0,
  loops: new Map(circuit.strings.flat().map(({ loop }) => [loop, survey.modelled.get(loop)!]))
});

/** Null for a circuit that is not there or cannot be computed. */
export function* coreInSteps(
  site: Site,
  id: string,
  vehicles: readonly string[],
  { surveyor, bodies }: Means
): Steps<Core | null> {
  const survey = surveyor.survey(site);
  const surveyed = survey.circuits.get(id);
  if (!surveyed) return null;
  const { circuit, solved, loops } = surveyed;
  yield;
  const shifts = yield* shiftsOf(site, circuit, solved, {
    numberOf: surveyor.numberOf,
    steel: survey.means.steel
  });
  const shared: Shared = { materials: createMaterials(), turns: createTurnStore() };
  const otherCircuit = designsOf(survey, shared);
  const changes = new Map<string, VehicleChanges>();
  const standing: StandingVehicle[] = [];
  for (const each of vehicles) {
    const stands = standingVehicle(site, solved, loops, each, bodies);
    yield;
    if (!stands) continue;
    standing.push(stands);
    changes.set(each, vehicleChanges(solved, stands));
    yield;
  }
  let steelNear: SteelNear | null = null;
  const unit = unitOf(site, circuit);
  const tuned = circuit.channel?.frequency_Hz === null ? circuit.channel.frequencySetting : null;
  let capacitance: number | null = null;
  const meansWith = (vehicle: MeterMeans['vehicle']): MeterMeans => ({
    get steelNear() {
      return steelNear;
    },
    get capacitance() {
      return capacitance;
    },
    otherCircuit,
    vehicle,
    settings_F: unit?.settings_F ?? [],
    designedSetting: unit && tuned !== null && unit.settings_F[tuned - 1] !== undefined ? tuned : null,
    operatingFrequency: solved.frequency
  });
  const keptBy = (make: (each: VehicleChanges) => Changes): MeterMeans['vehicle'] => {
    const known = new Map<string, readonly Stood[]>();
    return (vehicle) => {
      const each = changes.get(vehicle);
      if (!each) return null;
      const found = known.get(vehicle) ?? make(each).map((added) => ({ vehicle, added }));
      known.set(vehicle, found);
      return found;
    };
  };
  const asDesigned = keptBy((each) => each.asDesigned);
  const design = designOf(site, circuit, shifts.nominal, shared);
  const nominal: Shifted = { share: 0, design, meter: createMeter(design, meansWith(asDesigned)) };
  if (unit && typeof circuit.channel?.frequency_Hz === 'number')
    capacitance = givenCapacitance(nominal.meter, {
      frequency: solved.frequency,
      temperature: site.temperature_C
    });

  const ends: ShiftedEnds[] = [];
  for (const { input, below, above } of shifts.pairs) {
    const tolerance = toleranceOf(site, input);
    const end = ({ share, alone, isMoved }: ShiftedCircuit): Shifted => {
      if (share === 0) return nominal;
      const amount = share * tolerance;
      const there = built(site, circuit, { [input]: amount });
      const difference =
        input === 'dimensions' ? { drawn: design } : { thicker: input === 'wirePitch' ? amount : 0 };
      const shifted = designOf(there.site, there.circuit, alone, shared, difference);
      const vehicle = isMoved ? keptBy((each) => each.on(alone.solved)) : asDesigned;
      return { share, design: shifted, meter: createMeter(shifted, meansWith(vehicle)) };
    };
    const low = end(below);
    yield;
    ends.push({ input, below: low, above: end(above) });
    yield;
  }
  const height = tolerancesOf(site).vehicleHeight_m;
  if (changes.size > 0 && height > 0) {
    const lifted = (by: number): Shifted => {
      const share = Math.max(...[...changes.values()].map((each) => Math.abs(each.roomFor(by))));
      const vehicle = keptBy((each) => each.lifted(by));
      return { share: Math.sign(by) * share, design, meter: createMeter(design, meansWith(vehicle)) };
    };
    const below = lifted(-height);
    yield;
    ends.push({ input: 'vehicleHeight', below, above: lifted(height) });
    yield;
  }
  return {
    ...{ site, circuit, survey, solved, nominal, ends, standing },
    vehicles: [...changes.keys()],
    others: [...survey.circuits.keys()].filter((other) => other !== id),
    bring: (steel) => (steelNear = steel)
  };
}
