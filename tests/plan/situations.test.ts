import { describe, expect, it } from 'vitest';
import { demoSite } from '#plan/demo';
import { contains } from '#plan/geometry/polygons';
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

  it('does not give two neighbours on one unit the same setting', () => {
    for (const unit of site.units) {
      const used = site.circuits.filter(({ channel }) => channel?.unit === unit.id);
      used.slice(1).forEach((circuit, index) => {
        expect(
          circuit.channel?.frequencySetting === used[index]?.channel?.frequencySetting && used.length === 2
        ).toBe(false);
      });
    }
  });

  it('keeps the loops clear of covers by 0.3 m: 1 to 2 ft, City of Everett provisions', () => {
    const covers = site.marks.filter(({ kind }) => kind === 'cover').flatMap(({ points }) => points);
    for (const cover of covers)
      for (const { shape } of site.loops) {
        expect(contains(outlineOf(shape), cover)).toBe(false);
        expect(Math.hypot(cover[0] - centreOf(shape)[0], cover[1] - centreOf(shape)[1])).toBeGreaterThan(
          0.9 + 0.3
        );
      }
  });
});

describe('the demo', () => {
  it('is the stop-line sample', () => {
    expect(demoSite()).toEqual(samples.find(({ name }) => name.startsWith('stop-line'))?.site);
    expect(demoSite().loops.length).toBeGreaterThanOrEqual(3);
    expect(demoSite().probes.map(({ vehicle }) => vehicle)).toEqual(['car']);
  });
});
