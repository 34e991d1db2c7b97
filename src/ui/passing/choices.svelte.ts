/**
 * What somebody chose to look at among vehicles that pass: kept while other views are open, stored nowhere. What is
 * chosen by an id that is no longer there falls back to what is usual.
 */
import type { WayRef } from '#analysis/passing/results';

class Choices {
  /** Null: the usual one. */
  way = $state.raw<WayRef | null>(null);
  /** Null: those asked for. */
  vehicles = $state.raw<readonly string[] | null>(null);
  /** The one whose zone is shaded and that a click puts on the plan; null: the first. */
  held = $state.raw<string | null>(null);
  /** Metres to the right of the way. */
  offset = $state(0);
  scale = $state<'logarithmic' | 'linear'>('logarithmic');
  /** Null: all. */
  circuit = $state<string | null>(null);

  isMapShown = $state(false);
  /** Null: the vehicle that is watched. */
  mapVehicle = $state<string | null>(null);
  /** Degrees; null: along the nearest lane. */
  mapHeading = $state<number | null>(null);
  /** All circuits, or those of the selected loops. */
  mapCircuits = $state<'all' | 'selected'>('all');
}

export const choices = new Choices();
