/** One hour of heavy traffic over eight channels: the simulation after the profiles are there, and a closer look at a part. */
import { callSimulatorOf } from '#analysis/calls/simulate';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { Site, Stream } from '#plan/schema';
import { bigSite } from '../support/big-site';

const HOUR = 3_600;

/** Four lanes of 1500 vehicles an hour, two of them with a signal. */
const busySite = (): Site => {
  const site = bigSite(8);
  const streams = site.lanes.map(({ id }, k): Stream => ({
    lane: id,
    flow_per_h: 1_500,
    speed_m_s: 13.9,
    speedSpread: 0.1,
    leastHeadway_s: 1.8,
    mix: [
      { vehicle: 'car', share: 70 },
      { vehicle: 'van', share: 15 },
      { vehicle: 'lorry', share: 8 },
      { vehicle: 'bus', share: 2 },
      { vehicle: 'motorcycle', share: 5 }
    ],
    wander_m: 0.15,
    signal: k < 2 ? { cycle_s: 80, greenFrom_s: 0, green_s: 60, line_m: 30 } : null
  }));
  return { ...site, traffic: { seed: 1, duration_s: HOUR, streams, arrivals: [] } };
};

const timed = <T>(work: () => T): { readonly answer: T; readonly time: number } => {
  const start = performance.now();
  const answer = work();
  return { answer, time: performance.now() - start };
};

export const measureCalls = (): void => {
  const site = busySite();
  const simulator = callSimulatorOf(createMeans());
  const simulate = (until_s: number) => timed(() => finish(simulator.simulate(site, { until_s })));
  const prepared = simulate(HOUR - 1);
  const { answer, time } = simulate(HOUR);
  const trace = timed(() => finish(simulator.trace(site, { from_s: 1_800, to_s: 1_860 })));
  const again = timed(() => finish(simulator.trace(site, { from_s: 1_860, to_s: 1_920 })));
  console.log(
    `\nan hour of ${answer?.vehicles.length} vehicles over ${answer?.channels.length} channels: ` +
      `${time.toFixed(0)} ms (budget 1000 ms), with vehicles and profiles from nothing ${prepared.time.toFixed(0)} ms; ` +
      `a minute of it in detail ${again.time.toFixed(1)} ms, ${trace.answer.reduce((sum, { times }) => sum + times.length, 0)} nodes`
  );
};
