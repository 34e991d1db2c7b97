/**
 * What a compressed vehicle makes of a loop at many places: z of each place, one after the other. ΔL of loops i and j at a
 * place is −zᵢ·zⱼ, henries.
 */
import { inFrame, potentialAlong, verticalField, type Filaments, type Placement } from '../field/filaments';
import { FIELD, FIELD_AHEAD, PACKED, room } from '../field/room';
import { dipolesInFrame, type Dipoles } from '../field/dipoles';
import type { CompressedBlock, CompressedBody } from './compressed';
import { dipolesField, dipolesThroughRing } from './flux';
import type { RingPath } from './ring';
import { GRAIN, type PlateSampling } from './sampling';

/** The samples of every block, block by block and in each place by place: what `C` is multiplied with. */
interface Packed {
  readonly values: Float64Array;
  readonly starts: readonly number[];
}

const packedFor = ({ blocks }: CompressedBody, count: number): Packed => {
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

const reduced = (body: CompressedBody, { values, starts }: Packed, count: number): Float64Array => {
  const into = new Float64Array(count * body.rank);
  let offset = 0;
  body.blocks.forEach((block, b) => {
    multiply(block, values, starts[b]!, count, into, body.rank, offset);
    offset += block.rank;
  });
  return into;
};

const ringFlux = (path: RingPath, local: Filaments, end: number, right: number, ahead: number): number => {
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
  return reduced(body, packed, count);
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
const sampleWires = (body: CompressedBody, local: Filaments, end: number, into: Float64Array): void => {
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

/** Samples of a loop over steel: its wires and the currents that it drives there, in phase and a quarter period ahead. */
export interface SteelSamples {
  readonly inPhase: Float64Array;
  readonly ahead: Float64Array;
}

export const sampleOverSteel = (
  body: CompressedBody,
  filaments: Filaments,
  dipoles: Dipoles | null,
  placement: Placement
): SteelSamples => {
  const inPhase = new Float64Array(body.samples);
  const ahead = new Float64Array(body.samples);
  sampleWires(body, inFrame(filaments, placement), filaments.length, inPhase);
  if (!dipoles) return { inPhase, ahead };
  const local = dipolesInFrame(dipoles, placement);
  let at = 0;
  for (const plate of body.plates) {
    const count = plate.pointX.length;
    const fields = [room(FIELD, count), room(FIELD_AHEAD, count)] as const;
    dipolesField(dipoles, local, plate, placement, fields);
    for (let i = 0; i < count; i++) {
      inPhase[at + i]! += fields[0][i]!;
      ahead[at + i]! += fields[1][i]!;
    }
    at += count;
  }
  for (const ring of body.rings) {
    const flux = dipolesThroughRing(ring, local);
    inPhase[at]! += flux[0];
    ahead[at]! += flux[1];
    at++;
  }
  return { inPhase, ahead };
};

/** z of the two phases. */
export const reducedOverSteel = (body: CompressedBody, samples: SteelSamples): readonly Float64Array[] => {
  const phases = [samples.inPhase, samples.ahead];
  const both = reducedBy(body, 2, (k, into) => {
    into.set(phases[k]!);
  });
  return [both.subarray(0, body.rank), both.subarray(body.rank)];
};

const divisor = (a: number, b: number): number => (b === 0 ? a : divisor(b, a % b));

/**
 * What the samples of one column of a lattice are at every place of a run: row j at place k sees value
 * k·perPlace + j·perRow. A ring is a column of one row.
 */
interface Strip {
  readonly values: Float64Array;
  readonly rows: number;
  readonly perRow: number;
  readonly perPlace: number;
}

/** Bz over each column of a lattice along the run; each of its rows sees the same values, earlier or later. */
const plateStrips = (
  { xs, ys, grains, height }: PlateSampling,
  local: Filaments,
  end: number,
  count: number,
  stride: number
): readonly Strip[] => {
  const unit = divisor(stride, grains);
  const perPlace = stride / unit;
  const perRow = grains / unit;
  const length = (count - 1) * perPlace + (ys.length - 1) * perRow + 1;
  const x = new Float64Array(length);
  const y = x.map((_, k) => ys[0]! + k * unit * GRAIN);
  return Array.from(xs, (px): Strip => {
    const values = new Float64Array(length);
    verticalField(local, end, x.fill(px), y, height, values);
    return { values, rows: ys.length, perRow, perPlace };
  });
};

/** Two rims of one kind, one behind the other, see the same flux one after the other. */
const ringStrips = (
  rings: readonly RingPath[],
  local: Filaments,
  end: number,
  count: number,
  step: number
): readonly Strip[] => {
  const known: { readonly path: RingPath; readonly values: Map<number, number> }[] = [];
  return rings.map((path) => {
    const like = known.find((each) => isShifted(each.path, path, step));
    const kind = like ?? { path, values: new Map<number, number>() };
    if (!like) known.push(kind);
    const shift = Math.round((path.ring.y - kind.path.ring.y) / step);
    const values = Float64Array.from({ length: count }, (_, k) => {
      const place = k + shift;
      const found = kind.values.get(place) ?? ringFlux(kind.path, local, end, 0, place * step);
      kind.values.set(place, found);
      return found;
    });
    return { values, rows: 1, perRow: 0, perPlace: 1 };
  });
};

const isShifted = ({ ring: a }: RingPath, { ring: b }: RingPath, step: number): boolean => {
  const steps = (b.y - a.y) / step;
  return (
    Math.abs(steps - Math.round(steps)) < 1e-9 &&
    a.x === b.x &&
    a.height === b.height &&
    a.radius === b.radius &&
    a.axis.every((value, k) => value === b.axis[k])
  );
};

/** z at `count` places straight ahead of the first, `grains` grains apart. */
export const reducedAlong = (
  body: CompressedBody,
  filaments: Filaments,
  first: Placement,
  count: number,
  grains: number
): Float64Array => {
  const packed = packedFor(body, count);
  const end = filaments.length;
  // a copy: the frame's room is used again
  const local = inFrame(filaments, first).slice(0, end);
  const strips = [
    ...body.plates.flatMap((plate) => plateStrips(plate, local, end, count, grains)),
    ...ringStrips(body.rings, local, end, count, grains * GRAIN)
  ];
  /** Number of the strip in which each sample is. */
  const stripOf = strips.flatMap(({ rows }, number) => new Array<number>(rows).fill(number));
  body.blocks.forEach((block, b) => {
    const size = block.first.length;
    for (let a = 0; a < size; ) {
      const one = strips[stripOf[block.first[a]!]!]!;
      const mirrored = block.second[a]! < 0 ? null : strips[stripOf[block.second[a]!]!]!;
      const values = mirrored
        ? one.values.map((value, k) => (value + block.sign * mirrored.values[k]!) * Math.SQRT1_2)
        : one.values;
      for (let k = 0; k < count; k++) {
        let to = packed.starts[b]! + k * size + a;
        let from = k * one.perPlace;
        for (let row = 0; row < one.rows; row++, from += one.perRow) packed.values[to++] = values[from]!;
      }
      a += one.rows;
    }
  });
  return reduced(body, packed, count);
};
