/**
 * A closed ring of round conductor. L = µ0R(ln(8R/a) − 2): the current runs on the conductor's surface. Points on its
 * axis line with the tangent times the step: a closed smooth curve, so equal steps converge geometrically.
 *
 * Of real metal the ring has an impedance Z = R + jω(L + Lᵢ), R and Lᵢ the skin effect of its section (`round-wire.ts`, as of
 * a straight wire of the ring's length). A loop that sends the flux φ per ampere through it sees ω²φ²/Z in series, whose
 * imaginary part is −ωφ²/Lₑ with Lₑ = |Z|²/(ω²(L + Lᵢ)) = L + Lᵢ + R²/(ω²(L + Lᵢ)). So a perfect ring of the effective
 * inductance Lₑ answers alike: exact for one ring, and for several as far as the phases of their currents are alike. Lₑ is
 * never below L. It holds at one frequency: over 20 to 100 kHz a steel rim's Lₑ changes by a few percent. Left out: a
 * permeable rim also draws the field to itself, which raises the loop's inductance a little.
 */
import { circleExternal } from '../inductance/circles';
import { MU0 } from '../constants';
import { roundConductorImpedance } from '../wire/round-wire';
import type { RingPart } from './parts';

export interface RingPath {
  readonly ring: RingPart;
  /** Of a ring of real metal the effective one, H. */
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

export const ringPath = (ring: RingPart, fineness: number): RingPath =>
  pathOf(ring, Math.max(LEAST_POINTS, Math.round(POINTS * Math.min(1, fineness))));

const externalOf = ({ radius, conductorRadius }: RingPart): number => circleExternal(radius, conductorRadius);

/** At which a ring of real metal is taken, Hz: units work at 20 to 100 kHz. */
export const REFERENCE_FREQUENCY = 50_000;

/** Inductance of the perfect ring that answers like this one at the reference frequency, H. */
export const effectiveInductance = (ring: RingPart): number => {
  const external = externalOf(ring);
  if (ring.resistivity === undefined) return external;
  const around = 2 * Math.PI * ring.radius;
  const perMetre = roundConductorImpedance(
    ring.conductorRadius,
    REFERENCE_FREQUENCY,
    ring.resistivity,
    ring.relativePermeability ?? 1
  );
  const inductance = external + around * perMetre.inductance;
  const resistance = (around * perMetre.resistance) / (2 * Math.PI * REFERENCE_FREQUENCY);
  return inductance + resistance ** 2 / inductance;
};

const pathOf = (ring: RingPart, count: number): RingPath => {
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
    inductance: effectiveInductance(ring),
    x: along(0, ring.x, false),
    y: along(1, ring.y, false),
    z: along(2, ring.height, false),
    dx: along(0, 0, true),
    dy: along(1, 0, true),
    dz: along(2, 0, true)
  };
};

/** Enough for two rings that touch along their whole length: steps half as long as a conductor is thick. */
const MOST_POINTS = 1_024;

/** A lower bound of the distance of two rings, metres: between their points they may come nearer by a step. */
const distanceOf = (a: RingPath, b: RingPath): number => {
  let nearest = Infinity;
  for (let i = 0; i < a.x.length; i++)
    for (let j = 0; j < b.x.length; j++)
      nearest = Math.min(nearest, Math.hypot(a.x[i]! - b.x[j]!, a.y[i]! - b.y[j]!, a.z[i]! - b.z[j]!));
  return nearest - (2 * Math.PI * Math.max(a.ring.radius, b.ring.radius)) / a.x.length;
};

/**
 * Neumann's integral of two rings, H. Conductors that would touch count as a conductor's radius apart, so that two rings
 * drawn into one place have k = 1 and no more.
 */
export const mutualOfRings = (first: RingPath, second: RingPath): number => {
  const radius = Math.max(first.ring.conductorRadius, second.ring.conductorRadius);
  const apart = distanceOf(first, second);
  const touching = apart < 2 * radius;
  const round = 4 * Math.PI * Math.max(first.ring.radius, second.ring.radius);
  const count = Math.min(MOST_POINTS, Math.max(POINTS, Math.ceil(round / Math.max(apart, radius))));
  const a = pathOf(first.ring, count);
  const b = pathOf(second.ring, count);
  const thickness = touching ? radius * radius : 0;
  let sum = 0;
  for (let i = 0; i < count; i++)
    for (let j = 0; j < count; j++) {
      const x = a.x[i]! - b.x[j]!;
      const y = a.y[i]! - b.y[j]!;
      const z = a.z[i]! - b.z[j]!;
      const facing = a.dx[i]! * b.dx[j]! + a.dy[i]! * b.dy[j]! + a.dz[i]! * b.dz[j]!;
      sum += facing / Math.sqrt(thickness + x * x + y * y + z * z);
    }
  const most = Math.sqrt(externalOf(first.ring) * externalOf(second.ring));
  return Math.max(-most, Math.min(most, (MU0 / (4 * Math.PI)) * sum));
};

/**
 * Mutual inductance, H, of one ring with the image of another in a conducting plane at z = −`depth`: the image's
 * horizontal current runs backwards, its vertical current as above.
 */
export const mutualOfImage = (ring: RingPath, other: RingPath, depth: number): number => {
  let sum = 0;
  for (let i = 0; i < ring.x.length; i++)
    for (let j = 0; j < other.x.length; j++) {
      const x = ring.x[i]! - other.x[j]!;
      const y = ring.y[i]! - other.y[j]!;
      const z = ring.z[i]! + other.z[j]! + 2 * depth;
      const facing = ring.dz[i]! * other.dz[j]! - ring.dx[i]! * other.dx[j]! - ring.dy[i]! * other.dy[j]!;
      sum += facing / Math.sqrt(x * x + y * y + z * z);
    }
  return (MU0 / (4 * Math.PI)) * sum;
};
