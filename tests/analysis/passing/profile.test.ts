/** Responses along a way against the vehicle put there by hand, and what symmetry demands of them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { createMeans, type Means } from '#analysis/means';
import { profileOver, profilesAlong, profilesInSteps, STEP } from '#analysis/passing/profile';
import type { Profile } from '#analysis/passing/results';
import { placeOn, wayOf, type Way } from '#analysis/passing/way';
import { responseAt, strongestOf } from '#analysis/passing/zones';
import type { Survey } from '#analysis/survey';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Point, Site } from '#plan/schema';
import { between, PATIENCE, SEED } from '../../physics/support/arbitraries';
import { channel, circuit, lane, loop, siteOf, square, unit } from '../support/sites';

const BENT: Point[] = [
  [0, -20],
  [0, -3],
  [2, 1],
  [9, 4],
  [30, 4]
];
/** One loop of every kind, two in series one of them reversed, two in parallel, all along one lane. */
const SITE = siteOf({
  lanes: [lane('a', 0)],
  paths: [{ id: 'bend', name: 'Bend', points: BENT }],
  loops: [
    loop('L1', { kind: 'rectangle', centre: [0.2, -7], width: 1.8, length: 1.8, cornerCut: 0.3 }),
    loop('L2', { kind: 'quadrupole', centre: [0, -2], width: 1.8, length: 3 }),
    loop('L3', { kind: 'circle', centre: [-0.1, 2], diameter: 1.8 }),
    loop('L4', { kind: 'diagonal', centre: [0, 5], width: 1.8, length: 1.8 }),
    loop('L5', square(0, 8)),
    loop('L6', square(0.3, 11)),
    loop('L7', square(3.5, -2))
  ],
  circuits: [
    ...['L1', 'L2'].map((id, k) => circuit(`C${k + 1}`, [id], { channel: channel('U1', k + 1) })),
    circuit('C3', [], {
      strings: [
        [
          { loop: 'L3', reversed: false },
          { loop: 'L4', reversed: true }
        ]
      ],
      channel: channel('U1', 3)
    }),
    circuit('C4', [], {
      strings: [[{ loop: 'L5', reversed: false }], [{ loop: 'L6', reversed: false }]],
      channel: channel('U1', 4)
    }),
    circuit('C5', ['L7'], { channel: channel('U1', 5) })
  ],
  units: [unit('U1')]
});

const means = createMeans();
const bodyOf = (id: string, site: Site, with_: Means = means) => with_.bodies.get(vehicleOf(id, site)!);
const LANE = wayOf(SITE, { kind: 'lane', id: 'a' })!;
const BEND = wayOf(SITE, { kind: 'path', id: 'bend' })!;

const along = (id: string, way: Way, offset: number, site = SITE): readonly Profile[] =>
  profilesAlong(means.surveyor.survey(site), vehicleOf(id, site)!, bodyOf(id, site), way, offset);

/** −ΔL/L of the vehicle put there by hand. */
const probed = (
  survey: Survey,
  circuitId: string,
  id: string,
  way: Way,
  at: number,
  offset: number
): number => {
  const vehicle = vehicleOf(id, survey.site)!;
  return -vehicleEffect(
    survey.circuits.get(circuitId)!.solved,
    bodyOf(id, survey.site),
    placeOn(way, at, offset, vehicle.bodyLength)
  );
};

