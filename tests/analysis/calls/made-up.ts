/** Vehicles with profiles made up of straight lines, over a loop from 0 m to 2 m of lane 1. */
import { channelInSteps, type SimulatedChannel } from '#analysis/calls/channel';
import type { Trajectory } from '#analysis/calls/results';
import { NOTHING, type Curve } from '#analysis/calls/signal';
import { finish } from '#analysis/steps';
import type { Channel } from '#plan/schema';
import { curve } from './script';

export const TRIP = 0.0016;
/** 0.6 of it. */
export const RELEASE = 0.00096;
const LENGTH = 4;

/** The response rises over the two metres to −1 m and falls over the two from 3 m on. */
const plateau = (response: number): Curve => curve([-3, 0], [-1, response], [3, response], [5, 0]);

export const PROFILES: Readonly<Record<string, Curve>> = {
  car: plateau(0.02),
  high: plateau(0.004),
  weak: plateau(0.001),
  /** Two axles and a middle that is too high. */
  lorry: curve([-6, 0], [-5, 0.02], [-4, 0.0005], [4, 0.0005], [5, 0.02], [6, 0]),
  /** The same with a middle that is low enough. */
  twin: curve([-6, 0], [-5, 0.02], [-4, 0.004], [4, 0.004], [5, 0.02], [6, 0]),
  /** What lane 2 does to the circuit. */
  beside: plateau(0.003),
  besideWeak: plateau(0.001)
};

export interface MadeUp {
  readonly vehicle: string;
  readonly lane?: string;
  /** When it would be at 0 m, s, and its speed before and after a stop, m/s. */
  readonly at: number;
  readonly speed?: number;
  readonly stop?: { readonly place: number; readonly seconds: number };
}

const trajectoryOf = ({ vehicle, lane = 'lane1', at, speed = 10, stop }: MadeUp): Trajectory => {
  const nodes: (readonly [number, number])[] = [[at - 50 / speed, -50]];
  const later = stop?.seconds ?? 0;
  if (stop) {
    nodes.push([at + stop.place / speed, stop.place]);
    nodes.push([at + stop.place / speed + later, stop.place]);
  }
  nodes.push([at + later + 50 / speed, 50]);
  return {
    vehicle,
    lane,
    offset_m: 0,
    times: Float64Array.from(nodes, ([time]) => time),
    places: Float64Array.from(nodes, ([, place]) => place)
  };
};

const channelWith = (output: Partial<Channel['output']>): Channel => ({
  unit: 'U1',
  number: 1,
  frequencySetting: 1,
  frequency_Hz: null,
  tripThreshold: TRIP,
  releaseRatio: 0.6,
  output: {
    mode: 'presence',
    delay_s: 0,
    extension_s: 0,
    longestPresence_s: null,
    adaptation_s: 1e6,
    ...output
  }
});

/** Lane 1 is served, every other is not. */
export const simulated = (
  drivers: readonly MadeUp[],
  output: Partial<Channel['output']> = {},
  end = 100
): SimulatedChannel => {
  const vehicles = drivers.map(trajectoryOf);
  return finish(
    channelInSteps({
      circuit: 'C1',
      channel: channelWith(output),
      end,
      vehicles,
      profileOf: (vehicle) => PROFILES[vehicles[vehicle]!.vehicle] ?? NOTHING,
      lengthOf: () => LENGTH,
      extents: new Map([['lane1', { from: 0, to: 2, beside: 1.75 }]])
    })
  );
};
