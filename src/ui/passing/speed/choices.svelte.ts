/** What somebody set here: kept while other views are open, stored nowhere. */
import { MILE_PER_HOUR } from '#analysis/approach/published';
import type { UnitSystem } from '#units/kind';

/** Round in the unit that is shown: 50 km/h, 30 mph. */
const USUAL: Readonly<Record<UnitSystem, number>> = { metric: 50 / 3.6, imperial: 30 * MILE_PER_HOUR };

class SpeedChoices {
  /** "first second" of a pair; null: the nearest two. */
  pair = $state<string | null>(null);
  /** m/s; null: the usual one of the display system. */
  speed = $state<number | null>(null);
  way = $state<'forward' | 'backward'>('forward');
  /** The vehicle whose curves are drawn; null: the first. */
  held = $state<string | null>(null);
  /** The share that an error is to stay under. */
  aim = $state(0.05);
}

export const speedDriven = ({ speed }: SpeedChoices, system: UnitSystem): number => speed ?? USUAL[system];

export const speedChoices = new SpeedChoices();
