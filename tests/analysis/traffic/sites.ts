/** A straight street of 200 m with one lane, and what drives on it. */
import type { Trajectory } from '#analysis/calls/results';
import { finish } from '#analysis/steps';
import { trajectoriesInSteps } from '#analysis/traffic/trajectories';
import { emptySite } from '#plan/read';
import type { Arrival, Signal, Site, Stream } from '#plan/schema';

export const CAR_LENGTH = 4.4;

/** The built-in vehicles keep their sizes to themselves: these are of known length. */
const sized = (id: string, length: number) => ({
  id,
  name: id,
  parts: [{ kind: 'plate' as const, centre: [0, 0] as const, width: 1.6, length: 4, height: 0.45 }],
  body: { width: 1.8, length }
});

export const street = (given: {
  streams?: readonly Stream[];
  arrivals?: readonly Arrival[];
  seed?: number;
}): Site => ({
  ...emptySite('Weighbridge Lane'),
  lanes: [
    {
      id: 'lane1',
      name: '',
      centreline: [
        [0, 0],
        [0, 200]
      ],
      width: 3.5
    }
  ],
  vehicles: [sized('short', CAR_LENGTH), sized('long', 12)],
  traffic: {
    seed: given.seed ?? 1,
    duration_s: 600,
    streams: given.streams ?? [],
    arrivals: given.arrivals ?? []
  }
});

export const stream = (given: Partial<Stream> = {}): Stream => ({
  lane: 'lane1',
  flow_per_h: 600,
  speed_m_s: 14,
  speedSpread: 0,
  leastHeadway_s: 1.8,
  mix: [{ vehicle: 'short', share: 1 }],
  wander_m: 0,
  signal: null,
  ...given
});

export const arrival = (given: Partial<Arrival> = {}): Arrival => ({
  lane: 'lane1',
  vehicle: 'short',
  at_s: 10,
  speed_m_s: 10,
  offset_m: 0,
  stop: null,
  ...given
});

export const signal = (given: Partial<Signal> = {}): Signal => ({
  cycle_s: 60,
  greenFrom_s: 0,
  green_s: 25,
  line_m: 150,
  ...given
});

export const drivenOn = (site: Site, duration = site.traffic!.duration_s): readonly Trajectory[] =>
  finish(trajectoriesInSteps(site, site.traffic!, duration));

export const lengthOf = ({ vehicle }: Trajectory): number => (vehicle === 'long' ? 12 : CAR_LENGTH);

/** Of the front, metres; null while it is not there. */
export const frontAt = (trajectory: Trajectory, time: number): number | null => {
  const { times, places } = trajectory;
  const last = times.length - 1;
  if (time < times[0]! || time > times[last]!) return null;
  const k = Math.max(
    1,
    times.findIndex((each) => each >= time)
  );
  const share = (time - times[k - 1]!) / (times[k]! - times[k - 1]!);
  return places[k - 1]! + share * (places[k]! - places[k - 1]!) + lengthOf(trajectory) / 2;
};

/** When the front is first at a place. */
export const timeOfFront = (trajectory: Trajectory, place: number): number => {
  const { times, places } = trajectory;
  const middle = place - lengthOf(trajectory) / 2;
  const k = places.findIndex((each) => each >= middle);
  if (k < 1) return k === 0 ? times[0]! : Infinity;
  const share = (middle - places[k - 1]!) / (places[k]! - places[k - 1]!);
  return times[k - 1]! + share * (times[k]! - times[k - 1]!);
};
