/** Which further reading would tell the leading causes apart best. */
import { accuracyOf, type Accuracy } from '#plan/catalogue/instruments';
import type { Quantity, Reading, Site } from '#plan/schema';
import { dot, forwardSubstitute } from '#physics/numeric/cholesky';
import { SOUND_INSULATION, type AskedFigure, type Predicted } from '../forward/contract';
import { covarianceOf, type StraySpread } from '../inference/covariance';
import { rowOf } from '../inference/likelihood';
import { NOISE_SHARE, UNMODELLED_LOST } from '../inference/priors';
import type { Scene } from '../inference/scene';
import { faultsAt } from '../inference/suspect';
import { overShare } from '../inference/unrelated';
import { NINETEEN_IN_TWENTY } from '../judge';
import { placesOf, type Entry, type Place } from '../ranked';
import type { NextMeasurement } from '../results';
import type { Steps } from '../../steps';
import { costOf, howTo } from './how';
import { informationOf, type Possible } from './information';

const CAUSES = 8;
/** Places of a cause's unknowns. */
const PLACES = 12;
/** Causes below this are not asked about. */
const LEAST = 0.002;
const SHOWN = 6;
/** Bits below which a reading is not worth its way. */
const LEAST_GAIN = 0.005;
/** Of a logarithm: where next to nothing is known. */
const WIDE = 1.5;
/** A figure's place says nothing where the others fit this badly. */
const MISFIT_A_FIGURE = 4;

interface Believed {
  readonly cause: number;
  readonly place: Place;
  readonly mass: number;
  readonly predicted: readonly Predicted[];
  readonly spread: StraySpread;
}

const midOf = ([low, high]: readonly [number, number]): number => Math.log(low * high) / 2;
const SOUND = {
  mean: midOf([SOUND_INSULATION.low, SOUND_INSULATION.high]),
  deviation: Math.log(SOUND_INSULATION.high / SOUND_INSULATION.low) / Math.sqrt(12),
  over: SOUND_INSULATION.overRange
};

/** What would be read, given what was read: on the scale of its logarithm. */
const given = (
  scene: Scene,
  { place, spread }: Believed,
  asked: AskedFigure,
  k: number,
  predicted: number,
  accuracy: Accuracy
): { readonly mean: number; readonly deviation: number } => {
  const { look } = place.particle;
  const strays = { inputs: spread.inputs, shares: scene.shares };
  const own = rowOf({ asked, accuracy, value: null, isBaseline: false }, predicted, spread, k);
  let [mean, variance] = [predicted, covarianceOf(own, own, strays, true)];
  const { factor, numbers, misfit } = look;
  if (factor && misfit < MISFIT_A_FIGURE * numbers.length) {
    const rows = numbers.map((n) => rowOf(scene.observed[n]!, look.predicted[n] as number, look.spread, n));
    const off = numbers.map((n) => scene.observed[n]!.value! - (look.predicted[n] as number));
    const common = forwardSubstitute(
      factor,
      Float64Array.from(rows, (row) => covarianceOf(row, own, strays, false))
    );
    mean += dot(common, forwardSubstitute(factor, Float64Array.from(off)));
    variance -= dot(common, common);
  }
  const size = Math.max(Math.abs(mean), own.meter / 4, Number.MIN_VALUE);
  const deviation = Math.sqrt(Math.max(variance, own.meter ** 2)) / size;
  return { mean: Math.log(size), deviation: Math.min(WIDE, Math.hypot(deviation, place.unmodelled)) };
};

const possibleOf = (
  scene: Scene,
  believed: Believed,
  asked: AskedFigure,
  k: number,
  accuracy: Accuracy,
  nominal: Predicted
): Possible => {
  const { cause, mass } = believed;
  const predicted = believed.predicted[k]!;
  const { quantity } = asked;
  if (predicted === 'sound') return { cause, mass, ...SOUND };
  if (predicted === 'over range')
    return { cause, mass, mean: 0, deviation: WIDE, over: 1 - NOISE_SHARE[quantity] };
  if (predicted === null) {
    const mean = typeof nominal === 'number' && nominal !== 0 ? Math.log(Math.abs(nominal)) : SOUND.mean;
    return { cause, mass, mean, deviation: WIDE, over: 0.5 };
  }
  const over = believed.place.unmodelled > 0 ? UNMODELLED_LOST : overShare(quantity, predicted);
  return { cause, mass, over, ...given(scene, believed, asked, k, predicted, accuracy) };
};

/** From where to where a cause's readings lie; null where it leaves the meter without a figure. */
const rangeOf = (
  possibles: readonly Possible[],
  cause: number,
  quantity: Quantity
): NextMeasurement['separates'][number] | null => {
  const own = possibles.filter((each) => each.cause === cause && each.over < 0.5);
  const all = own.reduce((sum, { mass }) => sum + mass, 0);
  const counted = own.filter(({ mass }) => mass > 0.02 * all);
  if (counted.length === 0) return null;
  const low = Math.exp(Math.min(...counted.map((each) => each.mean - NINETEEN_IN_TWENTY * each.deviation)));
  const high = Math.exp(Math.max(...counted.map((each) => each.mean + NINETEEN_IN_TWENTY * each.deviation)));
  return quantity === 'deltaLOverL' ? { cause, low: -high, high: -low } : { cause, low, high };
};

export interface NextWish {
  readonly site: Site;
  readonly scene: Scene;
  readonly entries: readonly Entry[];
  /** With which it would be measured. */
  readonly instruments: Pick<Reading, 'instruments'>;
  /** Whether this was read already, without doubt. */
  readonly isRead: (asked: AskedFigure) => boolean;
}

/** The best first. */
export function* nextMeasurements(wish: NextWish): Steps<readonly NextMeasurement[]> {
  const { site, scene, entries, instruments, isRead } = wish;
  const { prepared } = scene;
  const asked = prepared.askable.filter((each) => !isRead(each) && howTo(site, each) !== null);
  const nominal = prepared.predict([], asked);
  const believed: Believed[] = [];
  for (const [cause, entry] of entries.slice(0, CAUSES).entries()) {
    if (entry.probability < LEAST) continue;
    for (const place of placesOf(entry, PLACES)) {
      const faults = faultsAt(place.suspect.hypotheses, place.particle.values);
      const predicted = prepared.predict(faults, asked);
      const last = believed.at(-1);
      // one spread a cause will do: it hardly differs from place to place of its unknowns
      const spread = last?.cause === cause ? last.spread : prepared.spread(faults, asked);
      believed.push({ cause, place, mass: entry.probability * place.share, predicted, spread });
    }
    yield;
  }
  const found: { readonly next: NextMeasurement; readonly worth: number }[] = [];
  for (const [k, figure] of asked.entries()) {
    const { testPoint, loop, quantity, vehicle } = figure;
    const ways = howTo(site, figure);
    if (!ways || believed.every(({ predicted }) => predicted[k] === null)) continue;
    const accuracy = accuracyOf(site, instruments, quantity);
    const possibles = believed.map((each) => possibleOf(scene, each, figure, k, accuracy, nominal[k]!));
    const information = informationOf(possibles);
    if (information < LEAST_GAIN) continue;
    const separates = [...new Set(believed.map(({ cause }) => cause))].flatMap(
      (cause) => rangeOf(possibles, cause, quantity) ?? []
    );
    found.push({
      next: { testPoint, loop, quantity, vehicle, information, separates, ...ways },
      worth: information - costOf(testPoint, quantity)
    });
    yield;
  }
  return found
    .sort((a, b) => b.worth - a.worth)
    .slice(0, SHOWN)
    .map(({ next }) => next);
}
