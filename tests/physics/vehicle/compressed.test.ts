/** Compressed vehicles against their meshes: every kind of vehicle and loop, anywhere, in any direction. */
import { describe, expect, it } from 'vitest';
import { partsOf } from '#analysis/electrical/bodies';
import { filamentsOf, type Filaments, type Placement } from '#physics/field/filaments';
import { externalInductance } from '#physics/inductance/loop';
import { dot } from '#physics/numeric/cholesky';
import { buildBody, type Body } from '#physics/vehicle/body';
import { compressInSteps, type CompressedBody } from '#physics/vehicle/compressed';
import { reducedFlux } from '#physics/vehicle/flux';
import { latticeInSteps, latticeSize } from '#physics/vehicle/lattice';
import type { Part, RingPart } from '#physics/vehicle/parts';
import { reducedAt } from '#physics/vehicle/reduce';
import { reducedAlong } from '#physics/vehicle/reduce-along';
import { GRAIN } from '#physics/vehicle/sampling';
import { catalogueVehicles } from '#plan/catalogue/vehicles';
import type { Shape } from '#plan/schema';
import { PATIENCE, SEED } from '../support/arbitraries';
import { relativeError } from '../support/reference';
import { drawnWinding } from '../support/windings';

const finished = <T>(steps: Generator<unknown, T>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};

const SHAPES: Readonly<Record<string, Shape>> = {
  square: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0, cornerCut: 0.3 },
  'long rectangle': { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 12, rotation: 10, cornerCut: 0 },
  quadrupole: { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 3, rotation: 0 },
  diagonal: { kind: 'diagonal', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0 },
  circle: { kind: 'circle', centre: [0, 0], diameter: 1.8 },
  polygon: {
    kind: 'polygon',
    points: [
      [-0.9, -0.6],
      [0, -1],
      [0.9, -0.6],
      [0.9, 0.9],
      [-0.9, 0.9]
    ]
  }
};

const drawn = (shape: Shape, turns = 3, depth = 0.05) => {
  const winding = drawnWinding({
    id: 'L',
    name: '',
    turns,
    wire: 'awg14',
    slot: { depth, width: 0.008, relativePermittivity: 4 },
    tail: { length: 0 },
    shape
  });
  return { filaments: filamentsOf(winding), inductance: externalInductance(winding) };
};
const WOUND = Object.entries(SHAPES).map(([name, shape]) => ({ name, ...drawn(shape) }));

/** Steady numbers from 0 to 1. */
const numbersFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => (state = (state * 1_103_515_245 + 12_345) % 2 ** 31) / 2 ** 31;
};

const rim = (y: number, over: Partial<RingPart> = {}): RingPart => ({
  kind: 'ring',
  x: 0.2,
  y,
  height: 0.34,
  radius: 0.3,
  conductorRadius: 0.008,
  axis: [1, 0, 0],
  ...over
});
/** Whole numbers of every stride of a run apart. */
const UNLIKE: readonly Part[] = [
  { kind: 'plate', x: 0, y: 1, width: 0.4, length: 0.5, height: 0.3 },
  rim(0),
  rim(0.8, { height: 0.4 }),
  rim(1.6, { radius: 0.2 }),
  rim(2.4, { axis: [0.6, 0, 0.8] }),
  rim(3.2, { x: -0.1 })
];

const byMesh = (body: Body, filaments: Filaments, at: Placement): number => {
  const reduced = reducedFlux(body, filaments, at);
  return dot(reduced, reduced);
};

/** 1 where the error is 0.3 % of the response or 2·10⁻⁶ of the inductance, whichever is more. */
const errorOf = (found: number, wanted: number, inductance: number): number =>
  Math.abs(found - wanted) / Math.max(3e-3 * wanted, 2e-6 * inductance);

/** Half an articulated lorry: 0.5 %, at few places. */
const LOOSE = new Set(['tractor', 'semitrailer']);

const compressed = (body: Body, clearance = 0): CompressedBody => finished(compressInSteps(body, clearance))!;

