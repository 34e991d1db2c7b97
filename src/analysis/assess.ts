/**
 * The one entry: a drawing in, everything that follows from it out. Results are kept by content, so that a second call
 * recomputes what the edit touched: the edited loop, its pairs, its circuit, and the vehicles' passes over that circuit.
 */
import { mutualInductance } from '#physics/inductance/loop';
import { resonance } from '#physics/circuit/slot-capacitance';
import { vehicleOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import { wireOf } from '#plan/catalogue/wires';
import type { Circuit, Loop, Site } from '#plan/schema';
import { createBodyStore } from './electrical/bodies';
import { circuitDcResistance, circuitInput, circuitKey, type ModelledLoop } from './electrical/circuit-input';
import { ASSUMED_FREQUENCY, solveCircuit, type SolvedCircuit } from './electrical/circuit-model';
import {
  capacitanceOf,
  coverOf,
  dcResistanceOf,
  drawnOf,
  impedanceOf,
  modelLoop,
  type LoopModel
} from './electrical/loop-model';
import { findingsOf } from './findings/index';
import { vehiclesInPlay } from './passing/in-play';
import { neighbourResponses, vehicleResponses } from './passing/responses';
import type { Strongest } from './passing/strongest';
import { beatOf, canRunTogether, type BeatSide } from './readouts/beats';
import { createFluxCache, probeReadout } from './readouts/probes';
import { RecentCache } from './recent-cache';
import type {
  Assessment,
  Beat,
  CircuitReadout,
  Coupling,
  LoopReadout,
  NeighbourResponse,
  VehicleResponse
} from './results';
import { quantitiesOf } from './takeoff/quantities';

export interface Assessor {
  /**
   * 'all' prepares every vehicle first and takes its fine mesh for every loop (reports, tests); 'prepared' answers at
   * once with the vehicles that are ready, says `pending` if some are missing, and serves loops far from a placed
   * vehicle with its quick mesh (the page).
   */
  assess(site: Site, vehicles?: 'all' | 'prepared'): Assessment;
  /** Prepares one more vehicle of the site; false when all are ready. */
  prepareNext(site: Site): boolean;
}

interface Passes {
  readonly responses: readonly VehicleResponse[];
  readonly neighbours: readonly NeighbourResponse[];
}

/** More numbers than a session can use up; two of them make one exact number. */
const KEYS = 2 ** 26;

export const createAssessor = (): Assessor => {
  const bodies = createBodyStore();
  const keys = new RecentCache<string, number>(5_000);
  let nextKey = 1;
  const models = new RecentCache<number, LoopModel | null>(5_000);
  const mutuals = new RecentCache<number, number>(200_000);
  const solutions = new RecentCache<string, SolvedCircuit>(2_000);
  const fluxes = createFluxCache();
  const readouts = new RecentCache<string, LoopReadout>(5_000);
  const passes = new RecentCache<string, readonly Strongest[]>(20_000);
  const answers = new RecentCache<string, Passes>(2_000);

  /** Equal texts have equal numbers. */
  const numberOf = (text: string): number => keys.get(text, () => nextKey++);

  const modelOf = (loop: Loop, site: Site): LoopModel | null => {
    const wire = wireOf(loop.wire, site);
    const key = numberOf(drawnOf(loop, wire));
    return models.get(key, () => modelLoop(loop, wire, key));
  };

  /** The order of the two decides the last digits of a sum, so the drawing alone decides the order. */
  const mutual = (a: LoopModel, b: LoopModel): number =>
    a.drawn <= b.drawn
      ? mutuals.get(a.key * KEYS + b.key, () => mutualInductance(a.winding, b.winding))
      : mutual(b, a);

  const assess = (site: Site, which: 'all' | 'prepared' = 'all'): Assessment => {
    if (which === 'all') while (prepareNext(site));
    const vehicles = vehiclesInPlay(site);
    const ready = new Map(
      vehicles.flatMap((vehicle) => (bodies.has(vehicle) ? [[vehicle.id, bodies.get(vehicle)] as const] : []))
    );
    const bodyOf = ({ id }: CatalogueVehicle) => ready.get(id) ?? null;
    const lanes = numberOf(JSON.stringify(site.lanes));
    const traffic = numberOf(JSON.stringify([site.vehicles, [...ready.keys()]]));
    const modelled = new Map<string, ModelledLoop>();
    for (const loop of site.loops) {
      const model = modelOf(loop, site);
      if (model) modelled.set(loop.id, { loop, model });
    }
    const solved = new Map<string, SolvedCircuit>();
    const responses = new Map<string, Passes>();
    for (const circuit of site.circuits) {
      const input = circuitInput(circuit, site, modelled, mutual);
      if (!input) continue;
      const key = circuitKey(circuit, site, modelled);
      const solution = solutions.get(key, () => solveCircuit(input));
      solved.set(circuit.id, solution);
      const loops = loopsOf(circuit).map((id) => modelled.get(id)!.loop);
      const context = `${numberOf(key)} ${lanes}`;
      const means = {
        bodyOf,
        remember: (what: string, make: () => readonly Strongest[]) => passes.get(`${context} ${what}`, make)
      };
      const asked = JSON.stringify([circuit.channel?.tripThreshold, circuit.detect]);
      responses.set(
        circuit.id,
        answers.get(`${context} ${traffic} ${asked}`, () => ({
          responses: vehicleResponses(circuit, solution, loops, site, means),
          neighbours: neighbourResponses(solution, loops, site, means)
        }))
      );
    }
    const frequencies = new Map(
      site.circuits.flatMap((circuit) =>
        loopsOf(circuit).map((id) => [id, solved.get(circuit.id)?.frequency ?? ASSUMED_FREQUENCY] as const)
      )
    );
    const loops = [...modelled.values()].map((each) => {
      const frequency = frequencies.get(each.loop.id) ?? ASSUMED_FREQUENCY;
      const conditions = [frequency, site.temperature_C, site.pavement.relativePermittivity];
      const known = readouts.get(`${each.model.key} ${conditions.join(' ')}`, () =>
        loopReadout(each, site, frequency)
      );
      return { ...known, id: each.loop.id };
    });
    const circuits = site.circuits.flatMap((circuit) => {
      const solution = solved.get(circuit.id);
      return solution
        ? [circuitReadout(circuit, solution, site, modelled, loops, responses.get(circuit.id)!)]
        : [];
    });
    const beats = beatsOf(site, solved, responses, (a, b) =>
      mutual(modelled.get(a)!.model, modelled.get(b)!.model)
    );
    const result = {
      pending: ready.size < vehicles.length,
      loops,
      couplings: couplingsOf(loops, modelled, mutual),
      circuits,
      probes: site.probes.flatMap((probe) => {
        const vehicle = vehicleOf(probe.vehicle, site);
        const body = vehicle && bodyOf(vehicle);
        return vehicle && body
          ? [probeReadout(probe, vehicle, body, site, solved, modelled, fluxes, which === 'all')]
          : [];
      }),
      beats,
      quantities: quantitiesOf([...modelled.values()], site.circuits)
    };
    return { ...result, findings: findingsOf(site, result) };
  };

  const prepareNext = (site: Site): boolean => {
    const missing = vehiclesInPlay(site).find((vehicle) => !bodies.has(vehicle));
    if (missing) bodies.get(missing);
    return missing !== undefined;
  };

  return { assess, prepareNext };
};

const loopsOf = (circuit: Circuit): readonly string[] =>
  circuit.strings.flatMap((string) => string.map(({ loop }) => loop));

const loopReadout = ({ loop, model }: ModelledLoop, site: Site, frequency: number): LoopReadout => {
  const { inductance, resistance } = impedanceOf(model, frequency, site.temperature_C);
  const capacitance = capacitanceOf(model, loop, site.pavement.relativePermittivity);
  return {
    id: loop.id,
    frequency_Hz: frequency,
    inductance_H: inductance,
    resistanceDc_ohm: dcResistanceOf(model, site.temperature_C),
    resistanceAc_ohm: resistance,
    capacitance_F: capacitance,
    selfResonance_Hz: resonance(inductance, capacitance),
    wireLength_m: model.winding.wireLength,
    slotLength_m: model.sawCut,
    cover_m: coverOf(model)
  };
};

const circuitReadout = (
  circuit: Circuit,
  solved: SolvedCircuit,
  site: Site,
  modelled: ReadonlyMap<string, ModelledLoop>,
  loops: readonly LoopReadout[],
  passes: Passes
): CircuitReadout => {
  const own = new Set(loopsOf(circuit));
  return {
    id: circuit.id,
    frequency_Hz: solved.frequency,
    frequencyFrom: solved.frequencyFrom,
    inductance_H: solved.inductance,
    resistance_ohm: solved.resistance,
    q: solved.q,
    resistanceDc_ohm: circuitDcResistance(circuit, site, modelled),
    selfResonance_Hz: Math.min(
      ...loops.filter(({ id }) => own.has(id)).map(({ selfResonance_Hz }) => selfResonance_Hz)
    ),
    ...passes
  };
};

const couplingsOf = (
  loops: readonly LoopReadout[],
  modelled: ReadonlyMap<string, ModelledLoop>,
  mutual: (a: LoopModel, b: LoopModel) => number
): Coupling[] =>
  loops.flatMap((a, i) =>
    loops.slice(i + 1).map((b) => {
      const value = mutual(modelled.get(a.id)!.model, modelled.get(b.id)!.model);
      return { a: a.id, b: b.id, mutual_H: value, k: value / Math.sqrt(a.inductance_H * b.inductance_H) };
    })
  );

const beatsOf = (
  site: Site,
  solved: ReadonlyMap<string, SolvedCircuit>,
  passes: ReadonlyMap<string, Passes>,
  mutual: (a: string, b: string) => number
): Beat[] => {
  const sides = site.circuits.flatMap((circuit): BeatSide[] => {
    const unit = site.units.find(({ id }) => id === circuit.channel?.unit);
    const solution = solved.get(circuit.id);
    if (!circuit.channel || !unit || !solution || !(solution.inductance > 0)) return [];
    const answers = passes.get(circuit.id)!.responses;
    const deepest = Math.min(0, ...answers.map(({ best }) => best));
    return [{ circuit, channel: circuit.channel, unit, solved: solution, deepest }];
  });
  return sides.flatMap((a, i) =>
    sides
      .slice(i + 1)
      .filter((b) => canRunTogether(a, b))
      .map((b) => {
        let sum = 0;
        a.solved.input.loops.forEach((loop, m) =>
          b.solved.input.loops.forEach((other, n) => {
            sum += a.solved.shares[m]! * b.solved.shares[n]! * mutual(loop.id, other.id);
          })
        );
        return beatOf(a, b, sum);
      })
  );
};
