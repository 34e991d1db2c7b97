/** The one entry keeps what it has computed: it must never show, and it must really save the work. */
import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Loop, Site } from '#plan/schema';
import { PATIENCE, SEED, between, shapes } from '../physics/support/arbitraries';
import { channel, circuit, lane, loop, QUICK_VEHICLES, rowSite, siteOf, square, unit } from './support/sites';

vi.mock('#physics/inductance/loop', { spy: true });
const mutuals = vi.mocked(mutualInductance);
const selves = vi.mocked(externalInductance);

beforeEach(() => {
  mutuals.mockClear();
  selves.mockClear();
});

const eight = siteOf({
  lanes: [lane('a', 0), lane('b', 3.5)],
  loops: [
    loop('L1', square(0, 0)),
    loop('L2', square(0, 4), { tail: { length: 3 } }),
    loop('L3', square(3.5, 0)),
    loop('L4', { kind: 'quadrupole', centre: [3.5, 4], width: 1.8, length: 3 }, { turns: 2 }),
    loop('L5', { kind: 'circle', centre: [0, 8], diameter: 1.8 }),
    loop('L6', { kind: 'diagonal', centre: [3.5, 8], width: 1.8, length: 1.8 }),
    loop('L7', square(0, 12)),
    loop('L8', square(3.5, 12))
  ],
  circuits: [
    circuit('C1', ['L1', 'L2']),
    circuit('C2', [], {
      strings: [[{ loop: 'L3' }], [{ loop: 'L4', reversed: true }]],
      channel: channel('U1', 2)
    }),
    circuit('C3', ['L5'], { channel: channel('U2', 1, { frequency_Hz: null, frequencySetting: 2 }) }),
    circuit('C4', ['L6', 'L7'], { channel: null })
  ],
  units: [unit('U1'), unit('U2')],
  vehicles: QUICK_VEHICLES,
  probes: [{ vehicle: 'car', at: [0.3, 0.5], heading: 80 }]
});

const changeLoop = (site: Site, k: number, change: Partial<Loop>): Site => ({
  ...site,
  loops: site.loops.map((each, i) => (i === k ? { ...each, ...change } : each))
});
const changeCircuit = (site: Site, k: number, change: Partial<Site['circuits'][number]>): Site => ({
  ...site,
  circuits: site.circuits.map((each, i) => (i === k ? { ...each, ...change } : each))
});

type Edit = (site: Site) => Site;
const aLoop = fc.integer({ min: 0, max: 7 });
const aCircuit = fc.integer({ min: 0, max: 3 });
const swapped = <T>(list: readonly T[], k: number): readonly T[] => [...list.slice(k), ...list.slice(0, k)];
const edits: fc.Arbitrary<Edit> = fc.oneof(
  fc.tuple(aLoop, shapes(5)).map(
    ([k, shape]): Edit =>
      (site) =>
        changeLoop(site, k, { shape })
  ),
  fc.tuple(aLoop, fc.integer({ min: 1, max: 6 })).map(
    ([k, turns]): Edit =>
      (site) =>
        changeLoop(site, k, { turns })
  ),
  fc.tuple(aLoop, fc.constantFrom('awg12', 'awg18')).map(
    ([k, wire]): Edit =>
      (site) =>
        changeLoop(site, k, { wire })
  ),
  fc.tuple(aLoop, between(0, 20)).map(
    ([k, length]): Edit =>
      (site) =>
        changeLoop(site, k, { tail: { length } })
  ),
  fc.tuple(aCircuit, between(0, 200), fc.constantFrom('pair-14', 'pair-18')).map(
    ([k, length, cable]): Edit =>
      (site) =>
        changeCircuit(site, k, { leadIn: { length, cable } })
  ),
  fc.tuple(aCircuit, fc.constantFrom(['car'], ['bicycle', 'van'], [])).map(
    ([k, detect]): Edit =>
      (site) =>
        changeCircuit(site, k, { detect })
  ),
  fc.tuple(aCircuit, fc.constantFrom('C1', 'C2', 'C3')).map(
    ([k, from]): Edit =>
      (site) =>
        changeCircuit(site, k, { channel: site.circuits.find(({ id }) => id === from)!.channel })
  ),
  between(-20, 60).map((temperature_C): Edit => (site) => ({ ...site, temperature_C })),
  fc.integer({ min: 1, max: 7 }).map((k): Edit => (site) => ({ ...site, loops: swapped(site.loops, k) })),
  fc
    .integer({ min: 1, max: 3 })
    .map((k): Edit => (site) => ({ ...site, circuits: swapped(site.circuits, k) })),
  fc.constantFrom<Edit>(
    (site) => ({ ...site, lanes: site.lanes.slice(1) }),
    (site) => ({ ...site, lanes: eight.lanes }),
    (site) => ({
      ...site,
      vehicles: site.vehicles.map((each) => ({ ...each, parts: site.vehicles[0]!.parts }))
    }),
    (site) => ({ ...site, vehicles: eight.vehicles }),
    (site) => ({ ...site, probes: [{ vehicle: 'bicycle', at: [3.5, 4], heading: 0 }] }),
    (site) => ({ ...site, units: site.units.map((each) => ({ ...each, scansInTurn: !each.scansInTurn })) }),
    (site) => ({ ...site, displayUnits: site.displayUnits === 'metric' ? 'imperial' : 'metric' })
  )
);

