import { describe, expect, it } from 'vitest';
import {
  addWiredLoop,
  connectCircuit,
  extractThings,
  insertCopies,
  joinInSeries,
  newLoop,
  renameCircuit,
  renameLoop,
  renameUnit,
  setReversed,
  splitCircuit,
  updateChannel,
  updateCircuit,
  updateUnit
} from '#plan/edits/index';
import { COUNTS } from '#plan/bounds';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { emptySite } from '#plan/read';
import type { Site } from '#plan/schema';
import { fullSite } from './site';

const loopsOf = (site: Site) =>
  site.circuits.map(({ strings }) => strings.map((string) => string.map(({ loop }) => loop)));
const placesOf = (site: Site) =>
  site.circuits.map(({ channel }) => channel && [channel.unit, channel.number]);

describe('channels', () => {
  it('changes settings and refuses what the unit does not have', () => {
    const site = fullSite();
    expect(updateChannel(site, 'C1', { tripThreshold: 0.002 }).circuits[0]?.channel?.tripThreshold).toBe(
      0.002
    );
    expect(updateChannel(site, 'C1', { frequencySetting: 3 })).toBe(site);
    expect(updateChannel(site, 'C1', { number: 3 })).toBe(site);
    expect(updateChannel(site, 'C1', { unit: 'U9' })).toBe(site);
    expect(updateChannel(site, 'C1', { tripThreshold: 2 })).toBe(site);
    expect(updateChannel(site, 'C9', { number: 1 })).toBe(site);
  });

  it('changes places with the circuit that is in the way', () => {
    const next = updateChannel(fullSite(), 'C1', { number: 2 });
    expect(placesOf(next)).toEqual([['U1', 2], ['U1', 1]]); // prettier-ignore
    expect(next.circuits.map(({ channel }) => channel?.tripThreshold)).toEqual([0.001, 0.002]);
  });

  it('connects to the first free channel and disconnects', () => {
    const site = fullSite();
    const off = connectCircuit(site, 'C1', false);
    expect(placesOf(off)).toEqual([null, ['U1', 2]]);
    expect(placesOf(connectCircuit(off, 'C1', true))).toEqual([['U1', 1], ['U1', 2]]); // prettier-ignore
    expect(connectCircuit(site, 'C1', true)).toBe(site);
  });

  it('brings a new unit when all channels are taken', () => {
    const site = fullSite();
    const next = addWiredLoop(site, newLoop(site, site.loops[0]!.shape));
    expect(placesOf(next).at(-1)).toEqual(['U2', 1]);
    expect(next.units.at(-1)).toMatchObject({ channels: 2, scansInTurn: true });
  });

  it('starts a new circuit on the setting that is used least', () => {
    let site = updateChannel(fullSite(), 'C1', { frequencySetting: 2 });
    site = addWiredLoop(site, newLoop(site, site.loops[0]!.shape));
    expect(site.circuits.at(-1)?.channel?.frequencySetting).toBe(3);
  });

  it('keeps a unit large enough for what is connected to it', () => {
    const site = fullSite();
    expect(updateUnit(site, 'U1', { channels: 1 })).toBe(site);
    expect(updateUnit(site, 'U1', { inductanceRange_H: [2e-3, 2e-3] })).toBe(site);
    expect(updateUnit(site, 'U1', { channels: 4 }).units[0]?.channels).toBe(4);
    const onSecond = updateChannel(site, 'C1', { frequencySetting: 2 });
    expect(updateUnit(onSecond, 'U1', { settings_F: [1e-7] })).toBe(onSecond);
  });
});

