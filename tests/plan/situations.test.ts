import { describe, expect, it } from 'vitest';
import { demoSite } from '#plan/demo';
import { distance } from '#plan/geometry/points';
import { sidesOf } from '#plan/geometry/polygons';
import { distanceToSegment } from '#plan/geometry/segments';
import { readSite, writeSite } from '#plan/read';
import type { Lane, Site } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import { situations } from '#plan/situations/index';
import { samples } from './samples';

const laidOut: readonly (readonly [string, Site])[] = [
  ...situations.filter(({ id }) => id !== 'blank').map(({ id, build }) => [id, build()] as const),
  ...samples.map(({ name, site }) => [name, site] as const)
];

const wiredIn = (site: Site) =>
  site.circuits.flatMap(({ strings }) => strings.flat().map(({ loop }) => loop));

function laneUnder(site: Site, id: string): Lane | undefined {
  const loop = site.loops.find((each) => each.id === id)!;
  return site.lanes.find(({ centreline, width }) => {
    const [from, to] = [centreline[0]!, centreline[1]!];
    return outlineOf(loop.shape).every((corner) => distanceToSegment(corner, { from, to }) <= width / 2);
  });
}

describe('situations', () => {
  it('cover the usual beginnings, each once, and end with an empty site', () => {
    expect(situations.map(({ id }) => id)).toEqual([
      'driveway-gate',
      'car-park-lane',
      'stop-line',
      'advance-loops',
      'counting-pair',
      'bicycle-stop-line',
      'blank'
    ]);
    expect(situations.at(-1)?.build()).toMatchObject({ loops: [], lanes: [], circuits: [] });
    for (const { title, description } of situations)
      expect(Math.min(title.length, description.length)).toBeGreaterThan(4);
  });

  it.each(situations)('$id is a sound document and a new one each time', ({ build }) => {
    const reading = readSite(writeSite(build()));
    expect(reading.ok ? reading.site : reading.problems).toEqual(build());
    expect(build()).not.toBe(build());
  });
});

describe.each(laidOut)('the layout of %s', (_, site) => {
  it('wires every loop once and gives every circuit a channel of its own', () => {
    expect(wiredIn(site).sort()).toEqual(site.loops.map(({ id }) => id).sort());
    const channels = site.circuits.map(({ channel }) => `${channel?.unit} ${channel?.number}`);
    expect(new Set(channels).size).toBe(site.circuits.length);
  });

  it('keeps every loop inside a lane and asks every circuit for a vehicle', () => {
    for (const { id } of site.loops) expect(laneUnder(site, id), id).toBeDefined();
    for (const { detect } of site.circuits) expect(detect.length).toBeGreaterThan(0);
  });

  it('gives the channels of one unit frequencies of their own, or loops that lie far apart', () => {
    const usedBy = site.circuits.map(({ strings, channel }) => {
      const loop = site.loops.find(({ id }) => id === strings[0]?.[0]?.loop)!;
      return { unit: channel!.unit, setting: channel!.frequencySetting, at: centreOf(loop.shape) };
    });
    usedBy.forEach((one, index) => {
      for (const other of usedBy.slice(0, index)) {
        const same = one.unit === other.unit && one.setting === other.setting;
        expect(same && distance(one.at, other.at) < 20).toBe(false);
      }
    });
    expect(usedBy.length).toBeGreaterThan(0);
  });
});

describe('the demo', () => {
  const { loops, marks, probes } = demoSite();

  it('is the stop-line sample', () => {
    expect(writeSite(demoSite())).toBe(samples.find(({ name }) => name.startsWith('stop-line'))?.text);
  });

  it('shows a car over several loops', () => {
    expect(loops.length).toBeGreaterThanOrEqual(3);
    expect(probes.map(({ vehicle }) => vehicle)).toEqual(['car']);
  });

  it('keeps the loops clear of the cover by 2 ft: City of Everett provisions', () => {
    const [cover] = marks.filter(({ kind }) => kind === 'cover').flatMap(({ points }) => points);
    for (const { shape } of loops)
      for (const side of sidesOf(outlineOf(shape)))
        expect(distanceToSegment(cover!, side)).toBeGreaterThan(0.61);
  });
});
