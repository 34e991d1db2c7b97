/** What follows an edit is kept by everything it depends on: a kept assessor ends where a new one ends. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { SteelCost } from '#analysis/results';
import type { Channel, Site } from '#plan/schema';
import { PATIENCE } from '../physics/support/arbitraries';
import { circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from './support/sites';

type Json = Readonly<Record<string, unknown>>;

const mat = (over: Json = {}): Json => ({
  id: 's1',
  kind: 'mat',
  depth: 0.15,
  pitch: 0.2,
  barRadius: 0.005,
  outline: [[-1.4, -1.4], [1.4, -1.4], [1.4, 1.4], [-1.4, 1.4]], // prettier-ignore
  ...over
});
const base: Json = {
  // narrow, so that the worst path still lies over the loop
  lanes: [lane('lane1', 0, { width: 1 })],
  loops: [loop('L1', square(0, 0, 1.2)), loop('loose', square(6, 0, 1.2))],
  circuits: [circuit('C1', ['L1'], { detect: ['bicycle'] })],
  units: [unit('U1')],
  vehicles: QUICK_VEHICLES,
  steel: [mat()]
};
const site = siteOf(base);

const onCircuit = (change: Partial<Site['circuits'][number]>): Site => ({
  ...site,
  circuits: site.circuits.map((each) => ({ ...each, ...change }))
});
const onChannel = (change: Partial<Channel>): Site =>
  onCircuit({ channel: { ...site.circuits[0]!.channel!, ...change } });
const onLoops = (change: Partial<Site['loops'][number]>): Site => ({
  ...site,
  loops: site.loops.map((each) => ({ ...each, ...change }))
});

const EDITS: readonly (readonly [string, Site])[] = [
  ['the vehicle asked for', onCircuit({ detect: ['car'] })],
  ['the threshold', onChannel({ tripThreshold: 0.004 })],
  ['the release', onChannel({ releaseRatio: 0.9 })],
  ['the lanes', { ...site, lanes: site.lanes.map((each) => ({ ...each, width: 1.5 })) }],
  ['the vehicles', { ...site, vehicles: [...site.vehicles].slice(1) }],
  ['the tolerances', { ...site, tolerances: { depth_m: 0.03 } }],
  ['the share that steel may cost', { ...site, acceptedSteelCost: 0.35 }],
  ['the temperature', { ...site, temperature_C: 45 }],
  ['the pavement', { ...site, pavement: { ...site.pavement, relativePermittivity: 11 } }],
  ['a resistance beside every loop', onLoops({ addedResistance_ohm: 0.7 })],
  ['the depth of the steel', { ...site, steel: [{ ...site.steel[0]!, depth: 0.3 }] }]
];

describe('after an edit', { timeout: PATIENCE }, () => {
  const kept = createAssessor();
  const before = kept.assess(site, 'complete');

  it.each(EDITS)('of %s everything is that of the drawing', (_, edited) => {
    const found = kept.assess(edited, 'complete');
    expect(found).toEqual(createAssessor().assess(edited, 'complete'));
    expect(found).not.toEqual(before);
    expect(kept.assess(site, 'complete')).toEqual(before);
  });
});

const costOf = (over: Json): SteelCost =>
  createAssessor().assess(siteOf({ ...base, ...over }), 'complete').circuits[0]!.steel!;
const clearOf = (over: Json): number | null => costOf(over).clearDepth_m;

describe('the depth at which steel costs little', { timeout: PATIENCE }, () => {
  it('is that for the vehicle asked for, not for the first of the list', () => {
    const asked = (vehicle: string) => [circuit('C1', ['L1'], { detect: [vehicle] })];
    const [forCar, forVan] = ['car', 'van'].map((vehicle) => clearOf({ circuits: asked(vehicle) }));
    expect(Math.abs(forCar! - forVan!)).toBeGreaterThan(0.015);
  });

  it('is no less than that of the slot', () => {
    const loops = [loop('L1', square(0, 0, 1.2), { slot: { depth: 0.09, width: 0.008 } })];
    expect(clearOf({ loops, acceptedSteelCost: 0.9 })).toBeCloseTo(0.1, 9);
  });

  it('counts from the uppermost of several pieces, which stay as far apart as they are', () => {
    const upper = mat({ barRadius: 0.002, pitch: 0.4 });
    const asked = [circuit('C1', ['L1'], { detect: ['car'] })];
    const lower = (depth: number) => mat({ id: 's2', depth });
    const [near, far, alone] = [[upper, lower(0.2)], [upper, lower(0.6)], [upper]].map((steel) =>
      clearOf({ steel, circuits: asked, acceptedSteelCost: 0.05 })
    );
    // the nearer the lower mat, the more the two cost together
    expect(near!).toBeGreaterThan(far!);
    expect(far!).toBeGreaterThanOrEqual(alone!);
    expect(near! - alone!).toBeGreaterThan(0.02);
  });

  it('is deeper the less may be lost, and none where nothing may be', () => {
    const circuits = [circuit('C1', ['L1'], { detect: ['car'] })];
    const depths = [0.3, 0.1, 0.03].map((acceptedSteelCost) => clearOf({ circuits, acceptedSteelCost })!);

    expect(depths[0]!).toBeLessThan(depths[1]!);
    expect(depths[1]!).toBeLessThan(depths[2]!);
    const wide = mat({ outline: [[-6, -6], [6, -6], [6, 6], [-6, 6]] }); // prettier-ignore
    const large = [loop('L1', square(0, 0, 2))];
    expect(clearOf({ circuits, acceptedSteelCost: 0.001, steel: [wide], loops: large })).toBeNull();
  });

  it('goes with shares of the worst path', () => {
    const { responses } = costOf({});
    const found = createAssessor().assess(site, 'all').circuits[0]!.responses;
    for (const { vehicle, withoutSteel, share } of responses) {
      const { worst } = found.find((each) => each.vehicle === vehicle)!;
      if (withoutSteel !== 0) expect(share).toBeCloseTo(1 - worst / withoutSteel, 9);
    }
    expect(responses.filter(({ withoutSteel }) => withoutSteel !== 0).length).toBeGreaterThan(2);
  });
});
