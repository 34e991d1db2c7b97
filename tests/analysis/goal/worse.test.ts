/** A finding that only turns into a graver one has not been cleared. */
import { describe, expect, it } from 'vitest';
import { createMeans } from '#analysis/means';
import type { PassReadout } from '#analysis/passing/results';
import { evaluate } from '#analysis/sweep/figures/index';
import { finish } from '#analysis/steps';
import { passReadoutsInSteps } from '#analysis/passing/pass-readouts';
import type { Site } from '#plan/schema';
import { experimentOn } from '#plan/variables/index';
import type { Variable } from '#plan/variables/variable';
import { circuit, lane, loop, siteOf, square, unit } from '../support/sites';
import { findingsIn, refIn, seek } from './support';

const means = createMeans();
const threshold: Variable = { kind: 'tripThreshold', subject: 'C1' };

const drawn = (fields: object, detect: readonly string[]): Site =>
  siteOf({
    lanes: [lane('lane1', 0)],
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], { detect })],
    units: [unit('U1')],
    ...fields
  });

const withChannel = (site: Site, change: object): Site => ({
  ...site,
  circuits: site.circuits.map((each) => ({ ...each, channel: { ...each.channel!, ...change } }))
});

const passesOf = (site: Site): readonly PassReadout[] =>
  finish(
    passReadoutsInSteps(means.surveyor.survey(site).circuits.get('C1')!, site, (each) =>
      means.bodies.get(each)
    )
  );

const found = (site: Site, code: string): number => {
  const goal = seek(site, threshold, refIn(site, code, 'C1', findingsIn), means);
  if (goal.kind === 'none') throw new Error(goal.reason);
  return goal.to;
};

describe('of a higher threshold and a lower one', { timeout: 120_000 }, () => {
  it('the higher, with which the bicycle is seen nowhere, is no cure for seeing it on some paths only', () => {
    const diagonal = loop('L1', { kind: 'diagonal', centre: [0, 0], width: 1.8, length: 1.8 });
    const site = drawn({ lanes: [lane('lane1', 0, { width: 2.2 })], loops: [diagonal] }, ['bicycle']);
    const reached = (path: 'best' | 'worst'): number =>
      evaluate(experimentOn(site), { kind: 'response', subject: 'C1', vehicle: 'bicycle', path }, means)!;
    const [best, worst] = [reached('best'), reached('worst')];
    // nearer to the best by far
    const present = best - 0.1 * (best - worst);
    const to = found(withChannel(site, { tripThreshold: present }), 'detected-in-part');
    expect(to).toBeLessThanOrEqual(worst);
    expect(to).toBeGreaterThan(worst - 0.0001);
  });

  it('the lower, with which the neighbour calls from everywhere, is no cure for calling from the edge', () => {
    const lanes = [lane('lane1', 0, { width: 3 }), lane('lane2', 3, { width: 3 })];
    const site = drawn({ lanes, loops: [loop('L1', square(0.6, 0))] }, []);
    const beside = passesOf(site).filter(({ isServed }) => !isServed);
    const most = (all: readonly PassReadout[]): number => Math.max(...all.map(({ response }) => response));
    const middle = most(beside.filter(({ offset_m }) => offset_m === 0));
    const edge = most(beside);
    expect(edge).toBeGreaterThan(1.5 * middle);
    const to = found(withChannel(site, { tripThreshold: middle + 0.1 * (edge - middle) }), 'next-lane-edge');
    expect(to).toBeGreaterThan(edge);
    expect(to).toBeLessThan(edge + 0.0001);
  });

  it('the higher, with which nothing is left of a lorry, is no cure for counting it twice', () => {
    const site = drawn({ lanes: [lane('lane1', 0, { largestVehicle: 'lorry-articulated' })] }, []);
    const passes = passesOf(withChannel(site, { tripThreshold: 1e-4, releaseRatio: 1 }));
    const strongest = Math.min(...passes.map(({ response }) => response));
    const twice = withChannel(site, { tripThreshold: 0.95 * strongest, releaseRatio: 0.95 });
    const goal = seek(twice, threshold, refIn(twice, 'counted-twice', 'C1', findingsIn), means);
    if (goal.kind === 'found') {
      expect(goal.to).toBeLessThan(goal.from);
      const there = withChannel(twice, { tripThreshold: goal.to });
      expect(passesOf(there).every(({ detections }) => detections === 1)).toBe(true);
    } else expect(goal.reason).toBe('not enough');
  });
});
