import type { Box } from '../geometry/box';
import type { Overlay } from '../types';

export type Guide = Overlay['guides'][number];

/** One way to put the moving box straight along one axis. */
export interface Offer {
  /** How far the box has to move. */
  readonly by: number;
  /** Decides between offers that are equally near; the smaller one wins. */
  readonly rank: number;
  /** What it snaps to, in words. */
  readonly what: () => string;
  /** Lines of help for the box where it comes to lie. */
  guides(moved: Box, length: (metres: number) => string): Guide[];
}

/** Distances that differ by less are rounding. */
const EQUAL = 1e-9;

export function bestOffer(offers: Iterable<Offer>, tolerance: number): Offer | null {
  let best: Offer | null = null;
  for (const offer of offers) {
    const size = Math.abs(offer.by);
    if (size > tolerance) continue;
    const lead = best === null ? Infinity : Math.abs(best.by) - size;
    if (best === null || lead > EQUAL || (lead > -EQUAL && offer.rank < best.rank)) best = offer;
  }
  return best;
}
