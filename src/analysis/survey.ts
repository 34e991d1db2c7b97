/**
 * A drawing modelled and solved, with everything that does not need a vehicle. Results are kept by content, not by
 * identity: a second drawing recomputes what the edit touched, the edited loop, its pairs and its circuit.
 */
import { mutualInductance } from '#physics/inductance/loop';
import { complex, type Complex } from '#physics/numeric/complex';
import { wireOf } from '#plan/catalogue/wires';
import type { Circuit, Loop, Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { circuitKey, type CircuitMeans, type ModelledLoop } from './electrical/circuit-input';
import { ASSUMED_FREQUENCY, type SolvedCircuit } from './electrical/circuit-model';
import { drawnOf, modelLoop, type LoopModel } from './electrical/loop-model';
import { createSteelStore, type SteelStore } from './electrical/steel';
import { studyCircuit, type StudiedCircuit } from './readouts/circuits';
import { loopReadout } from './readouts/loops';
import { RecentCache } from './recent-cache';
import type { LoopReadout } from './results';

/** One circuit of the drawing, solved. */
export interface SurveyedCircuit extends StudiedCircuit {
  readonly circuit: Circuit;
  readonly loops: readonly Loop[];
  /** Equal for circuits that answer alike wherever they stand in the document. */
  readonly key: number;
}

export interface Survey {
  readonly site: Site;
  readonly modelled: ReadonlyMap<string, ModelledLoop>;
  /** Those that can be wound, by id. */
  readonly circuits: ReadonlyMap<string, SurveyedCircuit>;
  readonly loops: readonly LoopReadout[];
  readonly means: SurveyMeans;
}

export interface SurveyMeans extends CircuitMeans {
  readonly steelBetween: SteelStore['between'];
}

export interface Surveyor {
  readonly survey: (site: Site) => Survey;
  /** Equal texts have equal numbers. */
  readonly numberOf: (text: string) => number;
}

/** More numbers than a session can use up; two of them make one exact number. */
const KEYS = 2 ** 26;

export const createSurveyor = (): Surveyor => {
  const keys = new RecentCache<string, number>(5_000);
  let nextKey = 1;
  const models = new RecentCache<number, LoopModel | null>(5_000);
  const mutuals = new RecentCache<number, number>(200_000);
  const studies = new RecentCache<number, StudiedCircuit | null>(2_000);
  const readouts = new RecentCache<string, LoopReadout>(5_000);
  const steel = createSteelStore();
  const surveys = new WeakMap<Site, Survey>();

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

  const means: SurveyMeans = {
    mutual,
    steel: (loops, site) => (site.steel.length === 0 ? null : steel.matrixFor(loops, site)),
    steelBetween: (a, b, site, frequency) =>
      site.steel.length === 0 ? 0 : steel.between(a, b, site, frequency)
  };

  const surveyed = (site: Site): Survey => {
    const modelled = new Map<string, ModelledLoop>();
    for (const loop of site.loops) {
      const model = modelOf(loop, site);
      if (model) modelled.set(loop.id, { loop, model });
    }
    const circuits = new Map<string, SurveyedCircuit>();
    for (const circuit of site.circuits) {
      const loops = loopsIn(circuit).map((id) => modelled.get(id)?.loop);
      const key = numberOf(circuitKey(circuit, site, modelled, (model) => steel.near(model, site)));
      const study = studies.get(key, () => studyCircuit(circuit, site, modelled, means));
      if (study) circuits.set(circuit.id, { ...study, circuit, loops: loops.map((loop) => loop!), key });
    }
    const places = new Map<
      string,
      { readonly solved: SolvedCircuit; readonly at: number; readonly key: number }
    >();
    for (const { solved, key } of circuits.values())
      solved.input.loops.forEach(({ id }, at) => places.set(id, { solved, at, key }));
    const conditions = JSON.stringify([site.temperature_C, site.pavement]);
    const alone = ({ model }: ModelledLoop): Complex =>
      means.steel([model], site)?.at(ASSUMED_FREQUENCY)[0]![0] ?? complex(0);
    const loops = [...modelled.values()].map((each) => {
      const place = places.get(each.loop.id);
      const frequency = place?.solved.frequency ?? ASSUMED_FREQUENCY;
      const under = place ? place.key : steel.near(each.model, site);
      const key = `${each.model.key} ${each.loop.addedResistance_ohm ?? 0} ${frequency} ${conditions} ${under}`;
      const known = readouts.get(key, () =>
        loopReadout(each, site, frequency, place ? place.solved.steelOf(place.at) : alone(each))
      );
      return { ...known, id: each.loop.id };
    });
    return { site, modelled, circuits, loops, means };
  };

  return {
    numberOf,
    survey: (site) => {
      const known = surveys.get(site);
      if (known) return known;
      const made = surveyed(site);
      surveys.set(site, made);
      return made;
    }
  };
};
