/** The findings of a drawing as far as they are asked for: the same parts, put together by the same rules, as in an assessment. */
import { ROUGHEST, roughnessOf } from '#physics/vehicle/roughness';
import type { Site } from '#plan/schema';
import { experimentOn } from '#plan/variables/index';
import { coupleCircuits } from '../beating/couple';
import { canRunTogether, ratePair } from '../beating/rate';
import { deepestOf } from '../beating/tank';
import { tanksOf } from '../beating/tanks';
import type { CallSummary } from '../calls/results';
import { callSimulatorOf } from '../calls/simulate';
import { findingsOf } from '../findings/index';
import type { Means } from '../means';
import { vehiclesInPlay } from '../passing/in-play';
import { passReadoutsInSteps } from '../passing/pass-readouts';
import { neighbourResponses, vehicleResponses } from '../passing/responses';
import type { PassReadout } from '../passing/results';
import type { Assessment, Beat, CircuitReadout, Finding, SteelCost, VehicleResponse } from '../results';
import type { Steps } from '../steps';
import { steelCost } from '../steel-cost';
import type { SurveyedCircuit } from '../survey';
import { trialsOf, type Trial } from '../sweep/trial';
import type { Needs } from './needs';

export interface Judged {
  readonly result: Omit<Assessment, 'findings'>;
  readonly findings: readonly Finding[];
}

export interface Judge {
  readonly judge: (site: Site, needs: Needs) => Steps<Judged>;
}

const isAsked = ({ vehicles }: Needs, id: string): boolean => vehicles === null || vehicles.has(id);

export const createJudge = (means: Means): Judge => {
  const trials = trialsOf(means);
  const calls = callSimulatorOf(means);

  /** A vehicle a step: over steel one takes a while. */
  function* wantedResponses(
    trial: Trial,
    { circuit, solved, loops }: SurveyedCircuit,
    needs: Needs
  ): Steps<readonly VehicleResponse[]> {
    const passMeans = trial.passMeans(trial.survey.circuits.get(circuit.id)!);
    const made: VehicleResponse[] = [];
    for (const id of new Set(circuit.detect)) {
      const vehicle = isAsked(needs, id) ? trial.vehicle(id) : undefined;
      if (!vehicle) continue;
      made.push(...vehicleResponses(circuit, solved, loops, trial.site, passMeans, [vehicle]));
      yield;
    }
    return made;
  }

  /** Without the depth at which the steel would cost little: only advice needs it. */
  function* steelOf(
    trial: Trial,
    surveyed: SurveyedCircuit,
    responses: CircuitReadout['responses'],
    needs: Needs
  ): Steps<SteelCost | null> {
    if (!surveyed.solved.steel) return null;
    const bareTrial = trials.of(experimentOn({ ...trial.site, steel: [] }));
    const bare = bareTrial.survey.circuits.get(surveyed.circuit.id)!;
    yield;
    const bareResponses = yield* wantedResponses(bareTrial, bare, needs);
    const { survey } = trial;
    return yield* steelCost({ survey, surveyed, bare, responses, bareResponses, vehicle: null });
  }

  function* circuitOf(trial: Trial, surveyed: SurveyedCircuit, needs: Needs): Steps<CircuitReadout> {
    const { circuit, readout, solved, loops } = surveyed;
    const own = new Set(loops.map(({ id }) => id));
    const responses = needs.wanted.has(circuit.id) ? yield* wantedResponses(trial, surveyed, needs) : [];
    const neighbours = needs.neighbours.has(circuit.id)
      ? neighbourResponses(solved, loops, trial.site, trial.passMeans(surveyed))
      : [];
    yield;
    return {
      ...readout,
      id: circuit.id,
      selfResonance_Hz: Math.min(
        ...trial.survey.loops.filter(({ id }) => own.has(id)).map(({ selfResonance_Hz }) => selfResonance_Hz)
      ),
      ...{ isFollowing: false, responses, neighbours, ranges: null, classes: null },
      steel: needs.steel.has(circuit.id) ? yield* steelOf(trial, surveyed, responses, needs) : null
    };
  }

  function* beatsOf(trial: Trial, { beats }: Needs): Steps<readonly Beat[]> {
    const { site, survey } = trial;
    const circuits = new Map([...survey.circuits].filter(([id]) => beats.has(id)));
    for (const surveyed of circuits.values()) {
      trial.responses(surveyed);
      yield;
    }
    const tanks = tanksOf({ site, circuits }, (id) => deepestOf(trial.responses(circuits.get(id)!)));
    return tanks.flatMap((a, i) =>
      tanks
        .slice(i + 1)
        .filter((b) => canRunTogether(a, b))
        .map((b): Beat => {
          const coupling = coupleCircuits(a, b, site, survey.means);
          const rating = ratePair(a, b, coupling);
          return { a: a.circuit.id, b: b.circuit.id, coupling, ...rating, remedies: null };
        })
    );
  }

  function* callsOf(site: Site): Steps<readonly CallSummary[] | null> {
    if (!site.traffic) return null;
    const picture = yield* calls.simulate(site, {});
    return picture?.channels.map(({ summary }) => summary) ?? [];
  }

  function* judge(site: Site, needs: Needs): Steps<Judged> {
    const trial = trials.of(experimentOn(site));
    const { survey } = trial;
    yield;
    const circuits: CircuitReadout[] = [];
    const passes: PassReadout[] = [];
    for (const surveyed of survey.circuits.values()) {
      circuits.push(yield* circuitOf(trial, surveyed, needs));
      if (!needs.paths.has(surveyed.circuit.id)) continue;
      const { id } = surveyed.circuit;
      const made = yield* passReadoutsInSteps(surveyed, site, (vehicle) =>
        isAsked(needs, vehicle.id) ? trial.bodyOf(vehicle) : null
      );
      passes.push(...made.map((pass) => ({ ...pass, circuit: id })));
    }
    const beyondModel: string[] = [];
    for (const vehicle of needs.isMeshed ? vehiclesInPlay(site) : []) {
      if (roughnessOf(trial.bodyOf(vehicle).fine) > ROUGHEST) beyondModel.push(vehicle.id);
      yield;
    }
    const result = {
      ...{ pending: false, isFollowed: false, loops: survey.loops, couplings: [], circuits },
      ...{ beyondModel, probes: [], channels: [], weakerBeats: 0 },
      beats: needs.beats.size > 0 ? yield* beatsOf(trial, needs) : [],
      ...{ passes, detectionHeights: null, quantities: null },
      calls: needs.hasTraffic ? yield* callsOf(site) : null
    };
    return { result, findings: findingsOf(site, result) };
  }

  return { judge };
};