describe('a profile', { timeout: PATIENCE }, () => {
  const survey = means.surveyor.survey(SITE);

  it.each([
    ['car', LANE, 0.25],
    ['lorry', LANE, -0.4],
    ['motorcycle', LANE, 0.9],
    ['bicycle', LANE, 0.85],
    ['car', BEND, 0],
    ['bicycle', BEND, -0.3]
  ] as const)('of a %s is what it does where it is put: within 0.4 % or 3·10⁻⁶', (id, way, offset) => {
    const profiles = along(id, way, offset);
    expect(profiles.length).toBeGreaterThanOrEqual(4);
    for (const profile of profiles) {
      expect(profile.step).toBe(STEP);
      const { values, from, step } = profile;
      // every 17th value falls on computed and on interpolated places in turn, close to the loops and away from them
      for (let k = 3; k < values.length; k += 17) {
        const wanted = probed(survey, profile.circuit, id, way, from + k * step, offset);
        expect(Math.abs(values[k]! - wanted)).toBeLessThan(Math.max(4e-3 * wanted, 3e-6));
      }
    }
  });

  it('half way between its values lies on the curve through them', () => {
    for (const profile of along('car', LANE, 0.1)) {
      const { values, from, step } = profile;
      const most = strongestOf(profile).response;
      for (let k = 11; k < values.length - 2; k += 23) {
        const place = from + (k + 0.5) * step;
        const wanted = probed(survey, profile.circuit, 'car', LANE, place, 0.1);
        // straight between values 5 cm apart: what a curve of half a metre's radius leaves
        expect(Math.abs(responseAt(profile, place) - wanted)).toBeLessThan(2e-3 * most + 1e-6);
      }
    }
  });

  it('ends where the response has faded', () => {
    for (const id of ['car', 'bicycle'])
      for (const { values } of along(id, LANE, 0)) {
        expect(values[0]).toBeLessThan(4e-6);
        expect(values[values.length - 1]).toBeLessThan(4e-6);
        expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
      }
  });

  it('is not there for a circuit out of reach', () => {
    const far = siteOf({
      ...SITE,
      loops: [...SITE.loops, loop('L9', square(40, 0))],
      circuits: [...SITE.circuits, circuit('C9', ['L9'], { channel: channel('U1', 9) })]
    });
    expect(along('car', LANE, 0, far).some((profile) => profile.circuit === 'C9')).toBe(false);
  });

  it('knows on which side a vehicle drives that comes as far as a loop beside the way', () => {
    const site = siteOf({
      lanes: [lane('a', 0)],
      loops: [loop('L1', square(9, 0))],
      circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1) })],
      units: [unit('U1')]
    });
    const way = wayOf(site, { kind: 'lane', id: 'a' })!;
    expect(along('car', way, -6, site)).toEqual([]);
    expect(strongestOf(along('car', way, 8, site)[0]!).response).toBeGreaterThan(0.005);
  });

  it('of a way that comes by a loop twice has both passes', () => {
    const points: Point[] = [[0, -20], [0, 10], [12, 10], [12, -20], [0, -20], [0, 10]]; // prettier-ignore
    const site = siteOf({
      paths: [{ id: 'round', name: 'Round', points }],
      loops: [loop('L1', square(0, -5))],
      circuits: [circuit('C1', ['L1'], { channel: channel('U1', 1) })],
      units: [unit('U1')]
    });
    const [profile] = along('car', wayOf(site, { kind: 'path', id: 'round' })!, 0, site);
    // once round: 30 + 12 + 30 + 12 m
    for (let place = 11; place < 20; place += 0.5)
      expect(responseAt(profile!, place + 84)).toBeCloseTo(responseAt(profile!, place), 6);
    expect(responseAt(profile!, 15 + 84)).toBeGreaterThan(0.01);
    expect(responseAt(profile!, 55)).toBeLessThan(1e-5);
  });

  it('is even in the offset over a symmetric layout', () => {
    const symmetric = siteOf({
      lanes: [lane('a', 0)],
      loops: [
        loop('L1', square(0, -3)),
        loop('L2', { kind: 'quadrupole', centre: [0, 1], width: 1.8, length: 3 }),
        loop('L3', { kind: 'circle', centre: [0, 5], diameter: 1.8 })
      ],
      circuits: ['L1', 'L2', 'L3'].map((id, k) => circuit(`C${k}`, [id], { channel: channel('U1', k + 1) })),
      units: [unit('U1')]
    });
    fc.assert(
      fc.property(fc.constantFrom('car', 'motorcycle', 'bicycle'), between(0, 2.5), (id, offset) => {
        const [right, left] = [along(id, LANE, offset, symmetric), along(id, LANE, -offset, symmetric)];
        expect(right).toHaveLength(left.length);
        right.forEach((profile, k) => {
          expect(profile.from).toBe(left[k]!.from);
          const most = strongestOf(profile).response;
          profile.values.forEach((value, at) => {
            expect(Math.abs(value - left[k]!.values[at]!)).toBeLessThan(1e-6 * most + 1e-12);
          });
        });
      }),
      { seed: SEED, numRuns: 12 }
    );
  });

  it('driven backwards is the same curve mirrored, for a vehicle with its parts about its middle', () => {
    const backwards = wayOf(
      { lanes: [], paths: [{ id: 'p', name: '', points: [...LANE.points].reverse() }] },
      { kind: 'path', id: 'p' }
    )!;
    for (const id of ['car', 'bicycle']) {
      const there = along(id, LANE, 0.3);
      const back = along(id, backwards, -0.3);
      there.forEach((profile, k) => {
        const most = strongestOf(profile).response;
        for (let at = 7; at < profile.values.length; at += 13) {
          const place = profile.from + at * profile.step;
          const mirrored = responseAt(back[k]!, LANE.length - place);
          expect(Math.abs(mirrored - profile.values[at]!)).toBeLessThan(2e-3 * most + 2e-6);
        }
      });
    }
  });

  it('is weaker throughout the higher the vehicle is', () => {
    const heights = [0.3, 0.4, 0.55, 0.8];
    const site = siteOf({
      ...SITE,
      vehicles: heights.map((height, k) => ({
        id: `v${k}`,
        name: '',
        parts: [{ kind: 'plate', centre: [0, 0], width: 1.6, length: 4, height }]
      }))
    });
    const curves = heights.map((_, k) => along(`v${k}`, LANE, 0.2, site)[0]!);
    for (let k = 1; k < heights.length; k++) {
      const [lower, higher] = [curves[k - 1]!, curves[k]!];
      for (let place = 9; place <= 17; place += 0.21)
        expect(responseAt(higher, place)).toBeLessThan(responseAt(lower, place));
    }
  });
});

