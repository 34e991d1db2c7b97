import { describe, expect, it } from 'vitest';
import * as edits from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Arrival, Site, Stream } from '#plan/schema';
import { situations } from '#plan/situations/index';
import { stopLineOf } from '#plan/stop-line';
import { fullSite } from './site';

const stream: Stream = {
  lane: 'lane1',
  flow_per_h: 300,
  speed_m_s: 12,
  speedSpread: 0.1,
  leastHeadway_s: 1.8,
  mix: [
    { vehicle: 'car', share: 3 },
    { vehicle: 'own', share: 1 }
  ],
  wander_m: 0,
  signal: null
};
const arrival: Arrival = { lane: 'lane1', vehicle: 'own', at_s: 3, speed_m_s: 8, offset_m: 0, stop: null };
const signal = { cycle_s: 60, greenFrom_s: 0, green_s: 30, line_m: 14 };

const busy = (): Site => edits.addArrival(edits.addStream(fullSite(), stream), arrival);

describe('traffic', () => {
  it('begins with the first thing that is added, and goes as a whole', () => {
    const site = fullSite();
    expect(site.traffic).toBeUndefined();
    const next = edits.addStream(site, stream);
    expect(next.traffic).toEqual({ seed: 1, duration_s: 300, streams: [stream], arrivals: [] });
    expect('traffic' in edits.removeTraffic(next)).toBe(false);
    expect(edits.removeTraffic(site)).toBe(site);
  });

  it('survives saving and opening', () => {
    const site = edits.setSignal(busy(), 0, signal);
    const reading = readSite(writeSite(site));
    expect(reading.ok && reading.site.traffic).toEqual(site.traffic);
  });

  it('has a seed and a duration', () => {
    const site = edits.updateTraffic(busy(), { seed: 7 });
    expect(site.traffic?.seed).toBe(7);
    expect(edits.updateTraffic(site, { duration_s: 900 }).traffic?.duration_s).toBe(900);
    expect(edits.updateTraffic(site, { seed: 7 })).toBe(site);
    expect(edits.updateTraffic(site, { seed: 1.5 })).toBe(site);
    expect(edits.updateTraffic(site, { duration_s: 0 })).toBe(site);
  });

  it('has streams that are told by their place', () => {
    const two = edits.addStream(busy(), { ...stream, flow_per_h: 10 });
    const changed = edits.updateStream(two, 1, { speed_m_s: 5 });
    expect(changed.traffic?.streams[1]).toEqual({ ...stream, flow_per_h: 10, speed_m_s: 5 });
    expect(changed.traffic?.streams[0]).toBe(two.traffic?.streams[0]);
    expect(edits.removeStream(changed, 0).traffic?.streams).toEqual([changed.traffic?.streams[1]]);
    expect(edits.updateStream(two, 2, { speed_m_s: 5 })).toBe(two);
    expect(edits.removeStream(two, 9)).toBe(two);
  });

  it('has arrivals that are told by their place', () => {
    const site = busy();
    const stop = { at_m: 9, for_s: 20 };
    expect(edits.updateArrival(site, 0, { stop }).traffic?.arrivals).toEqual([{ ...arrival, stop }]);
    expect(edits.updateArrival(site, 1, { stop })).toBe(site);
    expect(edits.removeArrival(site, 0).traffic?.arrivals).toEqual([]);
  });

  it('has signals', () => {
    const site = edits.setSignal(busy(), 0, signal);
    expect(site.traffic?.streams[0]?.signal).toEqual(signal);
    expect(edits.updateSignal(site, 0, { green_s: 20 }).traffic?.streams[0]?.signal?.green_s).toBe(20);
    expect(edits.updateSignal(busy(), 0, { green_s: 20 }).traffic?.streams[0]?.signal).toBeNull();
    expect(edits.setSignal(site, 0, null).traffic?.streams[0]?.signal).toBeNull();
  });

  const refused: readonly [string, (site: Site) => Site][] = [
    ['a stream on no lane', (site) => edits.addStream(site, { ...stream, lane: 'lane9' })],
    [
      'a stream of unknown vehicles',
      (site) => edits.updateStream(site, 0, { mix: [{ vehicle: 'tram', share: 1 }] })
    ],
    ['a stream of nothing', (site) => edits.updateStream(site, 0, { mix: [] })],
    ['a stream out of bounds', (site) => edits.updateStream(site, 0, { flow_per_h: -1 })],
    ['no number at all', (site) => edits.updateStream(site, 0, { speed_m_s: Number.NaN })],
    ['an arrival on no lane', (site) => edits.updateArrival(site, 0, { lane: '' })],
    ['an unknown arrival', (site) => edits.addArrival(site, { ...arrival, vehicle: 'tram' })],
    ['an arrival that never moves', (site) => edits.updateArrival(site, 0, { speed_m_s: 0 })],
    ['a signal without a cycle', (site) => edits.setSignal(site, 0, { ...signal, cycle_s: 0 })]
  ];
  it.each(refused)('is never %s', (_, edit) => {
    const site = busy();
    expect(edit(site)).toBe(site);
  });
});

