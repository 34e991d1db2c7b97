/**
 * A closed ring of round conductor. L = µ0R(ln(8R/a) − 2): the current runs on the conductor's surface. Points on its
 * axis line with the tangent times the step: a closed smooth curve, so equal steps converge geometrically.
 */
import { circleExternal } from '../inductance/circles';
import { MU0 } from '../constants';
import type { RingPart } from './parts';

export interface RingPath {
  readonly ring: RingPart;
  readonly inductance: number;
  /** Position and tangent × step of every point, metres. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly dx: Float64Array;
  readonly dy: Float64Array;
  readonly dz: Float64Array;
}

const POINTS = 32;
const LEAST_POINTS = 12;

export const ringPath = (ring: RingPart, fineness: number): RingPath => {
  const count = Math.max(LEAST_POINTS, Math.round(POINTS * Math.min(1, fineness)));
  const [nx, ny, nz] = ring.axis;
  const size = Math.hypot(nx, ny, nz);
  const n = [nx / size, ny / size, nz / size] as const;
  // any direction that is not along the axis spans the ring's plane with it
  const other = Math.abs(n[2]) < 0.9 ? ([0, 0, 1] as const) : ([1, 0, 0] as const);
  const cross = (a: readonly number[], b: readonly number[]): [number, number, number] => [
    a[1]! * b[2]! - a[2]! * b[1]!,
    a[2]! * b[0]! - a[0]! * b[2]!,
    a[0]! * b[1]! - a[1]! * b[0]!
  ];
  const raw = cross(other, n);
  const length = Math.hypot(...raw);
  const e1 = raw.map((value) => value / length);
  const e2 = cross(n, e1);
  const along = (axis: 0 | 1 | 2, centre: number, tangent: boolean): Float64Array =>
    Float64Array.from({ length: count }, (_, k) => {
      const angle = (2 * Math.PI * k) / count;
      const step = (2 * Math.PI * ring.radius) / count;
      return tangent
        ? step * (Math.cos(angle) * e2[axis] - Math.sin(angle) * e1[axis]!)
        : centre + ring.radius * (Math.cos(angle) * e1[axis]! + Math.sin(angle) * e2[axis]);
    });
  return {
    ring,
    inductance: circleExternal(ring.radius, ring.conductorRadius),
    x: along(0, ring.x, false),
    y: along(1, ring.y, false),
    z: along(2, ring.height, false),
    dx: along(0, 0, true),
    dy: along(1, 0, true),
    dz: along(2, 0, true)
  };
};

/** Neumann's integral of two rings, H; conductors that touch count as a conductor's radius apart. */
export const mutualOfRings = (a: RingPath, b: RingPath): number => {
  const least = Math.max(a.ring.conductorRadius, b.ring.conductorRadius) ** 2;
  let sum = 0;
  for (let i = 0; i < a.x.length; i++)
    for (let j = 0; j < b.x.length; j++) {
      const x = a.x[i]! - b.x[j]!;
      const y = a.y[i]! - b.y[j]!;
      const z = a.z[i]! - b.z[j]!;
      const facing = a.dx[i]! * b.dx[j]! + a.dy[i]! * b.dy[j]! + a.dz[i]! * b.dz[j]!;
      sum += facing / Math.sqrt(Math.max(least, x * x + y * y + z * z));
    }
  return (MU0 / (4 * Math.PI)) * sum;
};
