/**
 * The meshes of a mat in its own frame: squares of one pitch, cell (i, j) from (i·p, j·p) to ((i+1)·p, (j+1)·p). All
 * meshes have the same inductances, so that everything depends on how far two cells lie apart: equal sets of cells have
 * one matrix wherever they lie.
 */
import { mutualOfSegments } from '../inductance/segments';

/** A set of cells in a box of `across` × `along` cells; `index` is −1 for one that is not there, stored i·along + j. */
export interface CellSet {
  readonly across: number;
  readonly along: number;
  readonly index: Int32Array;
  readonly size: number;
}

export const cellSet = (
  across: number,
  along: number,
  isThere: (i: number, j: number) => boolean
): CellSet => {
  const index = new Int32Array(across * along).fill(-1);
  let size = 0;
  for (let i = 0; i < across; i++)
    for (let j = 0; j < along; j++) if (isThere(i, j)) index[i * along + j] = size++;
  return { across, along, index, size };
};

/**
 * Mutual inductance, H, of two bars of one pitch, `ahead` pitches further along and `beside` pitches to the side; of a bar
 * with itself the external part (Rosa 1908).
 */
const barTable = (
  pitch: number,
  radius: number,
  most: number
): ((ahead: number, beside: number) => number) => {
  const known = new Map<number, number>();
  return (ahead, beside) => {
    const a = Math.abs(ahead);
    const b = Math.abs(beside);
    const key = a * (most + 2) + b;
    let value = known.get(key);
    if (value === undefined) {
      const side = a === 0 && b === 0 ? radius : b * pitch;
      value = mutualOfSegments([0, 0, 0], [pitch, 0, 0], [a * pitch, side, 0], [(a + 1) * pitch, side, 0]);
      known.set(key, value);
    }
    return value;
  };
};

/** Mutual inductance, H, of two meshes by how many cells they lie apart: stored di·along + dj. */
export const meshInductances = (cells: CellSet, pitch: number, radius: number): Float64Array => {
  const { across, along } = cells;
  const bar = barTable(pitch, radius, Math.max(across, along) + 1);
  const table = new Float64Array(across * along);
  const ofBars = (ahead: number, beside: number): number =>
    2 * bar(ahead, beside) - bar(ahead, beside + 1) - bar(ahead, beside - 1);
  for (let i = 0; i < across; i++)
    for (let j = 0; j < along; j++) table[i * along + j] = ofBars(i, j) + ofBars(j, i);
  return table;
};

/** The inductance matrix of all cells, row by row, H. */
export const latticeMatrix = (cells: CellSet, pitch: number, radius: number): Float64Array => {
  const { across, along, index, size } = cells;
  const table = meshInductances(cells, pitch, radius);
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < across; i++)
    for (let j = 0; j < along; j++) {
      const row = index[i * along + j]!;
      if (row < 0) continue;
      for (let k = 0; k <= i; k++)
        for (let l = 0; l < along; l++) {
          const column = index[k * along + l]!;
          if (column < 0 || column > row) continue;
          matrix[row * size + column] = table[(i - k) * along + Math.abs(j - l)]!;
        }
    }
  return matrix;
};

/** G·x: metres of bar round every mesh, less those it shares with its neighbours. */
export const sharedBars = (
  { across, along, index }: CellSet,
  pitch: number,
  x: Float64Array
): Float64Array => {
  const result = new Float64Array(x.length);
  const at = (i: number, j: number): number => {
    const cell = i < 0 || j < 0 || i >= across || j >= along ? -1 : index[i * along + j]!;
    return cell < 0 ? 0 : x[cell]!;
  };
  for (let i = 0; i < across; i++)
    for (let j = 0; j < along; j++) {
      const cell = index[i * along + j]!;
      if (cell < 0) continue;
      const neighbours = at(i - 1, j) + at(i + 1, j) + at(i, j - 1) + at(i, j + 1);
      result[cell] = pitch * (4 * x[cell]! - neighbours);
    }
  return result;
};