describe('what goes with a lane', () => {
  it('is its traffic', () => {
    const other: Site = { ...busy(), lanes: [...busy().lanes, { ...busy().lanes[0]!, id: 'lane2' }] };
    const both = edits.addStream(other, { ...stream, lane: 'lane2' });
    const rest = edits.removeThings(both, [{ kind: 'lane', id: 'lane1' }]);
    expect(rest.traffic?.streams.map(({ lane }) => lane)).toEqual(['lane2']);
    expect(rest.traffic?.arrivals).toEqual([]);
    expect(readSite(writeSite(rest)).ok).toBe(true);
  });

  it('does not go into what is copied: a lane without the others could not name them', () => {
    const copied = edits.extractThings(busy(), [{ kind: 'loop', id: 'L1' }]);
    expect(copied.traffic).toBeUndefined();
    expect(readSite(writeSite(copied)).ok).toBe(true);
  });
});

describe('usual traffic', () => {
  it.each(situations.map(({ id, build }) => [id, build] as const))('fits %s', (_, build) => {
    const site = build();
    const traffic = edits.usualTraffic(site);
    const set = edits.setTraffic(site, traffic);
    expect(set.traffic).toBe(traffic);
    expect(new Set(traffic.streams.map(({ lane }) => lane))).toEqual(new Set(site.lanes.map(({ id }) => id)));
    for (const each of traffic.streams) {
      const lane = site.lanes.find(({ id }) => id === each.lane)!;
      const { along, mark } = stopLineOf(site, lane);
      const isOnlyCycles = each.mix.every(({ vehicle }) => vehicle.startsWith('bicycle'));
      if (isOnlyCycles) expect(each.speed_m_s).toBeLessThan(6);
      else if (each.signal) expect(each.signal.line_m).toBeCloseTo(along, 9);
      else if (mark) expect(each.speed_m_s).toBeLessThan(10);
    }
    // whatever must be detected comes
    const driving = new Set(traffic.streams.flatMap(({ mix }) => mix.map(({ vehicle }) => vehicle)));
    if (site.lanes.length > 0)
      for (const { detect } of site.circuits) for (const id of detect) expect(driving).toContain(id);
    expect(readSite(writeSite(set)).ok).toBe(true);
  });

  it('drives at round speeds of the site’s units', () => {
    const site = { ...fullSite(), displayUnits: 'imperial' as const };
    const lane = { ...site.lanes[0]!, centreline: [[0, -50], [0, 50]] as const }; // prettier-ignore
    expect(edits.usualStream({ ...site, lanes: [lane] }, lane).speed_m_s).toBeCloseTo(13.4112, 9);
    expect(edits.usualArrival(site, site.lanes[0]!)).toMatchObject({
      lane: 'lane1',
      vehicle: 'car',
      stop: null
    });
  });

  it('has cycles on their own among cars, and in a yard nobody faster than cars and no signal', () => {
    // 18 m of lane are a yard’s: 15 km/h
    const full = fullSite();
    const site: Site = {
      ...full,
      displayUnits: 'metric',
      circuits: full.circuits.map((each) => ({ ...each, detect: ['car', 'bicycle-steel'] }))
    };
    const [cars, cycles] = edits.usualTraffic(site).streams;
    expect(cars!.mix.map(({ vehicle }) => vehicle)).toEqual(['car', 'own']);
    expect(cycles!.mix.map(({ vehicle }) => vehicle)).toEqual(['bicycle-steel']);
    for (const each of [cars!, cycles!]) expect(each).toMatchObject({ speed_m_s: 15 / 3.6, signal: null });
  });
});
