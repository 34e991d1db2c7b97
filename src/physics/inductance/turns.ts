/** A winding turn by turn: what the inductance of any part of it, and of what is left, follows from. */
import { externalInductance, mutualInductance } from './loop';
import { mutualOfRuns } from './runs';
import type { Winding } from './winding';

/** Turns of a winding; each of its columns holds one wire of every turn. */
export const turnsOf = ({ runs }: Winding): number => runs[0]?.heights.length ?? 0;

/** Some of its turns, by their places from the bottom, as a winding of their own. */
export const partOf = (winding: Winding, from: number, count: number): Winding => ({
  ...winding,
  runs: winding.runs.map((run) => ({ ...run, heights: run.heights.slice(from, from + count) }))
});

/** Between two turns of one winding: its corners touch, and no wire lies in another's place. */
const betweenTurns = (a: Winding, b: Winding): number => {
  let sum = 0;
  for (const run of a.runs) for (const other of b.runs) sum += mutualOfRuns(run, other);
  return sum;
};

/**
 * External inductances between all turns, H, row by row: the sum over a block of them is the self-inductance of those
 * turns in series. Agrees with the inductance of the whole to the 1e-5 that far columns are simplified by there.
 */
export const turnInductances = (winding: Winding): Float64Array => {
  const count = turnsOf(winding);
  const matrix = new Float64Array(count * count);
  const turns = Array.from({ length: count }, (_, k) => partOf(winding, k, 1));
  turns.forEach((turn, i) => {
    matrix[i * count + i] = externalInductance(turn);
    for (let j = 0; j < i; j++) {
      const value = betweenTurns(turn, turns[j]!);
      matrix[i * count + j] = value;
      matrix[j * count + i] = value;
    }
  });
  return matrix;
};

/** Mutual inductances, H, of every turn of one loop (rows) with every turn of another. */
export const turnCouplings = (a: Winding, b: Winding): Float64Array => {
  const [rows, columns] = [turnsOf(a), turnsOf(b)];
  const others = Array.from({ length: columns }, (_, k) => partOf(b, k, 1));
  const matrix = new Float64Array(rows * columns);
  for (let i = 0; i < rows; i++) {
    const turn = partOf(a, i, 1);
    others.forEach((other, j) => (matrix[i * columns + j] = mutualInductance(turn, other)));
  }
  return matrix;
};

/** Sum over the rows [rowFrom, rowTo) and columns [columnFrom, columnTo) of a matrix that is `columns` wide. */
export const blockSum = (
  matrix: Float64Array,
  columns: number,
  [rowFrom, rowTo]: readonly [number, number],
  [columnFrom, columnTo]: readonly [number, number]
): number => {
  let sum = 0;
  for (let i = rowFrom; i < rowTo; i++)
    for (let j = columnFrom; j < columnTo; j++) sum += matrix[i * columns + j]!;
  return sum;
};
