/** Findings about what traffic comes to, and which of several passes they tell of. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { CallSummary } from '#analysis/calls/results';
import { createContext } from '#analysis/findings/finding';
import { miscounts } from '#analysis/findings/miscounts';
import { countedTwice, nextLaneAtEdge } from '#analysis/findings/passes';
import type { PassReadout } from '#analysis/passing/results';
import type { Assessment } from '#analysis/results';
import { PATIENCE } from '../../physics/support/arbitraries';
import { channel, circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

const site = siteOf({
  lanes: [lane('a', 0), lane('b', 4)],
  loops: [loop('L1', square(0, 0))],
  circuits: [circuit('C1', ['L1'], { name: 'Exit', channel: channel('U1', 1) })],
  units: [unit('U1')],
  vehicles: QUICK_VEHICLES
});
const assessed = createAssessor().assess(site);
const contextWith = (over: Partial<Assessment>) => createContext(site, { ...assessed, ...over });

const summary = (over: Partial<CallSummary>): CallSummary => ({
  circuit: 'C1',
  vehicles: 20,
  calls: 20,
  missed: 0,
  merged: 0,
  split: 0,
  false: 0,
  occupancy: 0.1,
  trueOccupancy: 0.1,
  ...over
});
const told = (over: Partial<CallSummary>) => miscounts(contextWith({ calls: [summary(over)] }));

describe('what traffic comes to', { timeout: PATIENCE }, () => {
  it('is no finding while every vehicle has its call', () => {
    expect(told({})).toEqual([]);
    expect(miscounts(contextWith({ calls: [summary({ circuit: 'gone', missed: 3 })] }))).toEqual([]);
  });

  it('is a caution where one is missed or called for nothing, a note where they are only counted wrong', () => {
    expect(told({ missed: 1, calls: 19 })).toMatchObject([
      { severity: 'caution', subject: 'C1', selects: ['L1'] }
    ]);
    expect(told({ false: 1, calls: 21 })).toMatchObject([{ severity: 'caution' }]);
    expect(told({ merged: 1, calls: 19 })).toMatchObject([{ severity: 'note' }]);
    expect(told({ split: 1, calls: 21 })).toMatchObject([{ severity: 'note' }]);
  });

  it('names all of it', () => {
    const [finding] = told({ calls: 18, missed: 2, merged: 3, split: 3 });
    expect(finding!.message).toBe(
      'With the traffic of this site Exit makes 18 calls for 20 vehicles: 2 missed, 3 merged into the call before, 3 called more than once.'
    );
  });
});

const pass = (over: Partial<PassReadout>): PassReadout => ({
  circuit: 'C1',
  vehicle: 'car',
  lane: 'a',
  isServed: true,
  wanted: true,
  offset_m: 0,
  response: 0.02,
  at: [0, 0],
  heading: 90,
  margin: 20,
  detections: 2,
  zone: { length_m: 9, from: [0, -4], to: [0, 5] },
  gaps: [
    { at: [0, 0], response: 0.0003, length_m: 1.5 },
    { at: [0, 2], response: 0.0004, length_m: 3.5 },
    { at: [0, 4], response: 0.0005, length_m: 0.5 }
  ],
  ...over
});

describe('passes', { timeout: PATIENCE }, () => {
  it('that count twice are told by the longest gap, and only of lanes served', () => {
    const [finding] = countedTwice(contextWith({ passes: [pass({})] }));
    expect(finding!.message).toContain('over 3.50 m its response falls to 0.0400 %');
    expect(countedTwice(contextWith({ passes: [pass({ isServed: false })] }))).toEqual([]);
  });

  it('at the edge of the next lane are told of that lane alone, the strongest of them', () => {
    const own = pass({ offset_m: 0.5, detections: 1 });
    expect(nextLaneAtEdge(contextWith({ passes: [own] }))).toEqual([]);
    const beside = [0.002, 0.004, 0.003].map((response) =>
      pass({ lane: 'b', isServed: false, offset_m: -0.9, detections: 1, response })
    );
    expect(nextLaneAtEdge(contextWith({ passes: beside }))[0]!.message).toContain('by −0.400 %');
  });
});
