/** Of two channels that can run at the same time: as an assessment rates them. */
import { coupleCircuits } from '../../beating/couple';
import { canRunTogether, ratePair, type PairRating } from '../../beating/rate';
import { deepestOf } from '../../beating/tank';
import { tanksOf } from '../../beating/tanks';
import type { Figure } from '../results';
import type { Trial } from '../trial';
import type { FigureMaker } from './figure';

/** Null where one does not oscillate, or the two never run together; with shorted turns it is not modelled. */
const ratingOf = (trial: Trial, { subject, other }: Figure): PairRating | null => {
  const { survey, site, experiment } = trial;
  const pair = [...survey.circuits].filter(([id]) => id === subject || id === other);
  if (pair.length < 2) return null;
  if (pair.some(([, { loops }]) => loops.some(({ id }) => id === experiment.shorted?.loop))) return null;
  const circuits = new Map(pair);
  const [a, b] = tanksOf({ site, circuits }, (id) => deepestOf(trial.responses(circuits.get(id)!)));
  if (!a || !b || !canRunTogether(a, b)) return null;
  return ratePair(a, b, coupleCircuits(a, b, site, survey.means));
};

const rated =
  (field: 'separation_Hz' | 'ripple' | 'ratio'): FigureMaker =>
  (trial, figure) =>
    ratingOf(trial, figure)?.[field] ?? null;

export const separation = rated('separation_Hz');
export const ripple = rated('ripple');
export const beatRatio = rated('ratio');
