/** All that beats in one drawing, before anything is tried about it. */
import type { Beat, VehicleResponse } from '../results';
import type { Survey } from '../survey';
import { coupleCircuits } from './couple';
import { canRunTogether, ratePair } from './rate';
import type { Pair } from './remedies/trial';
import { deepestOf, type BeatTank } from './tank';
import { tanksOf } from './tanks';

export interface RatedPair {
  readonly a: BeatTank;
  readonly b: BeatTank;
  readonly pair: Pair;
}

export interface BeatScene {
  readonly survey: Survey;
  readonly tanks: readonly BeatTank[];
  /** Every two that can run at the same time, in the order of the document. */
  readonly pairs: readonly RatedPair[];
  readonly responsesOf: (circuit: string) => readonly VehicleResponse[];
}

export const beatScene = (
  survey: Survey,
  responsesOf: (circuit: string) => readonly VehicleResponse[]
): BeatScene => {
  const { site, means } = survey;
  const tanks = tanksOf(survey, (id) => deepestOf(responsesOf(id)));
  const pairs = tanks.flatMap((a, i) =>
    tanks
      .slice(i + 1)
      .filter((b) => canRunTogether(a, b))
      .map((b): RatedPair => {
        const coupling = coupleCircuits(a, b, site, means);
        return { a, b, pair: { a: a.circuit.id, b: b.circuit.id, coupling, ...ratePair(a, b, coupling) } };
      })
  );
  return { survey, tanks, pairs, responsesOf };
};

export const beatsOf = (
  { pairs }: BeatScene,
  remediesOf: (pair: RatedPair) => Beat['remedies']
): readonly Beat[] => pairs.map((rated) => ({ ...rated.pair, remedies: remediesOf(rated) }));

/**
 * Keeps the last scene for as long as nothing changes that beats: while a vehicle is dragged, a name typed, a lane moved.
 * Responses that are the same list are the same responses: whoever makes them keeps them.
 */
export const createSceneKeeper = (): typeof beatScene => {
  let last: { readonly signature: readonly unknown[]; readonly scene: BeatScene } | null = null;
  return (survey, responsesOf) => {
    const { units, conduits, steel } = survey.site;
    const signature = [
      JSON.stringify([units, conduits, steel]),
      ...[...survey.circuits.values()].flatMap(({ circuit, key }) => [
        circuit.id,
        key,
        JSON.stringify(circuit.channel),
        responsesOf(circuit.id)
      ])
    ];
    const before = last?.signature;
    if (last && before?.length === signature.length && signature.every((each, at) => each === before[at]))
      return last.scene;
    const scene = beatScene(survey, responsesOf);
    last = { signature, scene };
    return scene;
  };
};
