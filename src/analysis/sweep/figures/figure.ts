/** How a kind of figure is made: the same figure of the same experiment is always the same number, whoever asks. */
import type { Figure } from '../results';
import type { Trial } from '../trial';

/** Null where the experiment has no such figure. */
export type FigureMaker = (trial: Trial, figure: Figure) => number | null;
