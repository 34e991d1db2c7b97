/** The two tanks that are asked for, as the drawing has them, and their coupling with the second's loops moved away. */
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { coupleCircuits } from '../beating/couple';
import { mutualOf } from '../beating/rate';
import { middleOf, movedApart } from '../beating/remedies/distance';
import type { BeatTank, Deepest } from '../beating/tank';
import { tanksOf } from '../beating/tanks';
import type { Surveyor } from '../survey';
import { inventedPair } from './invented-pair';
import type { SimulationWish } from './simulation';

export interface SimulatedPair {
  readonly tanks: readonly [BeatTank, BeatTank];
  readonly mutual_H: number;
  readonly k: number;
  readonly drawnDistance_m: number;
  readonly distance_m: number;
}

const AT_REST: Deepest = { deltaLOverL: 0, vehicle: null };

/** Only what the two consist of: the rest of a large drawing need not be solved. */
const onlyOf = (site: Site, ids: readonly string[]): Site => {
  const circuits = site.circuits.filter(({ id }) => ids.includes(id));
  const loops = new Set(circuits.flatMap(loopsIn));
  return { ...site, circuits, loops: site.loops.filter(({ id }) => loops.has(id)), lanes: [], probes: [] };
};

const tanksIn = (site: Site, [a, b]: readonly [string, string], surveyor: Surveyor) => {
  const survey = surveyor.survey(site);
  const tanks = tanksOf(survey, () => AT_REST);
  const [first, second] = [a, b].map((id) => tanks.find(({ circuit }) => circuit.id === id));
  return first && second ? { survey, first, second } : null;
};

/** Null where one of the two is not there or does not oscillate. */
export const simulatedPair = (
  drawn: Site,
  { circuits, extraDistance_m }: Pick<SimulationWish, 'circuits' | 'extraDistance_m'>,
  surveyor: Surveyor
): SimulatedPair | null => {
  const { site, circuits: ids } = circuits ? { site: onlyOf(drawn, circuits), circuits } : inventedPair();
  const found = tanksIn(site, ids, surveyor);
  if (!found) return null;
  const { first, second } = found;
  const moved = extraDistance_m === 0 ? site : movedApart(second, first, extraDistance_m)(site);
  const apart = tanksIn(moved, ids, surveyor);
  if (!apart) return null;
  const mutual_H = mutualOf(coupleCircuits(apart.first, apart.second, moved, apart.survey.means));
  const distanceIn = (place: Site): number => {
    const [[x0, y0], [x1, y1]] = [middleOf(first, place), middleOf(second, place)];
    return Math.hypot(x1 - x0, y1 - y0);
  };
  return {
    tanks: [apart.first, apart.second],
    mutual_H,
    k: mutual_H / Math.sqrt(apart.first.solved.inductance * apart.second.solved.inductance),
    drawnDistance_m: distanceIn(site),
    distance_m: distanceIn(moved)
  };
};
