import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FieldPicture, FieldPlane, FieldWish } from '#analysis/field-picture/results';
import { createMeans } from '#analysis/means';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import type { Circuit, Probe, Site } from '#plan/schema';
import { between, SEED } from '../../physics/support/arbitraries';
import { relativeError } from '../../physics/support/reference';
import { bigSite, withMats } from '../../support/big-site';

const MU0 = 4e-7 * Math.PI;
/** Row 1: L1 square with cut corners at x = 0, L2 turned by 5° at 3.5, L3 in two cells at 7; L5 round at (0, 5). */
const SITE = bigSite(8);
const means = createMeans();
const answer = createAnswerer(means);

const SECTION: FieldPlane = { kind: 'section', from: [-2, 0], to: [2, 0], low_m: -0.5, high_m: 1.5 };
const WISH: FieldWish = {
  source: { kind: 'loop', id: 'L1' },
  plane: SECTION,
  columns: 41,
  rows: 21,
  vehicle: null,
  lines: 0
};
const CAR: Probe = { vehicle: 'car', at: [0.2, 0.3], heading: 90 };

const draw = (wish: Partial<FieldWish>, site: Site = SITE): FieldPicture =>
  finish(answer('draw-field', site, { ...WISH, ...wish }))!;

const node = ({ field, columns }: FieldPicture, column: number, row: number): readonly number[] => [
  ...field.subarray(3 * (row * columns + column), 3 * (row * columns + column) + 3)
];

describe('what is drawn', () => {
  it('has nodes from border to border, row by row from below', () => {
    const whole = draw({});
    const corner = draw({
      columns: 1,
      rows: 1,
      plane: { ...SECTION, from: [1.9, 0], to: [2.1, 0], low_m: 1.4, high_m: 1.6 }
    });
    node(whole, 40, 20).forEach((value, k) => expect(value).toBeCloseTo(node(corner, 0, 0)[k]!, 15));
  });

  it('is in x, y and z on a plan, and turns with a section', () => {
    const plan = draw({ plane: { kind: 'plan', z_m: 0.3, from: [1, 2], to: [-1, -2] }, columns: 3, rows: 3 });
    // (1, 0) at 0.3 m: on a section along y it lies in the middle, u along y, v upwards, across along x
    const section = draw({
      plane: { kind: 'section', from: [1, -1], to: [1, 1], low_m: 0.3, high_m: 0.9 },
      columns: 3,
      rows: 2
    });
    const [x, y, z] = node(plan, 2, 1);
    const [u, v, across] = node(section, 1, 0);
    expect([u, v, across]).toEqual([y, z, x]);
    const back = draw({
      plane: { kind: 'section', from: [1, 1], to: [1, -1], low_m: 0.3, high_m: 0.9 },
      columns: 3,
      rows: 2
    });
    node(back, 1, 0).forEach((value, k) => expect(value).toBeCloseTo([-y!, z!, -x!][k]!, 18));
  });

  it('does not count nodes in a wire for its strongest', () => {
    const plane: FieldPlane = { kind: 'plan', z_m: -0.0443, from: [0.8996, -0.1], to: [0.9004, 0.1] };
    const { field, strongest_T } = draw({ plane, columns: 3, rows: 3 });
    expect(Math.max(...field.map(Math.abs))).toBeGreaterThan(0);
    expect(strongest_T).toBe(0);
  });

  it('says that near to metal it shows the mesh: a third of its largest cell', () => {
    const { plates } = finish(answer('draw-currents', SITE, { source: WISH.source, vehicle: CAR }))!;
    const cells = plates.flatMap(({ xs, ys }) =>
      [xs, ys].flatMap((nodes) => nodes.slice(1).map((node, k) => node - nodes[k]!))
    );
    expect(draw({ vehicle: CAR }).unresolved_m).toBeCloseTo(Math.max(...cells) / 3, 12);
    expect(draw({}).unresolved_m).toBe(0);
  });

  it('shows its wires turn by turn, with the current towards whoever looks', () => {
    const { wires } = draw({});
    const right = wires.filter(({ u }) => u > 2);
    expect(wires).toHaveLength(6);
    right.forEach(({ u, v }) => {
      expect(u).toBeCloseTo(2.9, 12);
      expect(v).toBeGreaterThan(-0.05);
      expect(v).toBeLessThan(-0.035);
    });
    // counter-clockwise: on the right it runs along +y, away from someone who looks along +y
    expect(wires.map(({ current }) => current).sort()).toEqual([-1, -1, -1, 1, 1, 1]);
    expect(right.every(({ current }) => current === -1)).toBe(true);
    expect(draw({ plane: { kind: 'plan', z_m: 0.1, from: [-2, -2], to: [2, 2] } }).wires).toEqual([]);
  });

  it('cuts a round loop on both sides', () => {
    const { wires } = draw({
      source: { kind: 'loop', id: 'L5' },
      plane: { ...SECTION, from: [-2, 5.3], to: [2, 5.3] }
    });
    expect(wires).toHaveLength(6);
    for (const { u, current } of wires) {
      expect(Math.abs(u - 2)).toBeCloseTo(Math.sqrt(0.81 - 0.09), 12);
      expect(current).toBe(u > 2 ? -1 : 1);
    }
  });

  it('agrees with the current that Ampère finds round its wires', () => {
    // round the right side of the loop, a circle of nodes asked for one by one
    const count = 48;
    let round = 0;
    for (let k = 0; k < count; k++) {
      const angle = (2 * Math.PI * k) / count;
      const [u, v] = [2.9 + 0.2 * Math.cos(angle), -0.04 + 0.2 * Math.sin(angle)];
      const picture = draw({
        columns: 1,
        rows: 1,
        plane: { kind: 'section', from: [u - 3, 0], to: [u - 1, 0], low_m: v - 0.1, high_m: v + 0.1 }
      });
      const [a, b] = node(picture, 0, 0);
      round += ((2 * Math.PI * 0.2) / count) * (-Math.sin(angle) * a! + Math.cos(angle) * b!);
    }
    const enclosed = draw({})
      .wires.filter(({ u }) => u > 2)
      .reduce((sum, { current }) => sum + current, 0);
    expect(relativeError(round, MU0 * enclosed)).toBeLessThan(1e-6);
  });
});

