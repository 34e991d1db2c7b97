/**
 * A change tried: the two circuits of a pair edited, solved and rated again, among neighbours that stay as they are. The
 * response to vehicles, and with it the sweep, is taken as it is.
 */
import type { Circuit, Site, Unit } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { BEAT_VERDICTS, type Beat, type BeatVerdict, type VehicleResponse } from '../../results';
import type { Survey, Surveyor } from '../../survey';
import { coupleCircuits } from '../couple';
import { canRunTogether, ratePair, verdictOf, type PairRating } from '../rate';
import type { BeatTank } from '../tank';
import { tanksOf } from '../tanks';

export type Pair = Omit<Beat, 'remedies'>;

export interface RemedyContext {
  readonly surveyor: Surveyor;
  readonly survey: Survey;
  /** Of the whole drawing. */
  readonly tanks: readonly BeatTank[];
  readonly a: BeatTank;
  readonly b: BeatTank;
  readonly pair: Pair;
  readonly responsesOf: (circuit: string) => readonly VehicleResponse[];
}

export interface Outcome {
  /** The two after the change. */
  readonly tanks: readonly [BeatTank, BeatTank];
  /** Null where the change keeps the two from running at the same time. */
  readonly rating: PairRating | null;
  /** The worst of any pair of the circuits that change, and with whom they come off worse than before. */
  readonly consequences: () => { readonly worstRatio: number; readonly spoils: readonly string[] };
}

export type Trial = (edit: (site: Site) => Site, changed: readonly string[]) => Outcome | null;

/** The drawing without everything that neither of the two circuits needs. */
const reducedTo = (site: Site, circuits: readonly Circuit[]): Site => {
  const loops = new Set(circuits.flatMap(loopsIn));
  const ids = new Set(circuits.map(({ id }) => id));
  return {
    ...site,
    loops: site.loops.filter(({ id }) => loops.has(id)),
    circuits: site.circuits.filter(({ id }) => ids.has(id)),
    probes: []
  };
};

const rate = (one: BeatTank, other: BeatTank, { site, means }: Survey): PairRating =>
  ratePair(one, other, coupleCircuits(one, other, site, means));

const NEVER_TOGETHER = { ratio: 0, verdict: 'clear' } as const;
const rated = (one: BeatTank, other: BeatTank, survey: Survey): Pick<PairRating, 'ratio' | 'verdict'> =>
  canRunTogether(one, other) ? rate(one, other, survey) : NEVER_TOGETHER;

const gravity = (verdict: BeatVerdict): number => BEAT_VERDICTS.indexOf(verdict);

/** Null where a circuit would not oscillate any more. */
export const createTrial = ({ surveyor, survey, tanks, a, b }: RemedyContext): Trial => {
  const reduced = reducedTo(survey.site, [a.circuit, b.circuit]);
  const others = tanks.filter((tank) => tank !== a && tank !== b);
  const deepestOf = (id: string) => {
    const { deepest, vehicle } = (id === a.circuit.id ? a : b).sweep;
    return { deltaLOverL: deepest, vehicle };
  };
  return (edit, changed) => {
    const there = surveyor.survey(edit(reduced));
    const edited = tanksOf(there, deepestOf);
    const [newA, newB] = [a, b].map(({ circuit }) => edited.find((tank) => tank.circuit.id === circuit.id));
    if (!newA || !newB) return null;
    const rating = canRunTogether(newA, newB) ? rate(newA, newB, there) : null;
    const consequences = () => {
      let worstRatio = rating?.ratio ?? 0;
      const spoilt = new Set<string>();
      for (const tank of edited.filter(({ circuit }) => changed.includes(circuit.id))) {
        const before = tank.circuit.id === a.circuit.id ? a : b;
        for (const other of others) {
          const neighbour = withUnitOf(other, there.site.units);
          const { ratio, verdict } = rated(tank, neighbour, there);
          worstRatio = Math.max(worstRatio, ratio);
          if (gravity(verdict) > gravity(rated(before, other, survey).verdict)) spoilt.add(other.circuit.id);
        }
      }
      return { worstRatio, spoils: [...spoilt] };
    };
    return { tanks: [newA, newB], rating, consequences };
  };
};

/** What the change did to a unit holds for everyone on it. */
const withUnitOf = (tank: BeatTank, units: readonly Unit[]): BeatTank => ({
  ...tank,
  unit: units.find(({ id }) => id === tank.unit.id) ?? tank.unit
});

/** Of the pair, and of the others. */
export const effectOf = ({ rating, consequences }: Outcome) => ({
  ratio: rating?.ratio ?? 0,
  verdict: verdictOf(rating?.ratio ?? 0),
  ...consequences()
});
