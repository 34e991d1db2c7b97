import { describe, expect, it } from 'vitest';
import { dot } from '#physics/numeric/cholesky';
import { buildBody } from '#physics/vehicle/body';
import { reducedFlux } from '#physics/vehicle/flux';
import type { Part } from '#physics/vehicle/parts';
import { raisedBody } from '#physics/vehicle/raised';
import { filamentsOf } from '#physics/field/filaments';
import { relativeError } from '../support/reference';
import { drawnWinding } from '../support/windings';

const filaments = filamentsOf(
  drawnWinding({
    id: 'L',
    name: '',
    turns: 3,
    wire: 'awg14',
    slot: { depth: 0.05, width: 0.008, relativePermittivity: 4 },
    tail: { length: 0 },
    shape: { kind: 'rectangle', centre: [0, 0], width: 1.8, length: 1.8, rotation: 0, cornerCut: 0 }
  })
);

const parts = (by: number): Part[] => [
  { kind: 'plate', x: 0, y: 0.2, height: 0.4 + by, width: 1, length: 2 },
  { kind: 'ring', x: 0.1, y: 0.9, height: 0.5 + by, radius: 0.3, conductorRadius: 0.01, axis: [1, 0, 0.4] }
];

const effect = (body: ReturnType<typeof buildBody>): number => {
  const reduced = reducedFlux(body, filaments, { x: 0.3, y: -0.2, heading: 80 });
  return dot(reduced, reduced);
};

describe('a lifted body', () => {
  it.each([-0.1, -0.03, 0.05, 0.2])('answers as one built %f m higher, to the error of a mesh', (by) => {
    expect(
      relativeError(effect(raisedBody(buildBody(parts(0)), by)), effect(buildBody(parts(by))))
    ).toBeLessThan(5e-3);
  });

  it('lifted by nothing is the same', () => {
    const body = buildBody(parts(0));
    expect(effect(raisedBody(body, 0))).toBe(effect(body));
  });

  it('lifted and let down again is the same', () => {
    const body = buildBody(parts(0));
    expect(relativeError(effect(raisedBody(raisedBody(body, 0.25), -0.25)), effect(body))).toBeLessThan(
      1e-12
    );
  });
});
