/** Every reading of a site held against what is expected of it, each under the conditions in which it was taken. */
import { accuracyOf } from '#plan/catalogue/instruments';
import type { Reading, Site } from '#plan/schema';
import { createMeans, type Means } from '../means';
import type { Steps } from '../steps';
import { conditionsOf } from './conditions';
import { expectedInSteps } from './expected';
import { judge } from './judge';
import type { CircuitExpectation, ExpectedFigure, MeasuredFigure } from './results';
import { circuitOfReading, figuresOfReading, placeOfReading } from './visits';

/** Of one measured figure, without what only a diagnosis knows. */
export type CheckedFigure = Omit<MeasuredFigure, 'meterDeviation' | 'doubt'>;

export interface CheckedCircuit extends CircuitExpectation {
  /** In the order of `site.readings`. */
  readonly measured: readonly CheckedFigure[];
}

type Wanted = Pick<ExpectedFigure, 'testPoint' | 'loop' | 'quantity'>;

/** Of a response the one of the reading's vehicle; where it names none, of the only one there is. */
export function expectedOf(
  figures: readonly ExpectedFigure[],
  { testPoint, loop, quantity }: Wanted,
  { vehicle }: Reading
): ExpectedFigure | null {
  const found = figures.filter(
    (each) => each.testPoint === testPoint && each.loop === loop && each.quantity === quantity
  );
  if (quantity !== 'deltaLOverL') return found[0] ?? null;
  if (vehicle === undefined) return found.length === 1 ? found[0]! : null;
  return found.find((each) => each.vehicle === vehicle) ?? null;
}

export function checkedFigures(
  site: Site,
  place: number,
  reading: Reading,
  expected: readonly ExpectedFigure[]
): readonly CheckedFigure[] {
  const at = placeOfReading(site, reading);
  return figuresOfReading(reading).map(({ quantity, value }): CheckedFigure => {
    const figure = expectedOf(expected, { ...at, quantity }, reading);
    const { verdict, deviations } = judge(quantity, value, figure, accuracyOf(site, reading, quantity));
    return { ...at, reading: place, quantity, value, expected: figure, verdict, deviations };
  });
}

/** One entry a circuit that can be computed. Says which share of the circuits is done. */
export function* checkReadingsInSteps(
  site: Site,
  means: Means = createMeans()
): Steps<readonly CheckedCircuit[]> {
  const checked: CheckedCircuit[] = [];
  for (const [index, { id }] of site.circuits.entries()) {
    const [expectation] = yield* expectedInSteps(site, id, {}, means);
    if (expectation) {
      const known = new Map<string, readonly ExpectedFigure[]>([['{}', expectation.figures]]);
      const measured: CheckedFigure[] = [];
      for (const [place, reading] of site.readings.entries()) {
        if (circuitOfReading(site, reading) !== id) continue;
        const conditions = conditionsOf(site, reading);
        const key = JSON.stringify(conditions);
        const figures =
          known.get(key) ?? (yield* expectedInSteps(site, id, conditions, means))[0]?.figures ?? [];
        known.set(key, figures);
        measured.push(...checkedFigures(site, place, reading, figures));
      }
      checked.push({ ...expectation, measured });
    }
    yield (index + 1) / site.circuits.length;
  }
  return checked;
}
