/** All kinds of figures. A new one is a member of `FIGURE_KINDS`, a maker and a line here. */
import type { Experiment } from '#plan/variables/variable';
import type { Means } from '../../means';
import type { Figure, FigureKind } from '../results';
import { trialsOf, type Trial } from '../trial';
import type { FigureMaker } from './figure';
import { frequency, inductance, q, resistance, resistanceDc } from './of-circuits';
import { coupling, cover, loopInductance, loopResistance, mutual, selfResonance } from './of-loops';
import { beatRatio, ripple, separation } from './of-pairs';
import { cost, sawCut, wire } from './of-site';
import { margin, neighbour, response } from './of-vehicles';

const MAKERS: Readonly<Record<FigureKind, FigureMaker>> = {
  ...{ loopInductance, loopResistance, selfResonance, cover, mutual, coupling },
  ...{ inductance, resistance, resistanceDc, q, frequency },
  ...{ response, margin, neighbour },
  ...{ separation, ripple, beatRatio },
  ...{ wire, sawCut, cost }
};

/** SI; null where the trial has no such figure, or it comes to no number. */
export const figureIn = (trial: Trial, figure: Figure): number | null => {
  const value = MAKERS[figure.kind](trial, figure);
  return value === null || !Number.isFinite(value) ? null : value;
};

/** One figure of one experiment. */
export const evaluate = (experiment: Experiment, figure: Figure, means: Means): number | null =>
  figureIn(trialsOf(means).of(experiment), figure);