describe('a compressed vehicle', { timeout: PATIENCE }, () => {
  it.each(catalogueVehicles)('$id answers as its mesh, over and beside every shape of loop', (vehicle) => {
    const body = buildBody(partsOf(vehicle));
    const small = compressed(body);
    const next = numbersFrom(SEED);
    for (const { filaments, inductance } of WOUND)
      for (let k = 0; k < 12; k++) {
        const heading = k % 3 === 0 ? 90 : 360 * next();
        const at = { x: 5 * (next() - 0.5), y: (vehicle.bodyLength + 5) * (next() - 0.5), heading };
        const z = reducedAt(small, filaments, [at]);
        expect(errorOf(dot(z, z), byMesh(body, filaments, at), inductance)).toBeLessThan(
          LOOSE.has(vehicle.id) ? 5 / 3 : 1
        );
      }
  });

  it('couples two loops with one another as its mesh does', () => {
    const body = buildBody(partsOf(catalogueVehicles.find(({ id }) => id === 'car')!));
    const small = compressed(body);
    const [a, b] = [drawn(SHAPES.square!), drawn({ ...SHAPES.circle!, centre: [0.4, 1.2] } as Shape)];
    for (const y of [-2, -0.5, 0.6, 1.9]) {
      const at = { x: 0.3, y, heading: 75 };
      const [ofA, ofB] = [a, b].map(({ filaments }) => reducedFlux(body, filaments, at));
      const found = dot(reducedAt(small, a.filaments, [at]), reducedAt(small, b.filaments, [at]));
      const size = Math.sqrt(dot(ofA!, ofA!) * dot(ofB!, ofB!));
      expect(Math.abs(found - dot(ofA!, ofB!))).toBeLessThan(3e-3 * size);
    }
  });

  it('holds for loops of one turn near the surface and of many turns deep down', () => {
    const body = buildBody(partsOf(catalogueVehicles.find(({ id }) => id === 'van')!));
    const small = compressed(body);
    for (const [turns, depth] of [
      [1, 0.02],
      [6, 0.3]
    ] as const) {
      const { filaments, inductance } = drawn(SHAPES.square!, turns, depth);
      for (const x of [0, 0.7, 1.6]) {
        const at = { x, y: 1.1 + x, heading: 90 };
        const z = reducedAt(small, filaments, [at]);
        expect(errorOf(dot(z, z), byMesh(body, filaments, at), inductance)).toBeLessThan(1);
      }
    }
  });

  /** No mirror, parts one behind and above the other, a ring in no plane of symmetry. */
  const ODD: Part[] = [
    { kind: 'plate', x: 0.3, y: 1.4, height: 0.3, width: 0.9, length: 1.6 },
    { kind: 'plate', x: -0.2, y: -1, height: 0.7, width: 1.7, length: 3 },
    { kind: 'ring', x: 0.5, y: -0.7, height: 0.36, radius: 0.3, conductorRadius: 0.01, axis: [1, 0.4, 0.2] }
  ];

  it('needs no symmetry', () => {
    const body = buildBody(ODD);
    const small = compressed(body);
    const next = numbersFrom(SEED + 1);
    for (const { filaments, inductance } of WOUND)
      for (let k = 0; k < 8; k++) {
        const at = { x: 4 * (next() - 0.5), y: 7 * (next() - 0.5), heading: 360 * next() };
        const z = reducedAt(small, filaments, [at]);
        expect(errorOf(dot(z, z), byMesh(body, filaments, at), inductance)).toBeLessThan(1);
      }
  });

  it('is far smaller than its mesh', () => {
    const body = buildBody(partsOf(catalogueVehicles.find(({ id }) => id === 'bus')!));
    const small = compressed(body);
    expect(small.rank).toBeLessThan(body.size / 4);
    expect(small.samples).toBeLessThan(body.plates.reduce((sum, { pointX }) => sum + pointX.length, 0) / 3);
  });

  it('is not made of a vehicle that lies on the road with its whole length', () => {
    const flat: Part = { kind: 'plate', x: 0, y: 0, height: 0.05, width: 2.5, length: 15 };
    expect(finished(compressInSteps(buildBody([flat], 0.3)))).toBeNull();
  });

  it('for loops that lie away from it holds there, with fewer samples', () => {
    for (const id of ['car', 'bus', 'motorcycle']) {
      const vehicle = catalogueVehicles.find((each) => each.id === id)!;
      const body = buildBody(partsOf(vehicle));
      const away = compressed(body, 1.2);
      expect(away.samples).toBeLessThan(compressed(body).samples);
      for (const { filaments, inductance } of WOUND)
        for (const [dx, dy] of [
          [1.2, 0],
          [1.5, 1],
          [3, -2],
          [0, 1.2]
        ] as const) {
          // the box of the turned long rectangle reaches 1.93 m to either side and 6.07 m ahead
          const at = {
            x: dx === 0 ? 0 : dx + 1.94 + vehicle.bodyWidth / 2,
            y: dx === 0 ? dy + 6.08 + vehicle.bodyLength / 2 : dy,
            heading: 90
          };
          const z = reducedAt(away, filaments, [at]);
          expect(errorOf(dot(z, z), byMesh(body, filaments, at), inductance)).toBeLessThan(1);
        }
    }
  });

  describe.each([
    ['symmetric', partsOf(catalogueVehicles.find(({ id }) => id === 'motorcycle')!)],
    ['odd', ODD],
    ['with rims one behind the other, each unlike the first in one thing', UNLIKE]
  ] as const)('that is %s', (_, parts) => {
    const small = compressed(buildBody(parts));

    it('answers along a run as place by place', () => {
      for (const grains of [1, 2, 8])
        for (const heading of [90, 33]) {
          const [ux, uy] = [Math.cos((heading * Math.PI) / 180), Math.sin((heading * Math.PI) / 180)];
          const first = { x: -1.5 * ux, y: -1.5 * uy, heading };
          // an odd count: the last group of places is not full
          const placements = Array.from({ length: 11 }, (__, k) => ({
            x: first.x + k * grains * GRAIN * ux,
            y: first.y + k * grains * GRAIN * uy,
            heading
          }));
          for (const { filaments } of WOUND) {
            const run = reducedAlong(small, filaments, first, 11, grains);
            const each = reducedAt(small, filaments, placements);
            expect(run).toHaveLength(11 * small.rank);
            for (let k = 0; k < 11; k++) {
              const [a, b] = [run, each].map((z) => z.slice(k * small.rank, (k + 1) * small.rank));
              expect(relativeError(dot(a!, a!), dot(b!, b!))).toBeLessThan(1e-9);
            }
          }
        }
    });

    it('answers from a lattice as place by place', () => {
      const ground = { left: -1.2, right: 1, rear: -2, front: 1.5 };
      const next = numbersFrom(SEED + 2);
      for (const { filaments, inductance } of WOUND)
        for (const heading of [90, 0, 211]) {
          const lattice = finished(latticeInSteps(small, filaments, heading, ground));
          const places = [
            [ground.left, ground.rear],
            [ground.right, ground.front],
            ...Array.from({ length: 6 }, () => [2.2 * next() - 1.2, 3.5 * next() - 2])
          ] as [number, number][];
          const turn = ((heading - 90) * Math.PI) / 180;
          const placements = places.map(([x, y]) => ({
            x: x * Math.cos(turn) - y * Math.sin(turn),
            y: x * Math.sin(turn) + y * Math.cos(turn),
            heading
          }));
          const found = lattice.reducedAt(places);
          const wanted = reducedAt(small, filaments, placements);
          places.forEach((__, k) => {
            const [a, b] = [found, wanted].map((z) => z.slice(k * small.rank, (k + 1) * small.rank));
            // a tenth of what the compressed form may be wrong
            expect(errorOf(dot(a!, a!), dot(b!, b!), inductance)).toBeLessThan(0.1);
          });
        }
      expect(latticeSize(small, ground)).toBeGreaterThan(0);
    });
  });
});
