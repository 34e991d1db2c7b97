/** Of loops by themselves, and of two of them: as a survey of the drawing says. */
import type { LoopReadout } from '../../results';
import { shortedLoop } from '../shorted';
import type { FigureMaker } from './figure';

const read =
  (field: keyof LoopReadout & `${string}_${'H' | 'ohm' | 'Hz' | 'm'}`): FigureMaker =>
  ({ survey }, { subject }) => {
    const value = survey.loops.find(({ id }) => id === subject)?.[field];
    return typeof value === 'number' ? value : null;
  };

const soundInductance = read('inductance_H');
const soundResistance = read('resistanceAc_ohm');

/** Magnetic, as `LoopReadout` has it. */
export const loopInductance: FigureMaker = (trial, figure) =>
  trial.experiment.shorted?.loop === figure.subject
    ? (shortedLoop(trial, figure.subject)?.inductance ?? null)
    : soundInductance(trial, figure);

/** At the working frequency. */
export const loopResistance: FigureMaker = (trial, figure) =>
  trial.experiment.shorted?.loop === figure.subject
    ? (shortedLoop(trial, figure.subject)?.resistance ?? null)
    : soundResistance(trial, figure);

const soundResonance = read('selfResonance_Hz');

/** What shorted turns do to the capacitance is not modelled. */
export const selfResonance: FigureMaker = (trial, figure) =>
  trial.experiment.shorted?.loop === figure.subject ? null : soundResonance(trial, figure);

export const cover = read('cover_m');

/** As `couplingsOf`: the first of the document comes first. */
const pairOf: (...given: Parameters<FigureMaker>) => readonly [LoopReadout, LoopReadout] | null = (
  { survey, experiment },
  { subject, other }
) => {
  const [a, b] = survey.loops.filter(({ id }) => id === subject || id === other);
  const isTouched = experiment.shorted?.loop === subject || experiment.shorted?.loop === other;
  return a && b && !isTouched ? [a, b] : null;
};

export const mutual: FigureMaker = (trial, figure) => {
  const pair = pairOf(trial, figure);
  const { modelled, means } = trial.survey;
  return pair && means.mutual(modelled.get(pair[0].id)!.model, modelled.get(pair[1].id)!.model);
};

export const coupling: FigureMaker = (trial, figure) => {
  const pair = pairOf(trial, figure);
  const value = mutual(trial, figure);
  return pair && value !== null ? value / Math.sqrt(pair[0].inductance_H * pair[1].inductance_H) : null;
};
