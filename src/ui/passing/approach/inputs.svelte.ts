/** What somebody set here: kept while other views are open, stored nowhere. SI. */
import { USUAL_APPROACH, usualSlowSpeed, type ApproachWish } from '#analysis/approach/advance';
import { MILE_PER_HOUR } from '#analysis/approach/published';
import { ADVANCE_LOOP } from '#plan/edits/advance-loops';
import type { UnitSystem } from '#units/kind';

/** Round in the unit that is shown: 80 km/h, 50 mph. */
const USUAL: Readonly<Record<UnitSystem, number>> = { metric: 80 / 3.6, imperial: 50 * MILE_PER_HOUR };

class ApproachInputs {
  /** Null: the usual one. */
  lane = $state<string | null>(null);
  /** Null: the usual one of the display system. */
  speed = $state<number | null>(null);
  /** Null: the usual share of the speed. */
  slowSpeed = $state<number | null>(null);
  from_s = $state(USUAL_APPROACH.zone.from_s);
  to_s = $state(USUAL_APPROACH.zone.to_s);
  extension_s = $state(USUAL_APPROACH.extension_s);
  reaction_s = $state(USUAL_APPROACH.reaction_s);
  deceleration = $state(USUAL_APPROACH.deceleration);
  grade = $state(USUAL_APPROACH.grade);

  wishIn(system: UnitSystem): ApproachWish {
    const speed = this.speed ?? USUAL[system];
    return {
      speed,
      slowSpeed: Math.min(speed, this.slowSpeed ?? usualSlowSpeed(speed)),
      zone: { from_s: this.from_s, to_s: this.to_s },
      extension_s: this.extension_s,
      reaction_s: this.reaction_s,
      deceleration: this.deceleration,
      grade: this.grade,
      loopLength: ADVANCE_LOOP.length
    };
  }
}

export const approachInputs = new ApproachInputs();
