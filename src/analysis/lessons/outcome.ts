/** What an experiment has shown: the measures of a lesson from the computed numbers, and which predictions they bear out. */
import type { Lesson, Measure } from '#plan/lesson';
import type { SweepPicture } from '../sweep/results';
import { crossing, curveOf, exponentOf, extreme, valueAt, type Curve } from './curve';

export interface Outcome {
  /** SI, by name, in the order of the lesson; null where it cannot be computed. */
  readonly measures: ReadonlyMap<string, number | null>;
  /** Of each prediction. */
  readonly right: readonly boolean[];
}

type Is = Measure['is'];
type OfCurve = Exclude<Is, { kind: 'ratio' | 'difference' }>;

const finite = (value: number): number | null => (Number.isFinite(value) ? value : null);

function measured(is: OfCurve, curve: Curve): number | null {
  switch (is.kind) {
    case 'value':
      return valueAt(curve, is.x);
    case 'highest':
      return extreme(curve, 1, is.from, is.to)?.[1] ?? null;
    case 'lowest':
      return extreme(curve, -1, is.from, is.to)?.[1] ?? null;
    case 'highestAt':
      return extreme(curve, 1, is.from, is.to)?.[0] ?? null;
    case 'lowestAt':
      return extreme(curve, -1, is.from, is.to)?.[0] ?? null;
    case 'exponent':
      return exponentOf(curve, is.from, is.to);
    case 'crossesAt':
      return crossing(curve, is.level);
  }
}

function valueOf(
  is: Is,
  { experiment }: Lesson,
  picture: SweepPicture,
  known: ReadonlyMap<string, number | null>
): number | null {
  if (is.kind !== 'ratio' && is.kind !== 'difference') {
    const results = picture.figures[is.figure]?.values[is.curve] ?? [];
    return measured(is, curveOf(picture.x.values, results, experiment.isLogarithmic));
  }
  const of = known.get(is.of) ?? null;
  const to = known.get(is.to) ?? null;
  if (of === null || to === null) return null;
  return finite(is.kind === 'ratio' ? of / to : of - to);
}

/** `picture`: the sweep that `sweepOf` the lesson asks for. */
export function outcomeOf(lesson: Lesson, picture: SweepPicture): Outcome {
  const measures = new Map<string, number | null>();
  for (const [name, { is }] of Object.entries(lesson.measures))
    measures.set(name, valueOf(is, lesson, picture, measures));
  const right = lesson.predictions.map(({ when: { measure, atLeast, below } }) => {
    const value = measures.get(measure) ?? null;
    return value !== null && value >= (atLeast ?? -Infinity) && value < (below ?? Infinity);
  });
  return { measures, right };
}
