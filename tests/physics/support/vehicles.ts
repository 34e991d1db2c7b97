import { externalInductance } from '#physics/inductance/loop';
import type { Winding } from '#physics/inductance/winding';
import { dot } from '#physics/numeric/cholesky';
import { buildBody, type Body } from '#physics/vehicle/body';
import { filamentsOf, type Placement } from '#physics/field/filaments';
import { reducedFlux } from '#physics/vehicle/flux';
import type { Part, PlatePart, RingPart } from '#physics/vehicle/parts';

export const plate = (width: number, length: number, height: number, x = 0, y = 0): PlatePart => ({
  kind: 'plate',
  x,
  y,
  height,
  width,
  length
});

export const rim = (over: Partial<RingPart> = {}): RingPart => ({
  kind: 'ring',
  x: 0,
  y: 0,
  height: 0.33,
  radius: 0.31,
  conductorRadius: 0.008,
  axis: [1, 0, 0],
  ...over
});

export const CAR: readonly Part[] = [plate(1.6, 4.2, 0.45)];
export const BICYCLE: readonly Part[] = [rim({ y: 0.525 }), rim({ y: -0.525 })];
export const OVER: Placement = { x: 0, y: 0, heading: 90 };

/** Change of the mutual inductance of two loops, or of the inductance of one, H. */
export const change = (body: Body, a: Winding, placement: Placement = OVER, b: Winding = a): number =>
  -dot(reducedFlux(body, filamentsOf(a), placement), reducedFlux(body, filamentsOf(b), placement));

export const share = (body: Body, winding: Winding, placement: Placement = OVER): number =>
  change(body, winding, placement) / externalInductance(winding);

const kept = new Map<string, Body>();
/** The same vehicle is factored once a file. */
export const bodyOf = (parts: readonly Part[], fineness = 1): Body => {
  const key = JSON.stringify([parts, fineness]);
  const body = kept.get(key) ?? buildBody(parts, fineness);
  kept.set(key, body);
  return body;
};
