/** Drawings with traffic, from end to end. */
import { describe, expect, it } from 'vitest';
import { callsInSteps } from '#analysis/calls/simulate';
import { createMeans } from '#analysis/means';
import { profilesAlong } from '#analysis/passing/profile';
import { wayOf } from '#analysis/passing/way';
import { zonesOf } from '#analysis/passing/zones';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import { vehicleOf } from '#plan/catalogue/vehicles';
import * as edits from '#plan/edits/index';
import type { Arrival, Site } from '#plan/schema';
import { stopLine } from '#plan/situations/stop-line';
import { PATIENCE } from '../../physics/support/arbitraries';

const means = createMeans();
const ask = createAnswerer(means);
const SPEED = 10;

const arrival = (given: Partial<Arrival> = {}): Arrival => ({
  lane: 'lane2',
  vehicle: 'car',
  at_s: 5,
  speed_m_s: SPEED,
  offset_m: 0,
  stop: null,
  ...given
});
const withArrivals = (...arrivals: Arrival[]): Site =>
  edits.setTraffic(stopLine.build(), { seed: 1, duration_s: 60, streams: [], arrivals });
const simulate = (site: Site) => finish(ask('simulate-calls', site, {}))!;

describe('one car over a stop line', () => {
  const site = withArrivals(arrival());
  const { vehicles, channels, duration_s } = simulate(site);
  const own = channels.find(({ summary }) => summary.circuit === 'C2')!;

  it('is detected where its profile says, when it is there', () => {
    const car = vehicleOf('car', site)!;
    const way = wayOf(site, { kind: 'lane', id: 'lane2' })!;
    const profiles = profilesAlong(means.surveyor.survey(site), car, means.bodies.get(car), way, 0);
    const { tripThreshold, releaseRatio } = site.circuits.find(({ id }) => id === 'C2')!.channel!;
    const profile = profiles.find(({ circuit }) => circuit === 'C2')!;
    const zones = zonesOf(profile, tripThreshold, tripThreshold * releaseRatio);
    expect(zones.length).toBeGreaterThan(0);
    // its middle is half its length behind its front, which is at the lane's start at 5 s
    const at = (place: number): number => 5 + (place + car.bodyLength / 2) / SPEED;
    const expected = zones.flatMap(({ from_m, to_m }) => [at(from_m), at(to_m)]);
    const events = own.events.filter(({ kind }) => kind === 'detected' || kind === 'left');
    expect(events).toHaveLength(expected.length);
    // a thinned profile moves a crossing by less than the time for 2 mm
    events.forEach(({ time_s }, k) => expect(Math.abs(time_s - expected[k]!)).toBeLessThan(2e-4));
    expect(duration_s).toBe(60);
    expect(vehicles).toHaveLength(1);
  });

  it('is a call where it is served, and none in the lane beside', () => {
    expect(own.summary).toMatchObject({ vehicles: 1, calls: 1, missed: 0, merged: 0, split: 0, false: 0 });
    const other = channels.find(({ summary }) => summary.circuit === 'C1')!;
    expect(other.summary).toMatchObject({ vehicles: 0, calls: 0 });
  });

  it('was there while its body was over the span of both loops', () => {
    // from 6.0 m before the line's loop pair's rear end to its front end: loops from −6.8 m to −0.6 m, lane from −25 m
    const [stay] = own.stays;
    const car = vehicleOf('car', site)!;
    expect(stay!.from_s).toBeCloseTo(5 + (25 - 6.8) / SPEED, 6);
    expect(stay!.to_s).toBeCloseTo(5 + (25 - 0.6 + car.bodyLength) / SPEED, 6);
  });

  it('can be looked at closely', () => {
    const traces = finish(ask('trace-calls', site, { from_s: 5, to_s: 12 }));
    expect(traces.map(({ circuit }) => circuit)).toEqual(['C1', 'C2']);
    const { times, responses, references } = traces[1]!;
    expect(times[0]).toBe(5);
    expect(times[times.length - 1]).toBe(12);
    expect(Math.max(...responses)).toBeGreaterThan(0.005);
    expect(references).toHaveLength(times.length);
  });
});

