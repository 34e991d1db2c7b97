/** Which causes explain a circuit's readings, and how likely each is. */
import type { Site } from '#plan/schema';
import { createMeans, type Means } from '../means';
import type { Steps } from '../steps';
import { assumptionsOf } from './assumptions';
import { baselineOf, baselineReadings } from './baseline';
import { conditionsOf } from './conditions';
import { distancesOf } from './distance';
import { causeOf, type Answering } from './cause';
import type { Rivals } from './evidence';
import { expectedInSteps } from './expected';
import type { AskedFigure, Prepared } from './forward/contract';
import { prepareInSteps } from './forward/prepare';
import { observe, type Placed } from './inference/observe';
import { sameFigure } from './inference/observed';
import { posteriorOf } from './inference/posterior';
import { sceneOf } from './inference/scene';
import { measuredFigures } from './measured';
import { nextMeasurements } from './next/next';
import { entriesFrom, placesBeforehand, type Entry } from './ranked';
import type { Diagnosis, DiagnosisWish, ExpectedFigure, MeasuredFigure } from './results';
import { visitsOf } from './visits';

/** Causes below this are left out. */
const SHOWN = 1e-3;

/** Of a circuit: what its readings name, and the first that it has to detect, for a next reading. */
const vehiclesOf = (site: Site, circuit: string, places: readonly number[]): readonly string[] => {
  const named = places.flatMap((place) => site.readings[place]?.vehicle ?? []);
  const wanted = site.circuits.find(({ id }) => id === circuit)?.detect ?? [];
  return [...new Set(named.length > 0 ? named : wanted.slice(0, 1))];
};

/** Each reading is held against what is expected under its own conditions. */
function* figuresOf(
  site: Site,
  circuit: string,
  places: readonly number[],
  means: Means
): Steps<readonly MeasuredFigure[]> {
  const known = new Map<string, readonly ExpectedFigure[]>();
  const figures: MeasuredFigure[] = [];
  for (const place of places) {
    const reading = site.readings[place];
    if (!reading) continue;
    const conditions = conditionsOf(site, reading);
    const key = JSON.stringify(conditions);
    const expected =
      known.get(key) ?? (yield* expectedInSteps(site, circuit, conditions, means))[0]?.figures ?? [];
    known.set(key, expected);
    figures.push(...measuredFigures(site, place, expected));
  }
  return figures;
}

/** Further out than any tolerance goes, in standard deviations. */
const FAR_OUT = 5;

/** Even where a slip is the likeliest reason: such a figure does not fit. One in doubt is questioned elsewhere. */
const isFarOut = ({ verdict, deviations, value }: MeasuredFigure): boolean =>
  verdict !== 'in doubt' && (value === null ? verdict === 'high' : Math.abs(deviations ?? 0) > FAR_OUT);

const instrumentsOf = (site: Site, places: readonly number[]): readonly string[] => [
  ...new Set(places.flatMap((place) => site.readings[place]?.instruments ?? []))
];

const isReadAmong =
  (figures: readonly MeasuredFigure[], placed: readonly Placed[]) =>
  (asked: AskedFigure): boolean =>
    placed.some(
      ({ observed, figure }) =>
        !observed.isBaseline &&
        figures[figure]?.verdict !== 'in doubt' &&
        sameFigure({ ...observed.asked, meterFrequency_Hz: null }, { ...asked, meterFrequency_Hz: null })
    );

/** Repeats share a meter's lasting error, so that many of them tell hardly more than a few. */
const REPEATS = 4;
/** Readings that one diagnosis looks at, so that an imported log has an end. */
const MOST_READINGS = 60;

/** Of every figure the last few. */
const withoutManyRepeats = (placed: readonly Placed[]): readonly Placed[] =>
  placed.filter(
    ({ observed }, at) =>
      placed.slice(at + 1).filter((later) => sameFigure(later.observed.asked, observed.asked)).length <
      REPEATS
  );

function* diagnosis(
  site: Site,
  prepared: Prepared,
  places: readonly number[],
  means: Means
): Steps<Diagnosis> {
  const circuit = prepared.circuit.id;
  const figures = yield* figuresOf(site, circuit, places, means);
  const all = observe(site, prepared, figures, false);
  const now = withoutManyRepeats(all);
  const before = yield* figuresOf(site, circuit, baselineReadings(site, circuit, places), means);
  const { observed: old, baseline } = baselineOf(
    prepared,
    observe(site, prepared, before, true).map(({ observed }) => observed)
  );
  const scene = sceneOf(prepared, [...now.map(({ observed }) => observed), ...old]);
  const isCommissioning = places.some((place) => site.readings[place]?.isCommissioning === true);
  const entries = entriesFrom(yield* posteriorOf(scene, isCommissioning));
  const isNothing = ({ faults }: Entry): boolean => faults[0]!.kind === 'nothing wrong';
  const nothingWrong = entries.find(isNothing)!;
  const rivals: Rivals = {
    nothingWrong,
    likeliest: entries.find((entry) => !isNothing(entry)) ?? nothingWrong,
    others: placesBeforehand(entries.filter((entry) => !isNothing(entry))),
    shares: scene.shares
  };
  const answering: Answering = { site, entries, rivals, placed: now, figures: figures.length };
  const next = yield* nextMeasurements({
    ...{ site, scene, entries },
    instruments: { instruments: [...instrumentsOf(site, places)] },
    isRead: isReadAmong(figures, now)
  });
  return {
    circuit,
    figures,
    causes: entries
      .filter((entry, k) => entry.probability >= SHOWN || k === 0)
      .map((entry) => causeOf(answering, entry)),
    next,
    distances: distancesOf(scene, entries, now),
    fits: isNothing(entries[0]!) && now.length > 0 && !now.some(({ figure }) => isFarOut(figures[figure]!)),
    assumptions: assumptionsOf({
      ...{ site, figures, isCommissioning, baseline },
      leftOut: figures.length - all.length,
      repeats: all.length > now.length ? REPEATS : null
    })
  };
}

/** Null for a circuit that is not there, cannot be computed or has no readings. */
export function* diagnoseInSteps(
  site: Site,
  wish: DiagnosisWish,
  means: Means = createMeans()
): Steps<Diagnosis | null> {
  const places = wish.readings ?? visitsOf(site, wish.circuit)[0]?.readings ?? [];
  const known = [...new Set(places)]
    .sort((a, b) => a - b)
    .filter((place) => site.readings[place] !== undefined)
    .slice(-MOST_READINGS);
  if (known.length === 0) return null;
  const prepared = yield* prepareInSteps(site, wish.circuit, vehiclesOf(site, wish.circuit, known), means);
  return prepared && (yield* diagnosis(site, prepared, known, means));
}
