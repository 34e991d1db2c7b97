/**
 * A vehicle compressed: ΔL of loops i and j is −zᵢ·zⱼ with z = C·g, g the field at a few places (`sampling.ts`) and the
 * flux through its rings. For very many places of one vehicle, where a mesh of some hundred unknowns is too slow.
 *
 * Between its places the field is what a Gaussian process would say: wires anywhere in a plane below, without any order,
 * give fields whose covariance is that of sources with an even spectrum and e^(−kH) above them,
 * ∫e^(−k(H₁+H₂))·J₀(kρ)·dk = 1/√(ρ² + (H₁+H₂)²) (Laplace transform of J₀). The best linear estimate of the mesh's fluxes φ
 * from samples g is cov(φ, g)·cov(g, g)⁻¹·g (least squares, "kriging"). With cov(g, g) = R·Rᵀ the samples are R·w, w of
 * unit variance; what is left of φᵀ·A⁻¹·φ in w is a small matrix, and of it the part that matters (`low-rank.ts`).
 *
 * Not for a vehicle over steel: there the field has sources of two phases and the matrix an image. Tests state the error
 * against the mesh: 0.3 % of a response, or 2·10⁻⁶ of the loop's inductance where that is more.
 */
import { MU0 } from '../constants';
import { backSubstituteInPlace, choleskyFactor, forwardSubstituteInPlace } from '../numeric/cholesky';
import { lowRank } from '../numeric/low-rank';
import type { Body } from './body';
import { gather } from './flux';
import type { RingPath } from './ring';
import { samplingsOf, type PlateSampling } from './sampling';
import type { SymmetryBlock } from './symmetry';

/** Samples, or sums and differences of mirrored ones over √2; j is −1 for one that stands alone. */
export interface CompressedBlock {
  readonly first: Int32Array;
  readonly second: Int32Array;
  readonly sign: 1 | -1;
  /** Rows of C, one after the other, each as long as `first`. */
  readonly rows: Float64Array;
  readonly rank: number;
}

export interface CompressedBody {
  readonly plates: readonly PlateSampling[];
  readonly rings: readonly RingPath[];
  /** Samples in all: those of the plates first, then one of each ring: ∮A·dl over µ0/4π. */
  readonly samples: number;
  readonly blocks: readonly CompressedBlock[];
  /** Length of z. */
  readonly rank: number;
}

/** What may be left out of the sum of all responses to fields without any order. */
const TAIL = 1.3e-5;
/** The same for wires that are known to be away. */
const AWAY_TAIL = 1e-4;
/** Keeps cov(g, g) positive in floating point; of its diagonal. */
const NUGGET = 1e-9;
/** With more samples than this nothing is won. */
const MOST_SAMPLES = 1_200;

/**
 * Null for a vehicle that is too large for its height to be worth it. `clearance`: for wires that stay at least so far from
 * every plate, metres; fewer samples then do. Every step is a fraction of a millisecond or a few.
 */
export function* compressInSteps(body: Body, clearance = 0): Generator<void, CompressedBody | null> {
  const plates = samplingsOf(
    body.plates.map(({ plate }) => plate),
    clearance
  );
  const together = togetherOf(plates, clearance);
  const places = plates.flatMap(placesOf);
  const samples = places.length + body.rings.length;
  if (samples > MOST_SAMPLES) return null;
  const mirrored = mirrorOf(body, plates);
  const blocks = body.blocks.map((block) => membersOf(block, body, places.length, mirrored));
  const fluxes = blocks.map(({ members }) => members.map((): Float64Array | null => null));
  for (let i = 0; i < places.length; i++) {
    if (mirrored && mirrored[i]! < i) continue;
    const flux = fluxFrom(places[i]!, body, together);
    blocks.forEach(({ block, members, numbers }, b) => {
      const member = numbers.get(i);
      if (member === undefined) return;
      const twice = members[member]![1] >= 0 ? Math.SQRT2 : 1;
      fluxes[b]![member] = reduced(block, flux, twice);
    });
    yield;
  }
  body.rings.forEach((_, k) => {
    const unit = new Float64Array(body.size);
    unit[body.size - body.rings.length + k] = MU0 / (4 * Math.PI);
    blocks.forEach(({ block, numbers }, b) => {
      const member = numbers.get(places.length + k);
      if (member !== undefined) fluxes[b]![member] = reduced(block, unit, 1);
    });
  });
  const whitened: Whitened[] = [];
  for (const [b, { block, members }] of blocks.entries()) {
    whitened.push(whiten(members, block.sign, fluxes[b]!.map((flux) => flux!), places, together));
    yield;
  }
  const power = whitened.reduce((sum, { ofPlates }) => sum + ofPlates, 0);
  const compressed: CompressedBlock[] = [];
  for (const [b, { members, block }] of blocks.entries()) {
    const { rows, rank } = rowsOf(whitened[b]!, power, (clearance > 0 ? AWAY_TAIL : TAIL) * power);
    compressed.push({
      first: Int32Array.from(members, ([i]) => i),
      second: Int32Array.from(members, ([, j]) => j),
      sign: block.sign,
      rows,
      rank
    });
    yield;
  }
  return {
    plates,
    rings: body.rings,
    samples,
    blocks: compressed,
    rank: compressed.reduce((sum, { rank }) => sum + rank, 0)
  };
}

