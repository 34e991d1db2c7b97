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
 * Over steel the same holds for a body whose matrix has images, with the steel's currents as further sources. Tests state
 * the error against the mesh: 0.3 % of a response (at few places 0.5 %), or 2·10⁻⁶ of the loop's inductance where that is
 * more.
 */
import { MU0 } from '../constants';
import type { Body } from './body';
import type { RingPath } from './ring';
import { samplingsOf, type PlateSampling } from './sampling';
import type { SymmetryBlock } from './symmetry';
import {
  fluxFrom,
  reduced,
  rowsOf,
  togetherOf,
  whiten,
  type Pair,
  type Place,
  type Whitened
} from './whitening';

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
    whitened.push(
      yield* whiten(
        members,
        block.sign,
        fluxes[b]!.map((flux) => flux!),
        places,
        together
      )
    );
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