describe('a circuit', () => {
  const circuitOf = (id: string, reversed: boolean, parallel = false): Circuit => ({
    ...SITE.circuits[0]!,
    id,
    strings: parallel
      ? [[{ loop: 'L1', reversed: false }], [{ loop: 'L5', reversed }]]
      : [
          [
            { loop: 'L1', reversed: false },
            { loop: 'L5', reversed }
          ]
        ]
  });
  const siteOf = (circuit: Circuit): Site => ({ ...SITE, circuits: [circuit] });
  const shownBy = (circuit: Circuit): FieldPicture =>
    draw(
      {
        source: { kind: 'circuit', id: circuit.id },
        plane: { kind: 'section', from: [0, -2], to: [0, 8], low_m: -0.2, high_m: 1 }
      },
      siteOf(circuit)
    );
  const inLoop = ({ wires }: FieldPicture, low: number, high: number): number =>
    Math.abs(wires.filter(({ u }) => u > low && u < high).reduce((sum, { current }) => sum + current, 0)) / 3;

  it('sends its current through every loop of a string, less what capacitance takes', () => {
    const picture = shownBy(circuitOf('both', false));
    for (const [low, high] of [
      [1, 1.5],
      [6, 6.5]
    ] as const) {
      expect(inLoop(picture, low, high)).toBeGreaterThan(0.99);
      expect(inLoop(picture, low, high)).toBeLessThan(1.1);
    }
  });

  it('shares it among strings: what the loops of the two carry adds up to it', () => {
    const picture = shownBy(circuitOf('beside', false, true));
    const [one, other] = [inLoop(picture, 1, 1.5), inLoop(picture, 6, 6.5)];
    expect(one).toBeGreaterThan(0.3);
    expect(other).toBeGreaterThan(0.3);
    expect(relativeError(one + other, 1)).toBeLessThan(0.05);
  });

  it('turns the field of a loop that is connected the other way', () => {
    const [same, turned] = [shownBy(circuitOf('same', false)), shownBy(circuitOf('turned', true))];
    const over = (picture: FieldPicture, u: number): number => node(picture, Math.round(4 * u), 8)[1]!;
    expect(relativeError(over(turned, 2), over(same, 2))).toBeLessThan(0.1);
    expect(relativeError(-over(turned, 7), over(same, 7))).toBeLessThan(0.1);
  });
});

