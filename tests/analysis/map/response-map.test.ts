/** Nodes of a map against the vehicle put there by hand. */
import { describe, expect, it } from 'vitest';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { nodeAt } from '#analysis/map/nodes';
import { createMapper } from '#analysis/map/response-map';
import type { MapWish, ResponseMap } from '#analysis/map/results';
import { createMeans } from '#analysis/means';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { channel, circuit, loop, siteOf, square, unit } from '../support/sites';

const SITE = siteOf({
  loops: [
    loop('L1', square(0, 0)),
    loop('L2', { kind: 'quadrupole', centre: [3.5, 0], width: 1.8, length: 3 }),
    loop('L3', { kind: 'circle', centre: [0, 5], diameter: 1.8 }),
    loop('L4', { kind: 'diagonal', centre: [3.5, 6], width: 1.8, length: 1.8 })
  ],
  circuits: [
    circuit('C1', ['L1']),
    circuit('C2', ['L2'], { channel: channel('U1', 2, { tripThreshold: 0.0005 }) }),
    // far enough apart that a vehicle over one is out of the other's reach
    circuit('C3', ['L3', 'L4'], { channel: null })
  ],
  units: [unit('U1')]
});
const BOX = { left: -3, bottom: -4, right: 7, top: 9 };
const wish = (over: Partial<MapWish> = {}): MapWish => ({
  vehicle: 'car',
  heading: 90,
  circuits: null,
  box: BOX,
  columns: 26,
  rows: 26,
  ...over
});

const means = createMeans();
const mapper = createMapper(means);
const mapOf = (given: MapWish, site: Site = SITE): ResponseMap => finish(mapper(site, given))!;

/** The largest response of the circuits, and over the threshold, by the vehicle put at a node. */
const probed = (given: MapWish, node: number, site = SITE): readonly [number, number] => {
  const [x, y] = nodeAt(given, node % given.columns, Math.floor(node / given.columns));
  const body = means.bodies.get(vehicleOf(given.vehicle, site)!);
  const asked = [...means.surveyor.survey(site).circuits.values()].filter(
    (each) => given.circuits === null || given.circuits.includes(each.circuit.id)
  );
  const responses = asked.map(({ solved }) => -vehicleEffect(solved, body, { x, y, heading: given.heading }));
  return [
    Math.max(...responses),
    Math.max(...responses.map((value, k) => value / (asked[k]!.circuit.channel?.tripThreshold ?? Infinity)))
  ];
};

describe('nodes', () => {
  it('lie on the rim of the box and evenly between', () => {
    const given = wish({ columns: 11, rows: 14 });
    expect(nodeAt(given, 0, 0)).toEqual([-3, -4]);
    expect(nodeAt(given, 10, 13)).toEqual([7, 9]);
    expect(nodeAt(given, 4, 5)).toEqual([1, 1]);
  });
});

