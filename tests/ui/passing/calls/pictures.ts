/** Simulations made by hand: what the screen shows does not depend on how they were computed. */
import type { Cause, CallsPicture, ChannelCalls, Mistake, Trajectory } from '#analysis/calls/results';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';

/** A lane that goes 20 m up the plan and then 20 m to the right; one circuit in it, a signal at 18 m. */
export function bentSite(more: object = {}): Site {
  const reading = readSite(
    JSON.stringify({
      format: 'kerfline-site',
      version: 1,
      name: 'Cooper Wynd',
      lanes: [
        {
          id: 'lane1',
          name: 'Uphill',
          centreline: [
            [0, 0],
            [0, 20],
            [20, 20]
          ],
          width: 4
        },
        {
          id: 'lane2',
          name: 'Beside',
          centreline: [
            [4, 0],
            [4, 40]
          ],
          width: 4
        }
      ],
      loops: [
        {
          id: 'L1',
          turns: 3,
          wire: 'awg14',
          slot: { depth: 0.05, width: 0.008 },
          shape: { kind: 'rectangle', centre: [0, 10], width: 2, length: 2 }
        }
      ],
      circuits: [
        {
          id: 'C1',
          name: 'Front',
          strings: [[{ loop: 'L1' }]],
          leadIn: { cable: 'pair-14', length: 20 },
          channel: { unit: 'U1', number: 1, tripThreshold: 0.001, releaseRatio: 0.5 }
        }
      ],
      units: [
        {
          id: 'U1',
          channels: 1,
          scansInTurn: true,
          measuringTime_s: 0.005,
          settings_F: [2.2e-7],
          inductanceRange_H: [2e-5, 2e-3]
        }
      ],
      traffic: {
        streams: [
          {
            lane: 'lane1',
            flow_per_h: 300,
            speed_m_s: 10,
            mix: [{ vehicle: 'car', share: 1 }],
            signal: { cycle_s: 60, greenFrom_s: 50, green_s: 20, line_m: 18 }
          }
        ]
      },
      ...more
    })
  );
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}

/** Of a car on the bent lane, from (time, place) pairs. */
export const driven = (...points: readonly (readonly [time: number, place: number])[]): Trajectory => ({
  vehicle: 'car',
  lane: 'lane1',
  offset_m: 0,
  times: Float64Array.from(points, ([time]) => time),
  places: Float64Array.from(points, ([, place]) => place)
});

export const channelOf = (more: Partial<ChannelCalls> = {}): ChannelCalls => ({
  summary: {
    circuit: 'C1',
    vehicles: 0,
    calls: 0,
    missed: 0,
    merged: 0,
    split: 0,
    false: 0,
    occupancy: 0,
    trueOccupancy: 0
  },
  stays: [],
  events: [],
  calls: [],
  mistakes: [],
  ...more
});

export const pictureOf = (
  vehicles: readonly Trajectory[],
  channels: readonly ChannelCalls[] = [channelOf()],
  duration_s = 100
): CallsPicture => ({
  duration_s,
  asked: { duration_s, vehicles: vehicles.length },
  vehicles,
  channels
});

export const mistakeOf = (cause: Cause, more: Partial<Mistake> = {}): Mistake => ({
  kind: 'missed',
  time_s: 0,
  cause,
  vehicles: [],
  calls: [],
  response: null,
  needed: null,
  seconds: null,
  neededSeconds: null,
  ...more
});
