/**
 * What a compressed vehicle makes of a loop at many places: z of each place, one after the other. ΔL of loops i and j at a
 * place is −zᵢ·zⱼ, henries.
 */
import { inFrame, potentialAlong, verticalField, type Filaments, type Placement } from '../field/filaments';
import { FIELD, PACKED, room } from '../field/room';
import type { CompressedBlock, CompressedBody } from './compressed';
import type { RingPath } from './ring';

/** The samples of every block, block by block and in each place by place: what `C` is multiplied with. */
export interface Packed {
  readonly values: Float64Array;
  readonly starts: readonly number[];
}

export const packedFor = ({ blocks }: CompressedBody, count: number): Packed => {
  let length = 0;
  const starts = blocks.map(({ first }) => {
    const start = length;
    length += count * first.length;
    return start;
  });
  return { values: room(PACKED, length), starts };
};

/** C·g of one block at every place, four places and two rows at a time: every number that is fetched is used twice or more. */
const multiply = (
  { rows, rank, first: { length: size } }: CompressedBlock,
  values: Float64Array,
  start: number,
  count: number,
  into: Float64Array,
  stride: number,
  offset: number
): void => {
  for (let k = 0; k < count; k += 4) {
    const g0 = start + k * size;
    // past the last place the last is done again
    const g1 = start + Math.min(k + 1, count - 1) * size;
    const g2 = start + Math.min(k + 2, count - 1) * size;
    const g3 = start + Math.min(k + 3, count - 1) * size;
    for (let r = 0; r < rank; r += 2) {
      const c0 = r * size;
      const c1 = Math.min(r + 1, rank - 1) * size;
      let a0 = 0;
      let a1 = 0;
      let a2 = 0;
      let a3 = 0;
      let b0 = 0;
      let b1 = 0;
      let b2 = 0;
      let b3 = 0;
      for (let i = 0; i < size; i++) {
        const a = rows[c0 + i]!;
        const b = rows[c1 + i]!;
        const v0 = values[g0 + i]!;
        const v1 = values[g1 + i]!;
        const v2 = values[g2 + i]!;
        const v3 = values[g3 + i]!;
        a0 += a * v0;
        a1 += a * v1;
        a2 += a * v2;
        a3 += a * v3;
        b0 += b * v0;
        b1 += b * v1;
        b2 += b * v2;
        b3 += b * v3;
      }
      const left = Math.min(4, count - k);
      const at = k * stride + offset + r;
      into[at] = a0;
      if (left > 1) into[at + stride] = a1;
      if (left > 2) into[at + 2 * stride] = a2;
      if (left > 3) into[at + 3 * stride] = a3;
      if (r + 1 >= rank) continue;
      into[at + 1] = b0;
      if (left > 1) into[at + stride + 1] = b1;
      if (left > 2) into[at + 2 * stride + 1] = b2;
      if (left > 3) into[at + 3 * stride + 1] = b3;
    }
  }
};

/** z of every place. */
export const multiplied = (body: CompressedBody, { values, starts }: Packed, count: number): Float64Array => {
  const into = new Float64Array(count * body.rank);
  let offset = 0;
  body.blocks.forEach((block, b) => {
    multiply(block, values, starts[b]!, count, into, body.rank, offset);
    offset += block.rank;
  });
  return into;
};

/** Flux over µ0/4π through a ring, `right` and `ahead` of its place in the frame that the wires are given in, metres. */
export const ringFlux = (
  path: RingPath,
  local: Filaments,
  end: number,
  right: number,
  ahead: number
): number => {
  const { x, y, z, dx, dy } = path;
  let sum = 0;
  for (let k = 0; k < x.length; k++)
    sum += potentialAlong(local, end, x[k]! + right, y[k]! + ahead, z[k]!, dx[k]!, dy[k]!);
  return sum;
};

/** z at `count` places, whose samples (in the order of the body's) `sample` writes. */
export const reducedBy = (
  body: CompressedBody,
  count: number,
  sample: (place: number, into: Float64Array) => void
): Float64Array => {
  const packed = packedFor(body, count);
  const samples = new Float64Array(body.samples);
  for (let k = 0; k < count; k++) {
    sample(k, samples);
    body.blocks.forEach(({ first, second, sign }, b) => {
      const start = packed.starts[b]! + k * first.length;
      for (let a = 0; a < first.length; a++) {
        const j = second[a]!;
        packed.values[start + a] =
          j < 0 ? samples[first[a]!]! : (samples[first[a]!]! + sign * samples[j]!) * Math.SQRT1_2;
      }
    });
  }
  return multiplied(body, packed, count);
};

/** Flux over µ0/4π through every ring of a body, whose frame the wires are given in, `(x, y)` further on in that frame. */
export const sampleRings = (
  rings: readonly RingPath[],
  local: Filaments,
  end: number,
  x: number,
  y: number,
  into: Float64Array,
  at: number
): void => {
  rings.forEach((ring, k) => {
    into[at + k] = ringFlux(ring, local, end, x, y);
  });
};

/** The samples of a loop's wires, given in the body's frame. */
export const sampleWires = (
  body: CompressedBody,
  local: Filaments,
  end: number,
  into: Float64Array
): void => {
  let at = 0;
  for (const { height, pointX, pointY } of body.plates) {
    const field = room(FIELD, pointX.length);
    verticalField(local, end, pointX, pointY, height, field);
    for (let i = 0; i < pointX.length; i++) into[at + i] = field[i]!;
    at += pointX.length;
  }
  sampleRings(body.rings, local, end, 0, 0, into, at);
};

/** z at any places: each is sampled by itself. */
export const reducedAt = (
  body: CompressedBody,
  filaments: Filaments,
  placements: readonly Placement[]
): Float64Array =>
  reducedBy(body, placements.length, (k, samples) => {
    sampleWires(body, inFrame(filaments, placements[k]!), filaments.length, samples);
  });
