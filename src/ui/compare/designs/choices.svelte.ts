/** What somebody chose to compare: kept while other views are open, stored nowhere. What is no longer there falls back to what is usual. */
import type { DesignId } from '#analysis/designs/results';
import type { WayRef } from '#analysis/passing/results';

class Choices {
  /** Null: the usual ones. */
  designs = $state.raw<readonly DesignId[] | null>(null);
  /** The design that the others are measured against; undefined: the first. */
  against = $state.raw<DesignId | undefined>(undefined);
  isAllShown = $state(false);
  /** The design that is laid over the plan; undefined: the first that is not the present one; null: none. */
  laid = $state.raw<string | null | undefined>(undefined);

  /** Null: the usual one. */
  way = $state.raw<WayRef | null>(null);
  vehicle = $state.raw<string | null>(null);
  /** Metres to the right of the way. */
  offset = $state(0);

  /** Somebody wants to name the present design: its field takes the focus once. */
  isNaming = $state(false);
}

export const choices = new Choices();