describe('profiles are kept', { timeout: PATIENCE }, () => {
  it('by what they follow from: an edit of one loop leaves those of other circuits', () => {
    const first = along('car', LANE, 0.25);
    const edited: Site = {
      ...SITE,
      loops: SITE.loops.map((each) => (each.id === 'L2' ? { ...each, turns: 4 } : each))
    };
    const second = along('car', LANE, 0.25, edited);
    const same = first.map((profile, k) => profile.values === second[k]!.values);
    expect(same).toEqual([true, false, true, true, true]);
  });

  it('under the name that the circuit has now', () => {
    const renamed: Site = {
      ...SITE,
      circuits: SITE.circuits.map((each) => (each.id === 'C1' ? { ...each, id: 'C8' } : each))
    };
    expect(along('car', LANE, 0.25, renamed)[0]!.circuit).toBe('C8');
  });
});

describe('over steel', { timeout: PATIENCE }, () => {
  const site = siteOf({
    lanes: [lane('a', 0)],
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'])],
    units: [unit('U1')],
    steel: [
      {
        id: 'S1',
        kind: 'mat',
        depth: 0.14,
        pitch: 0.2,
        barRadius: 0.005,
        outline: [
          [-1.6, -2],
          [1.6, -2],
          [1.6, 2],
          [-1.6, 2]
        ]
      }
    ]
  });

  it.each(['car', 'motorcycle', 'bicycle'])(
    'a %s answers as where it is put, within 0.5 % or 3·10⁻⁶',
    (id) => {
      const survey = means.surveyor.survey(site);
      const vehicle = vehicleOf(id, site)!;
      const profile = profileOver(survey.circuits.get('C1')!, vehicle, bodyOf(id, site), LANE, 0.4)!;
      expect(strongestOf(profile).response).toBeGreaterThan(0);
      for (let k = 5; k < profile.values.length; k += 9) {
        const wanted = probed(survey, 'C1', id, LANE, profile.from + k * profile.step, 0.4);
        expect(Math.abs(profile.values[k]! - wanted)).toBeLessThan(Math.max(5e-3 * wanted, 3e-6));
      }
    }
  );

  it('gives way after every place', () => {
    const fresh = createMeans();
    const steps = profilesInSteps(
      fresh.surveyor.survey(site),
      vehicleOf('bicycle', site)!,
      bodyOf('bicycle', site, fresh),
      LANE,
      0.1
    );
    let count = 0;
    while (!steps.next().done) count++;
    expect(count).toBeGreaterThan(20);
  });
});
