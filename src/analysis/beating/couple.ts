/**
 * Mutual inductance of two circuits, between their units' terminals: of every two loops, weighted with their shares of
 * the circuits' currents; of the steel under them; of the conduits that their lead-ins share. Left out: capacitance
 * between them, and tails that lie in one saw cut (a conduit can stand for it).
 */
import { mutualPerMetreOf } from '#plan/catalogue/conduits';
import type { Circuit, Site } from '#plan/schema';
import type { SolvedCircuit } from '../electrical/circuit-model';
import type { BeatCoupling } from '../results';
import type { SurveyMeans } from '../survey';

/** As much of a channel as couples. */
export interface Coupled {
  readonly circuit: Pick<Circuit, 'id'>;
  readonly solved: Pick<SolvedCircuit, 'input' | 'shares' | 'frequency'>;
}

const throughConduits = (a: string, b: string, { conduits }: Pick<Site, 'conduits'>): number =>
  conduits.reduce(
    (sum, conduit) =>
      conduit.circuits.includes(a) && conduit.circuits.includes(b)
        ? sum + conduit.length * mutualPerMetreOf(conduit)
        : sum,
    0
  );

/** Σᵢⱼ sᵢ·sⱼ·Mᵢⱼ. */
const weighted = (
  { solved: a }: Coupled,
  { solved: b }: Coupled,
  between: (i: number, j: number) => number
): number =>
  a.shares.reduce(
    (sum, ours, i) => sum + b.shares.reduce((part, theirs, j) => part + ours * theirs * between(i, j), 0),
    0
  );

export const coupleCircuits = (
  a: Coupled,
  b: Coupled,
  site: Pick<Site, 'conduits' | 'steel'>,
  { mutual, steelBetween }: Pick<SurveyMeans, 'mutual' | 'steelBetween'>
): BeatCoupling => {
  const [ours, theirs] = [a, b].map(({ solved: { input } }) => input.loops.map(({ model }) => model));
  const frequency = Math.sqrt(a.solved.frequency * b.solved.frequency);
  return {
    loops_H: weighted(a, b, (i, j) => mutual(ours![i]!, theirs![j]!)),
    steel_H:
      site.steel.length === 0
        ? 0
        : weighted(a, b, (i, j) => steelBetween(ours![i]!, theirs![j]!, site, frequency)),
    conduits_H: throughConduits(a.circuit.id, b.circuit.id, site)
  };
};
