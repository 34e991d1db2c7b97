/**
 * What a compressed vehicle makes of a loop along a straight run. What one of its samples sees at a place another one, a row
 * further back, sees at a later one: the field is computed once over each column of a lattice, and once for like rims.
 */
import { inFrame, verticalField, type Filaments, type Placement } from '../field/filaments';
import type { CompressedBody } from './compressed';
import { multiplied, packedFor, ringFlux } from './reduce';
import type { RingPath } from './ring';
import { GRAIN, type PlateSampling } from './sampling';

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
    for (let a = 0; a < size;) {
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
  return multiplied(body, packed, count);
};
