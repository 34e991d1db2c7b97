/** What the published vehicle classes give on any circuit: their test plates, driven over it as vehicles are. */
import { testPlates, type TestPlate } from '#plan/catalogue/test-plates';
import type { Circuit, Loop, Site } from '#plan/schema';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { passesOver, type PassMeans } from '../passing/responses';
import type { ClassMargin } from '../results';
import { finish, type Steps } from '../steps';

const marginOf = (
  plate: TestPlate,
  threshold: number | null,
  ...over: [SolvedCircuit, readonly Loop[], Site, PassMeans]
): ClassMargin | null => {
  const passes = passesOver(plate, ...over);
  if (!passes) return null;
  const worst = passes[0]!.deltaLOverL;
  return {
    vehicle: plate.id,
    onStandardLoop: plate.onStandardLoop,
    best: passes[passes.length - 1]!.deltaLOverL,
    worst,
    margin: threshold === null ? null : -worst / threshold
  };
};

/** In steps, one plate each. Plates that are not prepared are left out. */
export function* classMarginsInSteps(
  circuit: Circuit,
  solved: SolvedCircuit,
  loops: readonly Loop[],
  site: Site,
  means: PassMeans
): Steps<readonly ClassMargin[]> {
  const margins: ClassMargin[] = [];
  for (const plate of testPlates) {
    const threshold = circuit.channel?.tripThreshold ?? null;
    const margin = marginOf(plate, threshold, solved, loops, site, means);
    if (margin) margins.push(margin);
    yield;
  }
  return margins;
}

/** The same at once. `loops` are the circuit's, in the order of `solved`. */
export const classMarginsOf = (...given: Parameters<typeof classMarginsInSteps>): readonly ClassMargin[] =>
  finish(classMarginsInSteps(...given));