it('who drives beside the lane is no vehicle of it', () => {
  const counted = (offset_m: number) =>
    simulate(withArrivals(arrival({ offset_m }))).channels.find(({ summary }) => summary.circuit === 'C2')!;
  const { width } = stopLine.build().lanes.find(({ id }) => id === 'lane2')!;
  expect(counted(width / 2 - 0.1).summary).toMatchObject({ vehicles: 1 });
  expect(counted(20).summary).toMatchObject({ vehicles: 0, calls: 0, missed: 0 });
});

it('says how many wanted to drive, also where there is no room for them', () => {
  const stuck = withArrivals(
    arrival({ stop: { at_m: 20, for_s: 50 } }),
    ...Array.from({ length: 30 }, (_, k) => arrival({ at_s: 6 + k }))
  );
  const { asked, vehicles } = simulate(stuck);
  expect(asked).toEqual({ duration_s: 60, vehicles: 31 });
  expect(vehicles.length).toBeLessThan(12);
});

it(
  'the same drawing says the same again, from nothing',
  () => {
    const site = edits.setTraffic(stopLine.build(), {
      ...edits.usualTraffic(stopLine.build()),
      duration_s: 120
    });
    const first = finish(callsInSteps(site, createMeans()));
    const again = finish(callsInSteps(site, createMeans()));
    expect(again).toEqual(first);
    expect(first!.vehicles.length).toBeGreaterThan(10);
    expect(first!.channels.every(({ summary }) => summary.calls > 0)).toBe(true);
  },
  PATIENCE
);

it('is kept while nothing of it changes, and made anew after an edit', () => {
  const site = withArrivals(arrival());
  const copy = JSON.parse(JSON.stringify(site)) as Site;
  const known = simulate(site);
  expect(simulate(copy)).toBe(known);
  expect(simulate({ ...copy, name: 'Elsewhere' })).toBe(known);
  const weaker = edits.updateArrival(site, 0, { vehicle: 'bicycle' });
  expect(simulate(weaker)).not.toBe(known);
});

it('answers nothing where there is no traffic', () => {
  const site = stopLine.build();
  expect(finish(ask('simulate-calls', site, {}))).toBeNull();
  expect(finish(ask('trace-calls', site, { from_s: 0, to_s: 10 }))).toEqual([]);
});

it('ends where it is told', () => {
  const site = withArrivals(arrival(), arrival({ at_s: 30 }));
  const picture = finish(ask('simulate-calls', site, { until_s: 20 }))!;
  expect(picture.duration_s).toBe(20);
  expect(picture.vehicles).toHaveLength(1);
});

it('ends where it is told, also after it has been asked for all of it', () => {
  const site = withArrivals(arrival(), arrival({ at_s: 30 }));
  expect(simulate(site).duration_s).toBe(60);
  expect(finish(ask('simulate-calls', site, { until_s: 20 }))!.duration_s).toBe(20);
});

it('sees each vehicle on its own path', () => {
  const site = withArrivals(arrival(), arrival({ at_s: 30, offset_m: 0.85 }));
  const times = finish(ask('trace-calls', site, { from_s: 0, to_s: 60 }))[1]!;
  const most = (from: number, to: number): number =>
    Math.max(...times.responses.filter((_, k) => times.times[k]! > from && times.times[k]! < to));
  // half over the loop it changes far less
  expect(most(25, 60)).toBeLessThan(0.7 * most(0, 25));
});

it('holds a standing car, and pulses once for it', () => {
  const standing = withArrivals(arrival({ stop: { at_m: 24.5, for_s: 30 } }));
  const held = simulate(standing).channels.find(({ summary }) => summary.circuit === 'C2')!;
  expect(held.calls).toHaveLength(1);
  expect(held.calls[0]!.to_s - held.calls[0]!.from_s).toBeGreaterThan(30);
  const pulsing: Site = {
    ...standing,
    circuits: standing.circuits.map((circuit) => ({
      ...circuit,
      channel: circuit.channel && {
        ...circuit.channel,
        output: { mode: 'pulse', delay_s: 0, extension_s: 0, longestPresence_s: null }
      }
    }))
  };
  const pulsed = simulate(pulsing).channels.find(({ summary }) => summary.circuit === 'C2')!;
  expect(pulsed.calls[0]!.to_s - pulsed.calls[0]!.from_s).toBeCloseTo(0.125, 9);
  expect(pulsed.events.filter(({ kind }) => kind === 'tuned-out').length).toBeGreaterThan(0);
});