describe('an assessor that is asked again', { timeout: PATIENCE }, () => {
  it('answers exactly as a new one would, whatever was edited between', () => {
    fc.assert(
      fc.property(fc.array(edits, { minLength: 2, maxLength: 5 }), (sequence) => {
        const kept = createAssessor();
        kept.assess(eight);
        let site = eight;
        for (const edit of sequence) {
          site = edit(site);
          expect(kept.assess(site)).toEqual(createAssessor().assess(site));
        }
        expect(kept.assess(eight)).toEqual(createAssessor().assess(eight));
      }),
      { seed: SEED, numRuns: 6, endOnFailure: true }
    );
  });

  it('follows when loops and circuits get other ids', () => {
    const renamed: Site = {
      ...eight,
      loops: eight.loops.map((each) => ({ ...each, id: `new-${each.id}` })),
      circuits: eight.circuits.map((each) => ({
        ...each,
        id: `new-${each.id}`,
        strings: each.strings.map((string) =>
          string.map((entry) => ({ ...entry, loop: `new-${entry.loop}` }))
        )
      }))
    };
    const kept = createAssessor();
    kept.assess(eight);
    expect(kept.assess(renamed)).toEqual(createAssessor().assess(renamed));
  });

  it('tells two circuits apart whose loops are drawn one over the other', () => {
    const site = rowSite([
      [0, 0],
      [0, 0],
      [3, 0]
    ]);
    const { circuits, couplings } = createAssessor().assess({ ...site, units: [unitAtOnce(site)] });
    expect(circuits.map(({ id }) => id)).toEqual(['C1', 'C2', 'C3']);
    expect(couplings[0]!.k).toBeGreaterThan(0.8);
    expect(couplings[0]!.k).toBeLessThan(1);
    expect(couplings[1]!.k).toBeCloseTo(couplings[2]!.k, 12);
  });

  it('does not change the site that it is given', () => {
    const before = JSON.stringify(eight);
    createAssessor().assess(eight);
    expect(JSON.stringify(eight)).toBe(before);
  });
});

const unitAtOnce = (site: Site): Site['units'][number] => ({ ...site.units[0]!, scansInTurn: false });

describe('work that is saved', { timeout: PATIENCE }, () => {
  const twelve = rowSite(Array.from({ length: 12 }, (_, k) => [(k % 4) * 3, Math.floor(k / 4) * 4] as const));

  it('is every pair of a site once, and none when nothing has changed', () => {
    const assessor = createAssessor();
    assessor.assess(twelve);
    expect(mutuals).toHaveBeenCalledTimes((12 * 11) / 2);
    expect(selves).toHaveBeenCalledTimes(12);
    assessor.assess(structuredClone(twelve));
    expect(mutuals).toHaveBeenCalledTimes((12 * 11) / 2);
    expect(selves).toHaveBeenCalledTimes(12);
  });

  it('is all but the pairs of the loop that was moved', () => {
    const assessor = createAssessor();
    assessor.assess(twelve);
    mutuals.mockClear();
    selves.mockClear();
    const shape = { ...twelve.loops[5]!.shape, centre: [3.1, 4.2] } as Loop['shape'];
    assessor.assess(changeLoop(twelve, 5, { shape }));
    expect(mutuals).toHaveBeenCalledTimes(11);
    expect(selves).toHaveBeenCalledTimes(1);
  });

  it('is everything magnetic when only cables, thresholds or temperature change', () => {
    const assessor = createAssessor();
    assessor.assess(twelve);
    mutuals.mockClear();
    selves.mockClear();
    assessor.assess({ ...twelve, temperature_C: 50 });
    assessor.assess(changeCircuit(twelve, 3, { leadIn: { cable: 'pair-18', length: 99 } }));
    expect(mutuals).not.toHaveBeenCalled();
    expect(selves).not.toHaveBeenCalled();
  });
});
