import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import type { CurrentsWish } from '#analysis/field-picture/results';
import { createAnswerer } from '#analysis/questions';
import { finish } from '#analysis/steps';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { wireOf } from '#plan/catalogue/wires';
import type { Shape } from '#plan/schema';
import { relativeError } from '../../physics/support/reference';
import { bigSite } from '../../support/big-site';

const BIG = bigSite(4);
const SQUARE: Shape = {
  kind: 'rectangle',
  centre: [0, 0],
  width: 1.8,
  length: 1.8,
  rotation: 0,
  cornerCut: 0
};
const SITE = { ...BIG, loops: BIG.loops.map((loop, k) => (k === 0 ? { ...loop, shape: SQUARE } : loop)) };
const answer = createAnswerer(createMeans());
const draw = (wish: Partial<CurrentsWish>) =>
  finish(
    answer('draw-currents', SITE, {
      source: { kind: 'loop', id: 'L1' },
      vehicle: { vehicle: 'car', at: [0, 0], heading: 90 },
      ...wish
    })
  );

describe('currents in a plate', () => {
  it('run against the loop, round its middle, and end at the rim', () => {
    const { plates } = draw({})!;
    const { xs, ys, psi, z_m } = plates[0]!;
    expect(psi).toHaveLength(xs.length * ys.length);
    expect(z_m).toBe(0.45);
    const at = (x: number, y: number): number => psi[y * xs.length + x]!;
    const [middle, ahead] = [(xs.length - 1) / 2, (ys.length - 1) / 2];
    expect([xs[middle], ys[ahead]]).toEqual([0, 0]);
    expect(Math.min(...psi)).toBe(at(middle, ahead));
    for (let p = 0; p < xs.length; p++) expect([at(p, 0), at(p, ys.length - 1)]).toEqual([0, 0]);
    for (let q = 0; q < ys.length; q++) expect([at(0, q), at(xs.length - 1, q)]).toEqual([0, 0]);
  });

  it('follow the loop when the vehicle stands off it: x to its right, y ahead', () => {
    // the vehicle heads along −x and stands 1 m beyond the loop along +x: the loop lies ahead of it
    const { plates } = draw({ vehicle: { vehicle: 'car', at: [1, 0.2], heading: 180 } })!;
    const { xs, ys, psi } = plates[0]!;
    const strongest = psi.indexOf(Math.min(...psi));
    expect(ys[Math.floor(strongest / xs.length)]).toBeGreaterThan(0.5);
    expect(Math.abs(xs[strongest % xs.length]!)).toBeLessThan(0.3);
  });

  it('of the circuit are those of its loop times its share of the current', () => {
    const [loop, circuit] = [draw({})!, draw({ source: { kind: 'circuit', id: 'C1' } })!];
    const shares = circuit.plates[0]!.psi.map((value, k) => value / loop.plates[0]!.psi[k]!);
    const inside = [...shares].filter((share) => Number.isFinite(share));
    for (const share of inside) expect(relativeError(share, inside[0]!)).toBeLessThan(1e-9);
    expect(inside[0]).toBeGreaterThan(0.99);
    expect(inside[0]).toBeLessThan(1.05);
  });
});

describe('currents in rims', () => {
  it('are named by their part, and drive back as much flux as the readout says', () => {
    const vehicle = { vehicle: 'bicycle', at: [0.9, 0] as const, heading: 90 };
    const { plates, rings } = draw({ vehicle })!;
    const { parts } = vehicleOf('bicycle', SITE)!;
    expect(plates).toEqual([]);
    expect(rings.map(({ part }) => parts[part]!.kind)).toEqual(['ring', 'ring']);
    // over one side of the loop both rims answer alike
    expect(relativeError(rings[0]!.current, rings[1]!.current)).toBeLessThan(1e-6);
    const readout = createAssessor().assess({ ...SITE, probes: [vehicle] }).probes[0]!;
    const deltaL = readout.loops.find(({ id }) => id === 'L1')!.deltaL_H;
    // with the rims less without, through the loop's own area at its wires' mean height, by the midpoint rule, three turns
    const height = -0.05 + 1.5 * wireOf('awg14', SITE)!.insulatedDiameter;
    const [cells, side] = [90, 0.02];
    const edge = 0.9 - side / 2;
    const fieldOf = (shown: typeof vehicle | null): Float64Array =>
      finish(
        answer('draw-field', SITE, {
          source: { kind: 'loop', id: 'L1' },
          plane: { kind: 'plan', z_m: height, from: [-edge, -edge], to: [edge, edge] },
          columns: cells,
          rows: cells,
          vehicle: shown,
          lines: 0
        })
      )!.field;
    const [over, alone] = [fieldOf(vehicle), fieldOf(null)];
    let flux = 0;
    for (let k = 2; k < over.length; k += 3) flux += side * side * (over[k]! - alone[k]!);
    expect(relativeError(3 * flux, deltaL)).toBeLessThan(0.01);
  });
});

describe('currents of nobody', () => {
  it('are null', () => {
    expect(draw({ source: { kind: 'loop', id: 'nowhere' } })).toBeNull();
    expect(draw({ vehicle: { vehicle: 'nobody', at: [0, 0], heading: 90 } })).toBeNull();
  });
});
