/**
 * What speaks for a cause and what against it, figure by figure, each by itself.
 *
 * A figure that the cause explains is held against "nothing wrong"; one that it does not explain, against the better of
 * "nothing wrong" and the likeliest cause, so that what only the others explain speaks against it. "Nothing wrong" is held
 * against all others together, each as likely as it was beforehand; where it is not the likeliest, against that.
 */
import type { LoopShares } from './inference/covariance';
import { deviationOf, logFigure, type Under } from './inference/figure-likelihood';
import { isStrange } from './inference/apart-from-numbers';
import { logSum } from './inference/normal';
import type { Observed } from './inference/observed';
import type { Placed } from './inference/observe';
import { specificKey } from './evidence-words';
import { valueOf } from './measured';
import { placesOf, type Entry, type Place } from './ranked';
import type { Evidence, Told, ToldValue } from './results';
import type { Predicted } from './forward/contract';

/** Places of a cause's unknowns that a figure is looked at from. */
const PLACES = 24;
/** Nats under which a figure says nothing. */
const WORTH_SAYING = 0.3;
/** Standard deviations within which a cause explains a figure. */
const EXPLAINS = 2.5;

const at = ({ particle }: Place, figure: number): Predicted => particle.look.predicted[figure]!;

const under = ({ particle, unmodelled }: Place, shares: LoopShares): Under => ({
  spread: particle.look.spread,
  shares,
  unmodelled
});

const logUnder = (places: readonly Place[], shares: LoopShares, observed: Observed, k: number): number =>
  logSum(
    places.map((place) => Math.log(place.share) + logFigure(observed, at(place, k), under(place, shares), k))
  );

const explains = (place: Place | undefined, shares: LoopShares, observed: Observed, k: number): boolean => {
  const predicted = place ? at(place, k) : null;
  if (!place || predicted === null) return observed.value === null;
  if (typeof predicted !== 'number' || observed.value === null) return !isStrange(observed, predicted);
  const deviation = deviationOf(observed, predicted, under(place, shares), k);
  return Math.abs(observed.value - predicted) < EXPLAINS * deviation;
};

interface Said {
  readonly isFor: boolean;
  readonly entry: Entry;
  readonly observed: Observed;
  readonly predicted: Predicted;
  readonly expected: Predicted;
}

const told = (key: string, values: Record<string, ToldValue | null>): Told => {
  const known: Record<string, ToldValue> = {};
  for (const [name, value] of Object.entries(values)) if (value !== null) known[name] = value;
  return { key, values: known };
};

const toldOf = ({ isFor, entry, observed, predicted, expected }: Said): Told => {
  const { quantity } = observed.asked;
  const side = isFor ? 'for' : 'against';
  const { kind } = entry.faults[0]!;
  const shown = (value: Predicted): ToldValue | null =>
    typeof value === 'number' ? valueOf(quantity, value) : null;
  const [measured, would, should] = [observed.value, predicted, expected].map(shown);
  const values = { measured: measured ?? null, predicted: would ?? null, expected: should ?? null };
  const isInsulation = quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm';
  if (kind === 'nothing wrong') {
    if (!measured) return told(isFor ? 'for.over' : 'against.nothing-wrong.over', values);
    return told(isInsulation ? `${side}.nothing-wrong.insulation` : `${side}.nothing-wrong`, values);
  }
  if (entry.isUnknown)
    return told(measured ? `${side}.something-else` : `${side}.something-else.over`, values);
  if (!measured) {
    if (isFor) return told(kind === 'open' ? 'for.open.over' : 'for.over', values);
    return told(would ? 'against.over' : 'against.over.unexplained', values);
  }
  if (predicted === 'over range')
    return told(kind === 'open' ? 'against.open.finite' : 'against.should-be-over', values);
  const specific = entry.faults.length === 1 ? specificKey(side, kind, quantity) : null;
  if (specific && would && (should || isInsulation)) return told(specific, values);
  if (predicted === 'sound') return told(`${side}.sound`, values);
  if (!would) return told(isFor ? 'for.not-told' : 'against.over.unexplained', values);
  return told(should ? `${side}.figure` : `${side}.alone`, values);
};

export interface Rivals {
  readonly nothingWrong: Entry;
  /** The likeliest entry that is not "nothing wrong". */
  readonly likeliest: Entry;
  /** All entries but "nothing wrong", as they were beforehand. */
  readonly others: readonly Place[];
  readonly shares: LoopShares;
}

/** The weightiest first. */
export const evidenceOf = (
  entry: Entry,
  { nothingWrong, likeliest, others, shares }: Rivals,
  placed: readonly Placed[]
): readonly Evidence[] => {
  const [own, none, best] = [entry, nothingWrong, likeliest].map((each) => placesOf(each, PLACES)) as [
    readonly Place[],
    readonly Place[],
    readonly Place[]
  ];
  const isNothing = entry === nothingWrong;
  const rivals = entry.probability >= likeliest.probability ? others : best;
  const heard = placed.flatMap(({ figure, observed }, k): readonly Evidence[] => {
    if (observed.isBaseline) return [];
    const here = logUnder(own, shares, observed, k);
    const without = logUnder(isNothing ? rivals : none, shares, observed, k);
    const isExplained = explains(own[0], shares, observed, k);
    const against =
      isExplained || isNothing ? without : Math.max(without, logUnder(best, shares, observed, k));
    const weight = here - against;
    if (!(Math.abs(weight) >= WORTH_SAYING)) return [];
    const said = {
      isFor: weight > 0,
      entry,
      observed,
      predicted: own[0] ? at(own[0], k) : null,
      expected: none[0] ? at(none[0], k) : null
    };
    return [{ figure, told: toldOf(said), weight }];
  });
  return heard.sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
};
