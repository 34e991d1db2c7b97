/**
 * The traffic of a drawing as trajectories: the same for the same drawing, wherever and whenever it is computed. Nobody
 * drives into the one ahead and nobody overtakes; lanes do not see one another. A lane's signals are those of all its
 * streams, and everybody on the lane heeds them.
 */
import type { Site, Traffic } from '#plan/schema';
import type { Trajectory } from '../calls/results';
import { extentOn } from '../passing/profile';
import { wayOf, type Way } from '../passing/way';
import type { Steps } from '../steps';
import type { Course } from './course';
import { driversOn, type Driver } from './demand';
import { drive } from './drive';
import type { Ahead } from './follow';
import { haltAt, type Halt } from './halts';
import { STANDING_GAP } from './practice';

/** Before the lane's start and beyond its end a vehicle is followed for this far, or past the last loop, metres. */
const RUN = 20;
/** A loop that far beside a lane or beyond its ends is none of its own, metres. */
const REACH = 12;
/** A simulation with more vehicles ends earlier. */
const MOST_VEHICLES = 40_000;
/** Vehicles between two places where a newer drawing may come in. */
const AT_ONCE = 200;

/** What is simulated: less than what is asked where that would be more vehicles than can be kept. */
export const durationOf = (traffic: Traffic, until: number | null): number => {
  const wanted = Math.min(traffic.duration_s, until ?? Infinity);
  const perSecond = traffic.streams.reduce((sum, { flow_per_h }) => sum + flow_per_h / 3_600, 0);
  return perSecond * wanted > MOST_VEHICLES ? Math.floor(MOST_VEHICLES / perSecond) : wanted;
};

/** From where to where something happens along a lane: the lane itself and every loop about it. */
const spanOf = (way: Way, site: Site): readonly [number, number] => {
  const extents = site.loops
    .map(({ shape }) => extentOn(way, shape))
    .filter(({ from, to, left, right }) => {
      const beyond = Math.max(-to, from - way.length);
      return beyond < REACH && left < REACH && right > -REACH;
    });
  return [
    Math.min(0, ...extents.map(({ from }) => from)) - RUN,
    Math.max(way.length, ...extents.map(({ to }) => to)) + RUN
  ];
};

const trajectoryOf = ({ vehicle, offset }: Driver, lane: string, course: Course): Trajectory => ({
  vehicle: vehicle.id,
  lane,
  offset_m: offset,
  times: Float64Array.from(course.times),
  places: Float64Array.from(course.places, (front) => front - vehicle.bodyLength / 2)
});

/** In the order in which they appear. */
export function* trajectoriesInSteps(site: Site, traffic: Traffic, duration: number): Steps<Trajectory[]> {
  const trajectories: Trajectory[] = [];
  for (const { id } of site.lanes) {
    const way = wayOf(site, { kind: 'lane', id });
    if (!way) continue;
    const [from, to] = spanOf(way, site);
    const halts = traffic.streams.flatMap(({ lane, signal }) =>
      signal && lane === id ? [haltAt(signal)] : []
    );
    let ahead: Ahead | null = null;
    let done = 0;
    for (const driver of driversOn(id, site, traffic, duration)) {
      const { bodyLength } = driver.vehicle;
      const stretch = { from, to: to + bodyLength, end: duration };
      const bound: Ahead | null = ahead && { ...ahead, delay: driver.delay };
      const course: Course | null = drive(driver, bound, haltsOf(driver, halts), stretch);
      if (++done % AT_ONCE === 0) yield;
      // who finds no room to come in before the end keeps all others out
      if (!course) break;
      trajectories.push(trajectoryOf(driver, id, course));
      ahead = { course, delay: 0, back: bodyLength + STANDING_GAP };
    }
    yield;
  }
  return trajectories.sort((a, b) => a.times[0]! - b.times[0]!);
}

const haltsOf = ({ stop }: Driver, signals: readonly Halt[]): readonly Halt[] => {
  const own = stop ? [{ place: stop.at_m, signal: null, stay: stop.for_s }] : [];
  return [...signals, ...own].sort((a, b) => a.place - b.place);
};
