/** What a lesson's experiment asks for. */
import type { Lesson } from '#plan/lesson';
import type { Variable } from '#plan/variables/variable';
import {
  FIGURE_KINDS,
  type Figure,
  type FigureKind,
  type SweepWish,
  type SweptVariable
} from '../sweep/results';

type Experiment = Lesson['experiment'];

export const isFigureKind = (kind: string): kind is FigureKind =>
  (FIGURE_KINDS as readonly string[]).includes(kind);

export const variableOf = ({ kind, subject, other }: Experiment['x']['variable']): Variable => ({
  kind,
  subject,
  ...(other === undefined ? {} : { other })
});

const sweptOf = ({ variable, values }: Experiment['x']): SweptVariable => ({
  variable: variableOf(variable),
  values
});

function figureOf({ kind, subject, other, vehicle, path }: Experiment['figures'][number]): Figure {
  if (!isFigureKind(kind)) throw new RangeError(`no figure of kind ${kind}`);
  return {
    kind,
    subject,
    ...(other === undefined ? {} : { other }),
    ...(vehicle === undefined ? {} : { vehicle }),
    ...(path === undefined ? {} : { path })
  };
}

/** Throws a RangeError for a figure that there is not, which `openLesson` refuses. */
export const sweepOf = ({ experiment }: Lesson): SweepWish => ({
  x: sweptOf(experiment.x),
  family: experiment.family && sweptOf(experiment.family),
  designs: experiment.designs && experiment.designs.map(({ variant }) => variant),
  figures: experiment.figures.map(figureOf),
  place: experiment.place
});
