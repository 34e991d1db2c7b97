import type { DisplayUnits, Point } from '#plan/schema';
import { FOOT } from '#units/constants';
import type { Box } from '../geometry/box';

/** Clear space between the original and a copy, metres. */
const GAP: Readonly<Record<DisplayUnits, number>> = { metric: 1, imperial: 3 * FOOT };

/** The shift that puts a copy clear to the right of its original, where it is seen and read at once. */
export const besideStep = (box: Box, units: DisplayUnits): Point => [box.right - box.left + GAP[units], 0];
