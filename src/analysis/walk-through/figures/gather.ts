/** Everything that one complaint's way needs to know of the site, in steps: vehicles are made ready and driven. */
import type { Circuit, Site } from '#plan/schema';
import { beatScene, type BeatScene } from '../../beating/scene';
import { mutualOf } from '../../beating/rate';
import type { Alone } from '../../electrical/alone';
import { solveCircuit } from '../../electrical/circuit-model';
import { leadInDcResistance, cablesInRow } from '../../electrical/lead';
import { conditionsOf } from '../../fault-finding/conditions';
import type { Means } from '../../means';
import { createPassKeeper, type PassKeeper, type Passes } from '../../passes';
import { detectionHeightsInSteps, REFERENCE_VEHICLE } from '../../passing/detection-height';
import { vehiclesInPlay } from '../../passing/in-play';
import { passReadoutsInSteps } from '../../passing/pass-readouts';
import { servedLines } from '../../passing/paths';
import { readyVehicles } from '../../ready';
import type { Steps } from '../../steps';
import type { SurveyedCircuit } from '../../survey';
import { rangeIn } from '../../tolerance/ranges';
import { shiftsOf } from '../../tolerance/shifts';
import { USUAL_METER_FREQUENCY } from '#plan/catalogue/instruments';
import { builtInVehicles } from '#plan/catalogue/vehicles';
import type { Need } from '../node';
import { gateDistance, instrumentsLastUsed, lastRead } from './drawn';
import type { OwnBeat, PickUp, Span, WalkFigures } from './figures';
import { insulationLimitOf, spanOf } from './spans';

export interface Gathered extends WalkFigures {
  /** Null where no beats were asked for. */
  readonly scene: BeatScene | null;
}

/** Passes are kept from one question to the next. */
const keepers = new WeakMap<Means, PassKeeper>();
const keeperOf = (means: Means): PassKeeper => {
  const known = keepers.get(means);
  if (known) return known;
  const made = createPassKeeper(means.surveyor);
  keepers.set(means, made);
  return made;
};

const strongestFirst = <T extends { readonly ratio: number }>(list: readonly T[]): readonly T[] =>
  [...list].sort((a, b) => b.ratio - a.ratio);

const beatsOn = ({ id }: Circuit, { pairs }: BeatScene): readonly OwnBeat[] =>
  strongestFirst(
    pairs.flatMap(({ pair }) => {
      if (pair.a !== id && pair.b !== id) return [];
      const mutual = Math.abs(mutualOf(pair.coupling));
      return [
        {
          other: pair.a === id ? pair.b : pair.a,
          ratio: pair.sides[pair.a === id ? 0 : 1].ratio,
          separation_Hz: pair.separation_Hz,
          conduitShare: mutual > 0 ? Math.min(1, pair.coupling.conduits_H / mutual) : 0
        }
      ];
    })
  );

const pickUpsOn = ({ circuit }: SurveyedCircuit, { neighbours }: Passes): readonly PickUp[] => {
  const threshold = circuit.channel?.tripThreshold;
  if (threshold === undefined) return [];
  return neighbours.map(({ lane, vehicle, deltaLOverL }) => ({
    circuit: circuit.id,
    lane,
    vehicle,
    response: -deltaLOverL,
    ratio: -deltaLOverL / threshold
  }));
};

/** `instruments`: in hand today; none: those with which the circuit was read last. Null for a circuit that is not there or cannot be computed. */
export function* figuresInSteps(
  site: Site,
  id: string,
  needs: readonly Need[],
  means: Means,
  instruments: readonly string[] = []
): Steps<Gathered | null> {
  const { surveyor, bodies } = means;
  const survey = surveyor.survey(site);
  const own = survey.circuits.get(id);
  if (!own) return null;
  yield;
  for (const vehicle of vehiclesInPlay(site))
    if (!bodies.has(vehicle)) {
      bodies.get(vehicle);
      yield;
    }
  const ready = readyVehicles(site, bodies);
  const keeper = keeperOf(means);
  const driven = new Map<string, Passes>();
  for (const [other, surveyed] of survey.circuits)
    if (other === id || needs.includes('beats')) {
      driven.set(other, keeper.passesOver(surveyed, survey, ready, true));
      yield;
    }
  const scene = needs.includes('beats')
    ? beatScene(survey, (each) => driven.get(each)?.responses ?? [])
    : null;
  yield;
  const bodyOf = ready.bodyOf;
  const shifts = yield* shiftsOf(site, own.circuit, own.solved, {
    numberOf: surveyor.numberOf,
    steel: survey.means.steel
  });
  const plate = builtInVehicles.find((each) => each.id === REFERENCE_VEHICLE)!;
  const passes = needs.includes('passes')
    ? yield* passReadoutsInSteps(own, site, (vehicle) => bodyOf(vehicle) ?? bodies.get(vehicle))
    : [];
  const heights = needs.includes('heights')
    ? yield* detectionHeightsInSteps(own, site, bodies.get(plate))
    : [];
  const { circuit, readout } = own;
  const inHand = [...(instruments.length > 0 ? instruments : instrumentsLastUsed(site, id))];
  const meterFrequency =
    conditionsOf(site, { instruments: inHand }).meterFrequency_Hz ?? USUAL_METER_FREQUENCY;
  const span = (quantity: keyof WalkFigures['expected'], figure: (alone: Alone) => number): Span =>
    spanOf(figure(shifts.nominal), rangeIn(shifts, figure), quantity, { site, instruments: inHand });
  return {
    site,
    circuit,
    channel: circuit.channel,
    unit: site.units.find((each) => each.id === circuit.channel?.unit) ?? null,
    terminals: readout,
    expected: {
      resistanceDc_ohm: span('resistanceDc_ohm', ({ resistanceDc }) => resistanceDc),
      // of a meter, which does not measure at the unit's frequency
      inductance_H: span(
        'inductance_H',
        ({ solved }) => solveCircuit({ ...solved.input, frequency: meterFrequency }).inductance
      ),
      frequency_Hz: span('frequency_Hz', ({ solved }) => solved.frequency)
    },
    meterFrequency_Hz: meterFrequency,
    leadIn: {
      length: cablesInRow(circuit, site).reduce((sum, { length }) => sum + length, 0),
      resistance_ohm: leadInDcResistance(circuit, site)
    },
    insulationLimit_ohm: insulationLimitOf(site),
    responses: driven.get(id)?.responses ?? [],
    pickUps: strongestFirst(
      [...driven].flatMap(([other, each]) => pickUpsOn(survey.circuits.get(other)!, each))
    ),
    beats: scene ? beatsOn(circuit, scene) : [],
    remedies: [],
    frequencies: new Map(scene?.tanks.map((tank) => [tank.circuit.id, tank.sweep.rest_Hz]) ?? []),
    lanes: new Map(
      [...survey.circuits].map(([other, { loops }]) => [
        other,
        [...new Set(servedLines(loops, site).flatMap(({ lane }) => (lane ? [lane.id] : [])))]
      ])
    ),
    passes,
    heights,
    gateDistance: gateDistance(site, own.loops),
    lastRead: (testPoint, quantity) => lastRead(site, id, testPoint, quantity),
    scene
  };
}
