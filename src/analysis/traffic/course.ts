/** Where something is at which time: straight between its nodes, never backwards. Seconds, metres. */
export interface Course {
  readonly times: readonly number[];
  readonly places: readonly number[];
}

/** A speed that is driven until a time, as far as there is room. */
export interface Stint {
  readonly until: number;
  readonly speed: number;
}

/** Nodes put together; one that lies on the line through its neighbours is left out. */
export class CourseBuilder {
  readonly times: number[] = [];
  readonly places: number[] = [];

  add(time: number, place: number): void {
    const { times, places } = this;
    const last = times.length - 1;
    if (last >= 0 && time <= times[last]!) return;
    if (last >= 1) {
      const before = (places[last]! - places[last - 1]!) / (times[last]! - times[last - 1]!);
      const after = (place - places[last]!) / (time - times[last]!);
      if (Math.abs(after - before) < 1e-9) {
        times[last] = time;
        places[last] = place;
        return;
      }
    }
    times.push(time);
    places.push(place);
  }

  /** What the course does until `time`. */
  addUpTo(course: Course, time: number): void {
    const { times, places } = course;
    const last = times.length - 1;
    for (let k = 0; k <= last && times[k]! <= time; k++) this.add(times[k]!, places[k]!);
    if (last >= 0 && times[0]! < time && time < times[last]!) this.add(time, placeOf(course, time));
  }
}

/** Number of the last node whose time is not after `time`; 0 before all of them. */
const nodeBefore = (times: readonly number[], time: number): number => {
  let low = 0;
  let high = times.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle - 1;
  }
  return low;
};

/** Before its first node it stands there, after the last too. */
export const placeOf = ({ times, places }: Course, time: number): number => {
  const k = nodeBefore(times, time);
  if (k >= times.length - 1 || time <= times[0]!) return places[time <= times[0]! ? 0 : k]!;
  const share = (time - times[k]!) / (times[k + 1]! - times[k]!);
  return places[k]! + share * (places[k + 1]! - places[k]!);
};

/** m/s after `time`. */
export const speedOf = ({ times, places }: Course, time: number): number => {
  const k = Math.min(nodeBefore(times, time), times.length - 2);
  return k < 0 ? 0 : (places[k + 1]! - places[k]!) / (times[k + 1]! - times[k]!);
};