describe('a vehicle', () => {
  it('weakens the field above its underside, and shows as metal', () => {
    const [alone, over] = [draw({}), draw({ vehicle: CAR })];
    const strength = (picture: FieldPicture, row: number): number => Math.hypot(...node(picture, 22, row));
    // 0.8 m over the road, above a plate at 0.45 m
    expect(strength(over, 13)).toBeLessThan(0.3 * strength(alone, 13));
    expect(over.metal).toHaveLength(1);
    const [[from, to]] = over.metal as readonly [readonly (readonly [number, number])[]];
    expect([from![0], to![0]].sort((a, b) => a - b)).toEqual([expect.closeTo(1.4, 9), expect.closeTo(3, 9)]);
    expect([from![1], to![1]]).toEqual([0.45, 0.45]);
    expect(alone.metal).toEqual([]);
    expect([alone.leftOut, over.leftOut]).toEqual([[], ['iron']]);
    expect(alone.unresolved_m).toBe(0);
    expect(over.unresolved_m).toBeGreaterThan(0.05);
  });

  it('has its outline on a plan, turned as it stands', () => {
    const plane: FieldPlane = { kind: 'plan', z_m: 0.2, from: [-4, -4], to: [4, 4] };
    const { metal } = draw({ plane, vehicle: { ...CAR, heading: 0 } });
    const corners = metal[0]!;
    expect(corners[0]).toEqual(corners[corners.length - 1]);
    const [xs, ys] = [0, 1].map((k) => corners.map((corner) => corner[k]!));
    expect(Math.max(...xs!) - Math.min(...xs!)).toBeCloseTo(4.2, 9);
    expect(Math.max(...ys!) - Math.min(...ys!)).toBeCloseTo(1.6, 9);
  });

  it('with rims shows them as whole circles in their own plane, and their conductor across it', () => {
    const bicycle: Probe = { vehicle: 'bicycle', at: [0, 0], heading: 90 };
    const along: FieldPlane = { kind: 'section', from: [0, -2], to: [0, 2], low_m: -0.2, high_m: 1 };
    const whole = draw({ vehicle: bicycle, plane: along }).metal;
    expect(whole).toHaveLength(2);
    for (const ring of whole) expect(Math.max(...ring.map(([, v]) => v))).toBeGreaterThan(0.5);
    const across = draw({ vehicle: bicycle, plane: { ...along, from: [-1, 0.525], to: [1, 0.525] } }).metal;
    expect(across).toHaveLength(2);
    for (const ring of across) expect(Math.max(...ring.map(([u]) => Math.abs(u - 1)))).toBeLessThan(0.02);
  });
});

describe('what is not in it', () => {
  it('is steel near the source, a pavement that conducts, and iron of a vehicle', () => {
    const steel = withMats(SITE);
    expect(draw({}, steel).leftOut).toEqual(['steel']);
    expect(draw({ source: { kind: 'circuit', id: 'C1' } }, steel).leftOut).toEqual(['steel']);
    expect(draw({}, { ...steel, steel: steel.steel.slice(-1) }).leftOut).toEqual([]);
    const wet = { ...SITE, pavement: { ...SITE.pavement, conductivity_S_m: 0.01 } };
    expect(draw({ vehicle: CAR }, wet).leftOut).toEqual(['pavement', 'iron']);
  });

  it('is null for a source or a vehicle that is not there', () => {
    const asked = (wish: Partial<FieldWish>) => finish(answer('draw-field', SITE, { ...WISH, ...wish }));
    expect(asked({ source: { kind: 'loop', id: 'nowhere' } })).toBeNull();
    expect(asked({ source: { kind: 'circuit', id: 'L1' } })).toBeNull();
    expect(asked({ vehicle: { ...CAR, vehicle: 'nobody' } })).toBeNull();
  });
});

describe('any plane', () => {
  const places = fc.tuple(between(-3, 3), between(-3, 3));
  const planes = fc.oneof(
    fc.record({
      kind: fc.constant('plan' as const),
      z_m: fc.constantFrom(-0.0462, 0, 0.45, 1),
      from: places,
      to: places
    }),
    fc.record({
      kind: fc.constant('section' as const),
      from: fc.constantFrom<readonly [number, number]>([-0.9, 0], [0.9, -2], [0, 0]),
      to: fc.constantFrom<readonly [number, number]>([0.9, 0], [0.9, 2], [0, 0]),
      low_m: fc.constantFrom(-0.0462, -1),
      high_m: fc.constantFrom(0.45, 2, -0.0462)
    })
  );

  it('has a finite field and finite lines, in wires and in metal too', () => {
    fc.assert(
      fc.property(planes, fc.boolean(), fc.constantFrom('L1', 'L3', 'L5'), (plane, hasCar, id) => {
        const wish = { plane, vehicle: hasCar ? CAR : null, source: { kind: 'loop' as const, id } };
        const picture = draw({ ...wish, columns: 9, rows: 5, lines: 6 });
        expect(picture.field.every(Number.isFinite)).toBe(true);
        expect(picture.lines.flat(2).every(Number.isFinite)).toBe(true);
        expect(Number.isFinite(picture.strongest_T)).toBe(true);
      }),
      { seed: SEED, numRuns: 60 }
    );
  });
});