describe('a response map', { timeout: PATIENCE }, () => {
  it.each([
    ['car', 90, 26],
    ['car', 37, 61],
    ['lorry', 200, 26],
    ['motorcycle', 0, 40],
    ['bicycle', 115, 40],
    ['wheel', 90, 50]
  ] as const)(
    'of a %s heading %d equals single probes at its nodes: within 0.4 %% or 3·10⁻⁶',
    (vehicle, heading, size) => {
      const given = wish({ vehicle, heading, columns: size, rows: size });
      const map = mapOf(given);
      expect(map.response).toHaveLength(size * size);
      // a stride with no factor in common with a row: every part of the plan, on lattices and beside them
      for (let node = 3; node < size * size; node += size * 2 + 5) {
        const [response, ratio] = probed(given, node);
        expect(Math.abs(map.response[node]! - response)).toBeLessThan(Math.max(4e-3 * response, 3e-6));
        expect(Math.abs(map.ratio[node]! - ratio)).toBeLessThan(Math.max(4e-3 * ratio, 6e-3));
      }
    }
  );

  it('is symmetric over a loop that is', () => {
    const given = wish({
      circuits: ['C1'],
      box: { left: -3, bottom: -4, right: 3, top: 4 },
      columns: 31,
      rows: 31
    });
    const { response } = mapOf(given);
    const at = (column: number, row: number): number => response[row * 31 + column]!;
    for (let row = 0; row < 31; row += 3)
      for (let column = 0; column < 15; column += 2) {
        expect(Math.abs(at(column, row) - at(30 - column, row))).toBeLessThan(1e-4 * at(15, 15));
        expect(Math.abs(at(column, row) - at(column, 30 - row))).toBeLessThan(1e-4 * at(15, 15));
      }
  });

  it('holds the circuits that were asked for, and nothing for those without a channel in the ratio', () => {
    const given = wish({ circuits: ['C3', 'gone'] });
    const map = mapOf(given);
    expect(Math.max(...map.response)).toBeGreaterThan(0.005);
    expect(Math.max(...map.ratio)).toBe(0);
    expect(mapOf(wish({ circuits: [] })).response.every((value) => value === 0)).toBe(true);
  });

  it('heading another way is another map', () => {
    const [along, across] = [90, 0].map((heading) => mapOf(wish({ circuits: ['C1'], heading })));
    expect(across!.response).not.toEqual(along!.response);
    expect(mapOf(wish({ circuits: ['C1'], heading: 0 })).response).toEqual(across!.response);
  });

  it('of two loops of one circuit, far apart, equals single probes about both and between', () => {
    const site = siteOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(30, 0))],
      circuits: [circuit('C1', ['L1', 'L2'])],
      units: [unit('U1')]
    });
    const given = wish({ box: { left: -5, bottom: -3, right: 35, top: 3 }, columns: 81, rows: 7 });
    const map = mapOf(given, site);
    for (let node = 0; node < 81 * 7; node += 2) {
      const [response] = probed(given, node, site);
      expect(Math.abs(map.response[node]! - response)).toBeLessThan(Math.max(4e-3 * response, 3e-6));
    }
  });

  it('is null for a vehicle that is not there', () => {
    expect(finish(mapper(SITE, wish({ vehicle: 'gone' })))).toBeNull();
  });

  it('follows an edit: what no edit touched is kept', () => {
    const given = wish({ columns: 60, rows: 60 });
    const stepsOf = (site: Site): number => {
      const steps = mapper(site, given);
      let count = 0;
      while (!steps.next().done) count++;
      return count;
    };
    const fresh = stepsOf(SITE);
    const moved: Site = {
      ...SITE,
      loops: SITE.loops.map((each) => (each.id === 'L2' ? { ...each, turns: 4 } : each))
    };
    expect(stepsOf(moved)).toBeLessThan(0.6 * fresh);
    expect(stepsOf(SITE)).toBeLessThan(3);
  });

  it('is asked as a question, gives way often, and says how far it is', () => {
    const steps = createAnswerer(createMeans())(
      'response-map',
      SITE,
      wish({ vehicle: 'bicycle', columns: 50, rows: 50 })
    );
    const shares: number[] = [];
    for (let step = steps.next(); !step.done; step = steps.next())
      if (typeof step.value === 'number') shares.push(step.value);
    expect(shares.length).toBeGreaterThan(10);
    shares.forEach((share, k) => {
      expect(share).toBeGreaterThanOrEqual(k === 0 ? 0 : shares[k - 1]!);
      expect(share).toBeLessThanOrEqual(1);
    });
  });

  it('over steel equals single probes too, within 0.5 % or 3·10⁻⁶', () => {
    const site = siteOf({
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
    const given = wish({
      vehicle: 'motorcycle',
      box: { left: -2, bottom: -2, right: 2, top: 2 },
      columns: 20,
      rows: 20
    });
    const map = mapOf(given, site);
    for (let node = 7; node < 400; node += 19) {
      const [wanted] = probed(given, node, site);
      expect(Math.abs(map.response[node]! - wanted)).toBeLessThan(Math.max(5e-3 * wanted, 3e-6));
    }
  });
});
