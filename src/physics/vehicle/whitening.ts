/**
 * The statistics behind a compressed vehicle (see `compressed.ts`): what the samples of a field tell of the fluxes through its
 * mesh, and of one another, and what of their weights matters.
 */
import { backSubstituteInPlace, choleskyFactor, forwardSubstituteInPlace } from '../numeric/cholesky';
import { lowRank } from '../numeric/low-rank';
import type { Body } from './body';
import { gather } from './flux';
import type { PlateSampling } from './sampling';
import type { SymmetryBlock } from './symmetry';

/** A sample, and the number of the plate that it belongs to. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly plate: number;
}

/** A sample, or two mirrored ones; −1 for none. */
export type Pair = readonly [number, number];

/** Keeps cov(g, g) positive in floating point; of its diagonal. */
const NUGGET = 1e-9;
/** Unknowns that are done before others get their turn. */
const A_TURN = 64;

/** Distance of the wires from the two plates together, metres; null where their fields tell nothing of one another. */
export type Together = (plate: number, other: number) => number | null;

/**
 * Of wires that are known to lie to the side nobody can say what two plates of different heights see of the same: each is
 * left to its own samples.
 */
export const togetherOf =
  (plates: readonly PlateSampling[], clearance: number): Together =>
  (plate, other) =>
    clearance > 0 && plates[plate]!.height !== plates[other]!.height
      ? null
      : plates[plate]!.distance + plates[other]!.distance;

/** Covariance of the fields at two places; see above. */
const covariance = (dx: number, dy: number, together: number | null): number =>
  together === null ? 0 : 1 / Math.sqrt(dx * dx + dy * dy + together * together);

/** cov(φ, g) of one sample. */
export const fluxFrom = (place: Place, body: Body, together: Together): Float64Array => {
  const flux = new Float64Array(body.size);
  let first = 0;
  body.plates.forEach((mesh, p) => {
    const apart = together(p, place.plate);
    if (apart !== null) {
      const field = mesh.pointX.map((x, k) => covariance(x - place.x, mesh.pointY[k]! - place.y, apart));
      gather(mesh, field, flux, first);
    }
    first += mesh.unknowns;
  });
  return flux;
};

/** A block's share of L⁻¹·φ, times a factor. */
export const reduced = (
  { first, second, sign, factor }: SymmetryBlock,
  flux: Float64Array,
  by: number
): Float64Array => {
  const values = new Float64Array(factor.size);
  for (let k = 0; k < factor.size; k++) {
    const j = second[k]!;
    values[k] = by * (j < 0 ? flux[first[k]!]! : (flux[first[k]!]! + sign * flux[j]!) * Math.SQRT1_2);
  }
  forwardSubstituteInPlace(factor, values, 0);
  return values;
};

export interface Whitened {
  /** Members that are places on plates; rings follow. */
  readonly count: number;
  readonly size: number;
  /** R of the places' covariance. */
  readonly factor: NonNullable<ReturnType<typeof choleskyFactor>>;
  /** w's matrix: QᵀQ, Q = L⁻¹·cov(φ, g)·R⁻ᵀ; of rings L⁻¹·e. */
  readonly matrix: Float64Array;
  /** Its trace over the places. */
  readonly ofPlates: number;
}

export function* whiten(
  members: readonly Pair[],
  sign: number,
  fluxes: readonly Float64Array[],
  places: readonly Place[],
  together: Together
): Generator<void, Whitened> {
  const size = members.length;
  const count = members.findIndex(([i]) => i >= places.length);
  const ofPlaces = count < 0 ? size : count;
  const between = (i: number, j: number): number => {
    const [a, b] = [places[i]!, places[j]!];
    return covariance(a.x - b.x, a.y - b.y, together(a.plate, b.plate));
  };
  const covariances = new Float64Array(ofPlaces * ofPlaces);
  for (let a = 0; a < ofPlaces; a++)
    for (let b = 0; b <= a; b++) {
      const [i, mirrorOfI] = members[a]!;
      const [j, mirrorOfJ] = members[b]!;
      const both = mirrorOfI >= 0 && mirrorOfJ >= 0;
      covariances[a * ofPlaces + b] = both
        ? between(i, j) + sign * between(i, mirrorOfJ)
        : between(i, j) * (mirrorOfI >= 0 || mirrorOfJ >= 0 ? Math.SQRT2 : 1);
    }
  for (let a = 0; a < ofPlaces; a++) covariances[a * ofPlaces + a]! *= 1 + NUGGET;
  const factor = choleskyFactor(covariances, ofPlaces)!;
  const unknowns = fluxes[0]?.length ?? 0;
  // row by row of unknowns: what R⁻¹ does to a column of samples it does here to each unknown's covariances
  const row = new Float64Array(size);
  const matrix = new Float64Array(size * size);
  for (let u = 0; u < unknowns; u++) {
    if (u % A_TURN === A_TURN - 1) yield;
    for (let a = 0; a < size; a++) row[a] = fluxes[a]![u]!;
    forwardSubstituteInPlace(factor, row, 0);
    for (let a = 0; a < size; a++) {
      const value = row[a]!;
      if (value === 0) continue;
      for (let b = 0; b <= a; b++) matrix[a * size + b]! += value * row[b]!;
    }
  }
  for (let a = 0; a < size; a++) for (let b = 0; b < a; b++) matrix[b * size + a] = matrix[a * size + b]!;
  let ofPlates = 0;
  for (let a = 0; a < ofPlaces; a++) ofPlates += matrix[a * size + a]!;
  return { count: ofPlaces, size, factor, matrix, ofPlates };
}

/** Rows of C. A ring's flux has no variance of its own here: it is scaled so that no ring is ever left out. */
export const rowsOf = (
  { count, size, factor, matrix }: Whitened,
  power: number,
  tail: number
): { readonly rows: Float64Array; readonly rank: number } => {
  const scales = Float64Array.from({ length: size }, (_, a) =>
    a < count ? 1 : Math.sqrt((power || 1) / matrix[a * size + a]!)
  );
  const scaled = matrix.map((value, k) => value * scales[Math.floor(k / size)]! * scales[k % size]!);
  const kept = lowRank(scaled, size, tail);
  const rows = new Float64Array(kept.length * size);
  kept.forEach((row, r) => {
    for (let a = count; a < size; a++) row[a]! /= scales[a]!;
    // z = (R⁻ᵀ·row)·g
    backSubstituteInPlace(factor, row);
    rows.set(row, r * size);
  });
  return { rows, rank: kept.length };
};
