/** A picture's plane in space: from its own u and v to x, y and z, and back. */
import type { Field, Points } from '#physics/field/points';
import type { FieldPlane } from './results';

type Vector = readonly [number, number, number];

export interface Frame {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
  /** Where u and v are 0. */
  readonly origin: Vector;
  /** Unit vectors along u and v, and across: u × v. */
  readonly u: Vector;
  readonly v: Vector;
  readonly across: Vector;
}

/** A section without length looks along x. */
export const frameOf = (plane: FieldPlane): Frame => {
  if (plane.kind === 'plan') {
    const [[x0, y0], [x1, y1]] = [plane.from, plane.to];
    return {
      left: Math.min(x0, x1),
      right: Math.max(x0, x1),
      low: Math.min(y0, y1),
      high: Math.max(y0, y1),
      origin: [0, 0, plane.z_m],
      u: [1, 0, 0],
      v: [0, 1, 0],
      across: [0, 0, 1]
    };
  }
  const { from, to, low_m, high_m } = plane;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = length > 0 ? [(to[0] - from[0]) / length, (to[1] - from[1]) / length] : [1, 0];
  return {
    left: 0,
    right: length,
    low: Math.min(low_m, high_m),
    high: Math.max(low_m, high_m),
    origin: [from[0], from[1], 0],
    u: [ux, uy, 0],
    v: [0, 0, 1],
    across: [uy, -ux, 0]
  };
};

export const place = (
  { origin, u, v }: Frame,
  a: number,
  b: number,
  { x, y, z }: Points,
  at: number
): void => {
  x[at] = origin[0] + a * u[0] + b * v[0];
  y[at] = origin[1] + a * u[1] + b * v[1];
  z[at] = origin[2] + a * u[2] + b * v[2];
};

const along = ([x, y, z]: Vector, field: Field, at: number): number =>
  x * field.x[at]! + y * field.y[at]! + z * field.z[at]!;

/** The field's parts along u, along v and across. */
export const inPlane = ({ u, v, across }: Frame, field: Field, at: number): Vector => [
  along(u, field, at),
  along(v, field, at),
  along(across, field, at)
];

/** A place in space as u, v and the distance from the plane. */
export const seenFrom = ({ origin, u, v, across }: Frame, [x, y, z]: Vector): Vector => {
  const [px, py, pz] = [x - origin[0], y - origin[1], z - origin[2]];
  return [
    px * u[0] + py * u[1] + pz * u[2],
    px * v[0] + py * v[1] + pz * v[2],
    px * across[0] + py * across[1] + pz * across[2]
  ];
};
