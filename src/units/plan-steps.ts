import { FOOT, INCH } from './constants';
import type { UnitSystem } from './kind';

/**
 * How far an arrow key moves what is selected, in metres; ten times as far with shift. Half an inch and not a tenth of a
 * foot: plans in feet are read in feet and inches, where a tenth of a foot is a crooked 1 3/16 inches.
 */
export const NUDGE: Readonly<Record<UnitSystem, number>> = { metric: 0.01, imperial: INCH / 2 };

/** Distances between grid lines, in metres, each round in its system and dividing the next. */
export const GRID_STEPS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0.01, 0.05, 0.1, 0.5, 1, 5, 10, 50, 100],
  imperial: [INCH, 3 * INCH, 6 * INCH, FOOT, 5 * FOOT, 10 * FOOT, 50 * FOOT, 100 * FOOT]
};

/**
 * The finest grid step of at least `closest` metres, such as so many pixels at the present zoom; the coarsest
 * one when none is large enough.
 */
export function gridStep(closest: number, system: UnitSystem): number {
  const steps = GRID_STEPS[system];
  const coarsest = Math.max(...steps);
  return steps.find((step) => step >= closest) ?? coarsest;
}
