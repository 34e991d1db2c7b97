/** When a vehicle is over the loops, and where it would trip and release by itself. */
import { describe, expect, it } from 'vitest';
import { ownZoneOf, passageOf } from '#analysis/calls/passages';
import { rulesOf } from '#analysis/calls/rules';
import type { Channel } from '#plan/schema';
import { curve, rules } from './script';

const given = rules({ trip: 0.001, release: 0.0005 });
/** Up over 2 m, then a long tail: 0.0008 from 4 m to 10 m lies between release and threshold. */
const TAILED = curve([0, 0], [2, 0.004], [4, 0.0008], [10, 0.0008], [12, 0]);
const own = ownZoneOf(TAILED, given);
const driven = (...nodes: readonly (readonly [number, number])[]) => ({
  vehicle: 'car',
  lane: 'lane1',
  offset_m: 0,
  times: Float64Array.from(nodes, ([time]) => time),
  places: Float64Array.from(nodes, ([, place]) => place)
});
const EXTENT = { from: 1, to: 3 };

describe('where a vehicle trips and releases', () => {
  it('is from the threshold to the release, however long the way between the two', () => {
    // 2·0.001/0.004 m, and 10 m + 2·(1 − 0.0005/0.0008) m
    expect(own.trip).toBeCloseTo(0.5, 9);
    expect(own.release).toBeCloseTo(10.75, 9);
    expect(own).toMatchObject({ peak: 2, response: 0.004 });
  });

  it('is nowhere for one that stays under the threshold', () => {
    expect(ownZoneOf(curve([0, 0], [2, 0.0009], [4, 0]), given).trip).toBeNull();
  });
});

describe('a passage', () => {
  it('is the stay of its body, with the zone and the peak of its response', () => {
    // 2 m/s from −10 m, body 4 m long: over the loops from −1 m to 5 m
    const passage = passageOf(7, driven([0, -10], [20, 30]), 4, EXTENT, own, 100)!;
    expect(passage).toMatchObject({ vehicle: 7, isOver: true });
    expect(passage.stay).toEqual({ from: 4.5, to: 7.5 });
    expect(passage.zone!.from).toBeCloseTo(5.25, 9);
    expect(passage.zone!.to).toBeCloseTo(10.375, 9);
    expect(passage.peak).toEqual({ time: 6, response: 0.004 });
  });

  it('of one that stops short of its strongest place until the end has not had it', () => {
    const passage = passageOf(0, driven([0, -10], [5.125, 0.25], [50, 0.25]), 4, EXTENT, own, 50)!;
    expect(passage).toMatchObject({ zone: null, isOver: false });
    expect(passage.peak.response).toBe(0);
  });

  it('is none for one that ends before the loops', () => {
    expect(passageOf(0, driven([0, -10], [4, -2]), 4, EXTENT, own, 50)).toBeNull();
  });
});

it('a release at the very threshold counts as a thousandth below: no unit would flutter there', () => {
  const channel: Channel = {
    unit: 'U1',
    number: 1,
    frequencySetting: 1,
    frequency_Hz: null,
    tripThreshold: 0.002,
    releaseRatio: 1,
    output: { mode: 'presence', delay_s: 0, extension_s: 0, longestPresence_s: null }
  };
  expect(rulesOf(channel).release).toBeCloseTo(0.001998, 12);
  expect(rulesOf({ ...channel, releaseRatio: 0.6 }).release).toBeCloseTo(0.0012, 12);
});
