/**
 * One behind another. Newell's simplified car-following (G. F. Newell, Transportation Research B 36, 2002): who follows is
 * never further than where the one ahead was a delay ago, less the room that it takes in a standing queue. Up to there
 * everybody drives as fast as wanted. Speeds may jump: with straight courses the result is exact.
 */
import { CourseBuilder, type Course, type Stint } from './course';

/** The bound behind the one ahead: its course, so much later and so much further back. */
export interface Ahead {
  readonly course: Course;
  readonly delay: number;
  readonly back: number;
}

export interface Followed {
  readonly course: Course;
  /** When the one ahead was first in the way, s. */
  readonly heldAt: number | null;
}

/** When the bound reaches a place, s: nobody can be there earlier. −Infinity without anyone ahead. */
export function roomAt(ahead: Ahead | null, place: number): number {
  if (!ahead) return -Infinity;
  const { times, places } = ahead.course;
  if (times.length < 2) return Infinity;
  const wanted = place + ahead.back;
  const k = places.findIndex((each) => each >= wanted);
  const at = k < 0 ? places.length - 1 : Math.max(1, k);
  const speed = (places[at]! - places[at - 1]!) / (times[at]! - times[at - 1]!);
  // beyond its end the course goes on as it ended
  return speed > 0 ? times[at]! + (wanted - places[at]!) / speed + ahead.delay : Infinity;
}

/** Closer than this counts as being there, metres. */
const TOUCH = 1e-9;

/** From a place at a time, at the speeds of the stints in turn, to the place `exit` or the time `end`, whichever comes first. */
export function follow(
  from: { readonly time: number; readonly place: number },
  stints: readonly Stint[],
  ahead: Ahead | null,
  exit: number,
  end: number
): Followed {
  const built = new CourseBuilder();
  let { time, place } = from;
  built.add(time, place);
  let heldAt: number | null = null;
  let stint = 0;
  const { times, places } = ahead?.course ?? { times: [], places: [] };
  const delay = ahead?.delay ?? 0;
  const back = ahead?.back ?? 0;
  const last = times.length - 1;
  let k = 0;
  while (place < exit && time < end) {
    while (stint < stints.length - 1 && stints[stint]!.until <= time) stint++;
    const wanted = stints[stint]!.speed;
    let until = Math.min(end, stint < stints.length - 1 ? stints[stint]!.until : Infinity);
    let speed = wanted;
    let bound = Infinity;
    if (last > 0) {
      while (k < last - 1 && times[k + 1]! + delay <= time) k++;
      const slope = (places[k + 1]! - places[k]!) / (times[k + 1]! - times[k]!);
      const at = (when: number): number => places[k]! + slope * (when - delay - times[k]!) - back;
      const gap = at(time) - place;
      if (k < last - 1) until = Math.min(until, times[k + 1]! + delay);
      if (wanted > slope) {
        if (gap <= TOUCH) {
          heldAt ??= time;
          speed = slope;
        } else until = Math.min(until, time + gap / (wanted - slope));
      }
      bound = at(until);
    }
    if (speed > 0) until = Math.min(until, time + (exit - place) / speed);
    // a step that rounding has made nothing still leads on
    if (!(until > time)) until = time + 1e-9;
    place = Math.max(place, Math.min(place + speed * (until - time), bound));
    time = until;
    if (exit - place < TOUCH) place = exit;
    built.add(time, place);
  }
  return { course: built, heldAt };
}