interface Place {
  readonly x: number;
  readonly y: number;
  readonly plate: number;
}

const placesOf = ({ pointX, pointY }: PlateSampling, plate: number): readonly Place[] =>
  Array.from(pointX, (x, k) => ({ x, y: pointY[k]!, plate }));

/** Number of each place's mirror image, where the body's matrix has fallen into what a mirror keeps and what it reverses. */
const mirrorOf = ({ blocks }: Body, plates: readonly PlateSampling[]): readonly number[] | null => {
  if (!blocks.some(({ second }) => second.some((j) => j >= 0))) return null;
  let offset = 0;
  return plates.flatMap(({ xs, ys }) => {
    const start = offset;
    offset += xs.length * ys.length;
    return [...xs].flatMap((_, c) => [...ys].map((__, r) => start + (xs.length - 1 - c) * ys.length + r));
  });
};

type Pair = readonly [number, number];

/** The samples of one block in the order of their numbers, and each one's member by the first of its numbers. */
const membersOf = (
  block: SymmetryBlock,
  body: Body,
  places: number,
  mirrored: readonly number[] | null
): { block: SymmetryBlock; members: readonly Pair[]; numbers: ReadonlyMap<number, number> } => {
  const members: Pair[] = [];
  for (let i = 0; i < places; i++) {
    const mirror = mirrored ? mirrored[i]! : -1;
    if (!mirrored) members.push([i, -1]);
    else if (mirror > i) members.push([i, mirror]);
    else if (mirror === i && block.sign === 1) members.push([i, -1]);
  }
  const firstRing = body.size - body.rings.length;
  body.rings.forEach((_, k) => {
    if (block.first.includes(firstRing + k)) members.push([places + k, -1]);
  });
  return { block, members, numbers: new Map(members.map(([i], number) => [i, number])) };
};

/** Distance of the wires from the two plates together, metres; null where their fields tell nothing of one another. */
type Together = (plate: number, other: number) => number | null;

/**
 * Of wires that are known to lie to the side nobody can say what two plates of different heights see of the same: each is
 * left to its own samples.
 */
const togetherOf =
  (plates: readonly PlateSampling[], clearance: number): Together =>
  (plate, other) =>
    clearance > 0 && plates[plate]!.height !== plates[other]!.height
      ? null
      : plates[plate]!.distance + plates[other]!.distance;

/** Covariance of the fields at two places; see above. */
const covariance = (dx: number, dy: number, together: number | null): number =>
  together === null ? 0 : 1 / Math.sqrt(dx * dx + dy * dy + together * together);

/** cov(φ, g) of one sample. */
const fluxFrom = (place: Place, body: Body, together: Together): Float64Array => {
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
const reduced = ({ first, second, sign, factor }: SymmetryBlock, flux: Float64Array, by: number): Float64Array => {
  const values = new Float64Array(factor.size);
  for (let k = 0; k < factor.size; k++) {
    const j = second[k]!;
    values[k] = by * (j < 0 ? flux[first[k]!]! : (flux[first[k]!]! + sign * flux[j]!) * Math.SQRT1_2);
  }
  forwardSubstituteInPlace(factor, values, 0);
  return values;
};

interface Whitened {
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

const whiten = (
  members: readonly Pair[],
  sign: number,
  fluxes: readonly Float64Array[],
  places: readonly Place[],
  together: Together
): Whitened => {
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
};

/** Rows of C. A ring's flux has no variance of its own here: it is scaled so that no ring is ever left out. */
const rowsOf = (
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
