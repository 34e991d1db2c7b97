/** The search of a pass against trying every place of it. */
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Assessment, VehicleResponse } from '#analysis/results';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { circuit, lane, loop, QUICK_VEHICLES, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

const assessor = createAssessor();
/** The catalogue's own car, lorry, motorcycle and bicycle. */
const vehicles = QUICK_VEHICLES.filter(({ id }) => ['van', 'bus', 'motorcycle-small'].includes(String(id)));
const siteWith = (shapes: readonly Json[], over: Json = {}): Site =>
  siteOf({
    lanes: [lane('a', 0)],
    loops: shapes.map((shape, k) => loop(`L${k}`, shape)),
    circuits: [
      circuit(
        'C1',
        shapes.map((_, k) => `L${k}`)
      )
    ],
    units: [unit('U1')],
    vehicles,
    ...over
  });

/** ΔL/L at every place of a pass at `x`, every 10 cm from `from` on. */
const stepped = (site: Site, vehicle: string, x: number, from: number): readonly number[] => {
  const probes = Array.from({ length: 100 }, (_, k) => ({
    vehicle,
    at: [x, from + k / 10] as const,
    heading: 90
  }));
  return assessor.assess({ ...site, probes }).probes.map(({ circuits }) => circuits[0]!.deltaLOverL);
};

const responseOf = (found: Assessment, vehicle: string): VehicleResponse =>
  found.circuits[0]!.responses.find((each) => each.vehicle === vehicle)!;

const box = { centre: [0.2, 0], width: 1.8 };
const LAYOUTS: readonly (readonly [string, readonly Json[]])[] = [
  ['a square', [square(0.2, 0)]],
  ['a quadrupole', [{ kind: 'quadrupole', ...box, length: 3 }]],
  ['a diagonal', [{ kind: 'diagonal', ...box, length: 1.8 }]],
  ['a long diagonal', [{ kind: 'diagonal', ...box, length: 12 }]],
  ['a circle', [{ kind: 'circle', centre: [0.2, 0], diameter: 1.8 }]],
  ['two squares in series', [square(0, -1.5), square(0, 1.5, 1.2)]]
];

describe.each(LAYOUTS)('the strongest response of a pass over %s', { timeout: PATIENCE }, (_, shapes) => {
  const site = siteWith(shapes);

  it.each(['car', 'lorry', 'motorcycle', 'bicycle'])('of a %s', (vehicle) => {
    const { best, at, heading } = responseOf(assessor.assess(site), vehicle);
    expect(best).toBeLessThan(0);
    expect(heading).toBe(90);
    // it is what the vehicle placed there does
    const placed = assessor.assess({ ...site, probes: [{ vehicle, at, heading }] }).probes[0]!;
    expect(relativeError(best, placed.circuits[0]!.deltaLOverL)).toBeLessThan(1e-9);
    // and no place of the same path does more than 5 % more
    const everywhere = stepped(site, vehicle, at[0], -5);
    expect(-Math.min(...everywhere)).toBeLessThan(-best * 1.05);
  });
});

describe('paths across the lane', { timeout: PATIENCE }, () => {
  it('are one for a car, in its middle, and several for a bicycle, 0.4 m within its edges', () => {
    const found = assessor.assess(siteWith([square(0.2, 0)]));
    const car = responseOf(found, 'car');
    expect(car.best).toBe(car.worst);
    expect(car.at[0]).toBe(0);
    const bicycle = responseOf(found, 'bicycle');
    expect(bicycle.worst).toBeGreaterThan(bicycle.best);
    expect(Math.abs(bicycle.at[0])).toBeLessThanOrEqual(3.5 / 2 - 0.4 + 1e-9);
  });

  it('follow the direction of the lane', () => {
    const centreline = [
      [-20, 3],
      [20, 3]
    ];
    const site = siteWith([square(0, 3)], { lanes: [lane('a', 0, { centreline })] });
    const along = responseOf(assessor.assess(site), 'car');
    expect(along.heading).toBe(0);
    expect(along.at[1]).toBe(3);
    const straight = responseOf(assessor.assess(siteWith([square(0, 0)])), 'car');
    expect(relativeError(along.best, straight.best)).toBeLessThan(1e-6);
  });

  it('run along +y over a loop that lies in no lane', () => {
    const found = responseOf(assessor.assess(siteWith([square(30, 7)])), 'car');
    expect(found.heading).toBe(90);
    expect(found.at[0]).toBe(30);
  });

  it('give a margin over the threshold for the worst of them', () => {
    const { worst, margin } = responseOf(assessor.assess(siteWith([square(0.2, 0)])), 'bicycle');
    expect(margin).toBeCloseTo(-worst / 0.001, 12);
  });
});

describe('traffic of the lane beside', { timeout: PATIENCE }, () => {
  const beside = (x: number, over: Json = {}): Site =>
    siteWith([square(0.3, 0), square(0.3, 3)], { lanes: [lane('a', 0), lane('b', x, over)] });

  it('is the worst of its largest vehicle and of a car, within 5 % of the worst place', () => {
    const site = beside(3.5, { largestVehicle: 'lorry' });
    const [found] = assessor.assess(site).circuits[0]!.neighbours;
    expect(found!.lane).toBe('b');
    expect(found!.at[0]).toBe(3.5);
    const everywhere = ['car', 'lorry'].map((vehicle) => Math.min(...stepped(site, vehicle, 3.5, -3.5)));
    expect(-Math.min(...everywhere)).toBeLessThan(-found!.deltaLOverL * 1.05);
    expect(found!.vehicle).toBe(everywhere[0]! < everywhere[1]! ? 'car' : 'lorry');
  });

  it('fades with the distance of the lane and is left out beyond 4 m from its edge', () => {
    const at = (x: number) => assessor.assess(beside(x)).circuits[0]!.neighbours;
    expect(at(4)[0]!.deltaLOverL).toBeGreaterThan(at(3.5)[0]!.deltaLOverL);
    expect(at(3.5)).toHaveLength(1);
    // edge of the lane at x − 1.75, of the loop at 1.2
    expect(at(1.2 + 1.75 + 3.9)).toHaveLength(1);
    expect(at(1.2 + 1.75 + 4.1)).toEqual([]);
  });

  it('is not counted of a lane that the circuit serves', () => {
    expect(assessor.assess(siteWith([square(0, 0)])).circuits[0]!.neighbours).toEqual([]);
  });
});
