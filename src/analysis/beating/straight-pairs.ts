/** Lead-ins that lie side by side, before twisting takes most of their coupling away. */
import { pairCoupling } from '#physics/coupling/pair-coupling';

/** Metres, four wires in a row: an ordinary cable's pair, and its neighbour in touch with it. */
export const STRAIGHT_PAIRS = { spacing: 0.004, distance: 0.008 } as const;

/** The most that such pairs would couple by if they ran straight, H per metre: with unlike wires next to one another. */
export const straightCoupling = (): number =>
  pairCoupling(
    { at: [0, 0], spacing: STRAIGHT_PAIRS.spacing, angle: 0 },
    { at: [STRAIGHT_PAIRS.distance, 0], spacing: STRAIGHT_PAIRS.spacing, angle: Math.PI }
  );
