/** Traffic that a drawing is tried with. */
import { z } from 'zod';
import { BOUNDS, COUNTS } from '../bounds';
import { id, whole, within } from './basics';

const signal = z.looseObject({
  cycle_s: within(BOUNDS.cycle),
  /** Of each cycle, from its start. */
  greenFrom_s: within({ min: 0, max: BOUNDS.cycle.max }),
  green_s: within({ min: 0, max: BOUNDS.cycle.max }),
  /** Stop line: metres along the lane from its start. */
  line_m: within(BOUNDS.coordinate)
});

/** Traffic of one lane, drawn by lot from its seed. */
const stream = z.looseObject({
  lane: id,
  /** Vehicles an hour. */
  flow_per_h: within(BOUNDS.flow),
  speed_m_s: within(BOUNDS.speed),
  /** Standard deviation of the speeds over their mean. */
  speedSpread: within({ min: 0, max: 0.5 }).default(0.1),
  /** Front to front, s. */
  leastHeadway_s: within({ min: 0.5, max: 60 }).default(1.8),
  /** Which vehicles, each with its share; the shares count against their sum. */
  mix: z
    .array(z.looseObject({ vehicle: id, share: within({ min: 0, max: 1_000 }) }))
    .min(1)
    .max(COUNTS.vehicles),
  /** Of the paths to the right of the lane's middle, metres: standard deviation. */
  wander_m: within({ min: 0, max: 2 }).default(0),
  signal: signal.nullable().default(null)
});

/** One vehicle that somebody wants to see. */
const arrival = z.looseObject({
  lane: id,
  vehicle: id,
  /** When its front is at the lane's start, s. */
  at_s: within(BOUNDS.seconds),
  speed_m_s: within(BOUNDS.speed),
  /** To the right of the lane's middle, metres. */
  offset_m: within({ min: -20, max: 20 }).default(0),
  /** Stands with its front at this place, metres along the lane, for so long. */
  stop: z
    .looseObject({ at_m: within(BOUNDS.coordinate), for_s: within(BOUNDS.seconds) })
    .nullable()
    .default(null)
});

export const traffic = z.looseObject({
  seed: whole(0, 2 ** 31 - 1).default(1),
  duration_s: within({ min: 1, max: BOUNDS.seconds.max }).default(300),
  streams: z.array(stream).max(COUNTS.lanes).default([]),
  arrivals: z.array(arrival).max(COUNTS.arrivals).default([])
});
