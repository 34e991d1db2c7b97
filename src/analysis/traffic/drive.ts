/** The way of one driver along a lane: freely, behind the one ahead, and past everything at which one may have to stop. */
import { CourseBuilder, placeOf, speedOf, type Course } from './course';
import type { Driver } from './demand';
import { follow, roomAt, type Ahead } from './follow';
import { brakingFor, nextGreen, type Halt } from './halts';
import { LONG, REACTION, STARTING, STARTING_LONG } from './practice';
import { ramp } from './ramp';

/** Places of the front, metres along the lane, between which a vehicle is followed, and the time at which all ends. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly end: number;
}

/** As near as that to where one wanted to stop, metres, is there: somebody else's tail was in the way. */
const NEAR_ENOUGH = 0.05;
/** One who is held that soon after the brake was touched is behind the tail already, s. */
const SOON = 1e-3;
/** Turns of planning; far more than there are halts and hindrances. */
const MOST_PLANS = 400;

/** Of the front; null for one that does not come before the end. `halts` in the order of their places. */
export function drive(
  driver: Driver,
  ahead: Ahead | null,
  halts: readonly Halt[],
  { from, to, end }: Stretch
): Course | null {
  let { time, place } = entryOf(driver, ahead, from);
  if (!(time < end)) return null;
  let speed = driver.speed;
  const starting = driver.vehicle.bodyLength >= LONG ? STARTING_LONG : STARTING;
  const built = new CourseBuilder();
  let waiting = halts.filter((halt) => halt.place > place && halt.place < to);
  for (let plan = 0; ; plan++) {
    const up = speed < driver.speed ? ramp(time, speed, driver.speed, starting) : [];
    const free = follow({ time, place }, [...up, { until: Infinity, speed: driver.speed }], ahead, to, end);
    const next = plan < MOST_PLANS ? nextHalt(waiting, free.course, speed) : null;
    if (!next) {
      built.addUpTo(free.course, Infinity);
      return built;
    }
    const { halt, braking } = next;
    built.addUpTo(free.course, braking.time);
    const stops = braking.time + braking.speed / braking.rate;
    const goes = halt.signal ? nextGreen(halt.signal, braking.time) + REACTION : stops + halt.stay;
    const down = ramp(braking.time, braking.speed, 0, braking.rate, goes - braking.time);
    const stopping = follow(
      braking,
      [...down, { until: Infinity, speed: 0 }],
      ahead,
      to,
      Math.min(goes, end)
    );
    const reached = placeOf(stopping.course, stops);
    const heldAt = stopping.heldAt ?? -Infinity;
    const isHeld = goes >= stops && heldAt > braking.time + SOON && halt.place - reached > NEAR_ENOUGH;
    // one who was stopped short by a tail ahead looks again where that happened; one who stopped has seen this halt
    time = isHeld ? heldAt : Math.min(goes, end);
    if (!isHeld) waiting = waiting.filter((each) => each.place > halt.place);
    built.addUpTo(stopping.course, time);
    if (time >= end) return built;
    place = placeOf(stopping.course, time);
    speed = goes < stops ? braking.speed - braking.rate * (goes - braking.time) : 0;
    if (isHeld) speed = Math.max(0, speedOf(stopping.course, time));
  }
}

/** The first at which the course must stop, entered with a speed. */
function nextHalt(halts: readonly Halt[], course: Course, speed: number) {
  for (const halt of halts) {
    const braking = brakingFor(course, halt, speed);
    if (braking) return { halt, braking };
  }
  return null;
}

/** Where and when its front appears: at the stretch's beginning, or at the lane's start where somebody slower is still there. */
function entryOf({ at, speed }: Driver, ahead: Ahead | null, from: number): { time: number; place: number } {
  const wanted = at + from / speed;
  const room = roomAt(ahead, from);
  if (wanted < room && roomAt(ahead, 0) <= at) return { time: at, place: 0 };
  return { time: Math.max(wanted, room), place: from };
}
