import type { DisplayUnits } from '#plan/schema';
import { INCH } from '#units/constants';
import type { SnapSettings } from './types';

/** A tenth of a metre or half a foot: round in the system that the drawing shows. */
const GRID_STEP: Readonly<Record<DisplayUnits, number>> = { metric: 0.1, imperial: 6 * INCH };

export const defaultSnap = (units: DisplayUnits): SnapSettings => ({
  grid: true,
  objects: true,
  showGrid: true,
  gridStep: GRID_STEP[units]
});
