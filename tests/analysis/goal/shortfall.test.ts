/** How far a finding is from going away: what a search holds values against that do not clear it. */
import { describe, expect, it } from 'vitest';
import { shortfallOf } from '#analysis/goal/shortfall';
import type { Judged } from '#analysis/goal/judge';
import type { Site } from '#plan/schema';
import { circuit, lane, loop, siteOf, square, unit } from '../support/sites';

const site = siteOf({
  lanes: [lane('lane1', 0)],
  loops: [loop('L1', square(0, 0))],
  circuits: [circuit('C1', ['L1'])],
  units: [unit('U1')]
});
const withThreshold = (tripThreshold: number): Site => ({
  ...site,
  circuits: site.circuits.map((each) => ({ ...each, channel: { ...each.channel!, tripThreshold } }))
});

/** As far as the measures look. */
const judged = (result: object): Judged => ({ findings: [], result }) as unknown as Judged;
const passing = (pass: object) => judged({ passes: [{ circuit: 'C1', ...pass }] });
const answering = (best: number, worst = best) =>
  judged({ circuits: [{ id: 'C1', responses: [{ vehicle: 'car', wanted: true, best, worst }] }] });

const gaps = [{ response: 0.0004, length_m: 1, at: [0, 0] }];
const CASES = [
  ['undetected', answering(-0.0004)],
  ['detected-in-part', answering(-0.005, -0.0004)],
  ['missed-at-edge', passing({ isServed: true, wanted: true, detections: 0, response: 0.0004 })],
  ['counted-twice', passing({ isServed: true, wanted: true, detections: 2, response: 0.01, gaps })],
  ['next-lane-edge', passing({ isServed: false, wanted: false, detections: 1, response: 0.004 })]
] as const;

describe.each(CASES)('of %s', (code, seen) => {
  const at = (tripThreshold: number): number =>
    shortfallOf({ code, subject: 'C1', severity: 'caution' }, seen, withThreshold(tripThreshold));

  it('it follows the threshold that decides it', () => {
    const [low, high] = [at(0.001), at(0.002)];
    expect(low).toBeGreaterThan(0);
    expect(high).not.toBeCloseTo(low, 3);
    // less of a threshold is farther away from where the neighbour's traffic stays, and nearer to where the own one is seen
    expect(Math.sign(high - low)).toBe(code === 'next-lane-edge' ? -1 : 1);
  });
});

describe('of a vehicle that does nothing', () => {
  const shortfall = (seen: Judged, code = 'undetected'): number =>
    shortfallOf({ code, subject: 'C1', severity: 'problem' }, seen, withThreshold(0.001));

  it('it is a number, the larger the less there is', () => {
    const [none, little] = [shortfall(answering(-0)), shortfall(answering(-0.0001))];
    expect(none).toBeCloseTo(1, 12);
    expect(little).toBeCloseTo(0.9, 12);
    expect(
      shortfall(passing({ isServed: true, wanted: true, detections: 0, response: 0 }), 'missed-at-edge')
    ).toBeCloseTo(1, 12);
  });

  it('what rounding leaves on the wrong side of nothing is no nearer than nothing', () => {
    expect(shortfall(answering(2e-16))).toBeGreaterThanOrEqual(shortfall(answering(-0)));
    expect(shortfall(answering(0, 2e-16), 'detected-in-part')).toBeGreaterThanOrEqual(
      shortfall(answering(0, -0), 'detected-in-part')
    );
  });
});