describe('circuits', () => {
  it('changes lead-in, name and vehicles asked for', () => {
    const site = fullSite();
    const next = updateCircuit(site, 'C1', { name: 'Exit', detect: ['own', 'bicycle'] });
    expect(next.circuits[0]).toMatchObject({ name: 'Exit', detect: ['own', 'bicycle'] });
    expect(updateCircuit(site, 'C1', { leadIn: { cable: 'rope', length: 3 } })).toBe(site);
    expect(updateCircuit(site, 'C1', { leadIn: { cable: 'k1', length: -3 } })).toBe(site);
    expect(updateCircuit(site, 'C1', { detect: ['sledge'] })).toBe(site);
  });

  it('reverses one loop', () => {
    const site = fullSite();
    const next = setReversed(site, 'C1', 'L1', true);
    expect(next.circuits[0]?.strings).toEqual([[{ loop: 'L1', reversed: true }, { loop: 'L2', reversed: true }]]); // prettier-ignore
    expect(setReversed(next, 'C1', 'L1', true)).toBe(next);
    expect(setReversed(site, 'C1', 'L3', true)).toBe(site);
  });

  it('joins in series on the first channel and splits again', () => {
    const joined = joinInSeries(fullSite(), ['C2', 'C1']);
    expect(loopsOf(joined)).toEqual([[['L1', 'L2', 'L3']]]);
    expect(placesOf(joined)).toEqual([['U1', 1]]);
    expect(joined.readings).toHaveLength(2);
    const split = splitCircuit(joined, 'C1');
    expect(loopsOf(split)).toEqual([[['L1']], [['L2']], [['L3']]]);
    expect(placesOf(split)).toEqual([['U1', 1], ['U1', 2], ['U2', 1]]); // prettier-ignore
    expect(joinInSeries(joined, ['C1', 'C7'])).toBe(joined);
  });
});

describe('renaming', () => {
  it('keeps every reference', () => {
    const site = renameUnit(renameCircuit(renameLoop(fullSite(), 'L2', 'Gate'), 'C1', 'Exit'), 'U1', 'Post');
    expect(loopsOf(site)[0]).toEqual([['L1', 'Gate']]);
    expect(site.circuits.map(({ channel }) => channel?.unit)).toEqual(['Post', 'Post']);
    expect(site.readings.map(({ circuit }) => circuit)).toEqual(['Exit', 'C2', undefined]);
  });

  it('refuses an id that is taken, empty, unprintable or the same', () => {
    const site = fullSite();
    for (const id of ['L2', '', 'a\u0007b', 'L1', 'x'.repeat(81)])
      expect(renameLoop(site, 'L1', id)).toBe(site);
    expect(renameCircuit(site, 'C1', 'C2')).toBe(site);
    expect(renameUnit(site, 'U7', 'U8')).toBe(site);
  });
});

describe('copies', () => {
  it('bring the wiring among the copied loops and nothing of the others', () => {
    const site = fullSite();
    const cut = extractThings(site, [{ kind: 'loop', id: 'L2' }, { kind: 'loop', id: 'L4' }]); // prettier-ignore
    expect(loopsOf(cut)).toEqual([[['L2']]]);
    const { site: next, things } = insertCopies(site, cut, [0, 5]);
    expect(things).toEqual([{ kind: 'loop', id: 'L5' }, { kind: 'loop', id: 'L6' }]); // prettier-ignore
    expect(next.circuits.at(-1)).toMatchObject({
      id: 'C3',
      strings: [[{ loop: 'L5', reversed: true }]],
      leadIn: { cable: 'k1', length: 40 },
      channel: { unit: 'U2', number: 1, tripThreshold: 0.001 }
    });
    expect(next.loops.at(-1)?.shape).toMatchObject({ centre: [12, 5] });
  });

  it('bring their own cable and vehicle into another site', () => {
    const all = fullSite();
    const things = [
      { kind: 'loop', id: 'L1' },
      { kind: 'lane', id: 'lane1' },
      { kind: 'probe', id: '0' },
      { kind: 'probe', id: '1' }
    ] as const;
    const { site } = insertCopies(emptySite(), extractThings(all, things), [0, 0]);
    expect(site.circuits[0]?.leadIn).toEqual({ cable: 'k1', length: 40 });
    expect(site.cables).toEqual(all.cables);
    expect(site.lanes[0]).not.toHaveProperty('largestVehicle');
    expect(site.probes).toHaveLength(2);
    for (const probe of site.probes) expect(vehicleOf(probe.vehicle, site)).toBeDefined();
    expect(site.vehicles).toEqual(
      all.vehicles.filter(({ id }) => site.probes.some(({ vehicle }) => vehicle === id))
    );
  });

  it('are refused whole when the site is full', () => {
    const site = fullSite();
    const probes = Array.from({ length: COUNTS.probes }, () => site.probes[0]!);
    const full = { ...site, probes };
    const { site: next, things } = insertCopies(
      full,
      extractThings(full, [{ kind: 'probe', id: '0' }]),
      [1, 0]
    );
    expect(next).toBe(full);
    expect(things).toEqual([]);
  });
});
