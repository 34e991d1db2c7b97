/**
 * ∮A·dl of a loop's wires round every mesh of a mat, µ0/4π times it: the potential along each bar by Gauss's rule, with
 * more points the nearer a wire runs.
 */
import { STRIDE, type Filaments } from '../field/filaments';
import { gaussLegendre } from '../numeric/gauss-legendre';
import type { CellSet } from './lattice';

/** Distance of a bar's middle from a wire, in pitches, from which so many points are enough (1e-3 of a bar's share at worst). */
const RULES = [
  { from: 2, points: 2 },
  { from: 0.8, points: 4 },
  { from: 0, points: 12 }
].map(({ from, points }) => ({ from, ...gaussLegendre(points) }));

/** ∫A·dl of one straight wire along a bar from (x, y) in direction (dx, dy), `pitch` long, `z` below the wire's height. */
const along = (
  filaments: Filaments,
  at: number,
  x: number,
  y: number,
  dx: number,
  dy: number,
  pitch: number,
  z: number
): number => {
  const ux = filaments[at + 2]!;
  const uy = filaments[at + 3]!;
  const facing = ux * dx + uy * dy;
  if (Math.abs(facing) < 1e-12) return 0;
  const length = filaments[at + 4]!;
  const dz = z - filaments[at + 5]!;
  const px = x - filaments[at]!;
  const py = y - filaments[at + 1]!;
  const middle = (px + (dx * pitch) / 2) * ux + (py + (dy * pitch) / 2) * uy;
  const aside = (px + (dx * pitch) / 2) * uy - (py + (dy * pitch) / 2) * ux;
  const beyond = Math.max(0, -middle, middle - length);
  const apart = Math.sqrt(beyond * beyond + aside * aside + dz * dz) / pitch;
  const { nodes, weights } = RULES.find(({ from }) => apart >= from)!;
  let sum = 0;
  for (let k = 0; k < nodes.length; k++) {
    const t = ((1 + nodes[k]!) * pitch) / 2;
    const qx = px + dx * t;
    const qy = py + dy * t;
    const here = qx * ux + qy * uy;
    const beside = qx * uy - qy * ux;
    const square = beside * beside + dz * dz;
    const rest = length - here;
    const near = Math.abs(here) + Math.sqrt(here * here + square);
    const far = Math.abs(rest) + Math.sqrt(rest * rest + square);
    sum += weights[k]! * Math.log((here >= 0 ? near : square / near) * (rest >= 0 ? far / square : 1 / far));
  }
  return (filaments[at + 6]! * facing * sum * pitch) / 2;
};

/** `filaments` in the cells' frame: cell (0, 0) starts at its origin. */
export const meshFluxes = (
  filaments: Filaments,
  end: number,
  { across, along: rows, index, size }: CellSet,
  pitch: number,
  z: number
): Float64Array => {
  const flux = new Float64Array(size);
  const give = (i: number, j: number, value: number): void => {
    if (i < 0 || j < 0 || i >= across || j >= rows) return;
    const cell = index[i * rows + j]!;
    if (cell >= 0) flux[cell]! += value;
  };
  const isThere = (i: number, j: number): boolean =>
    i >= 0 && j >= 0 && i < across && j < rows && index[i * rows + j]! >= 0;
  for (let i = 0; i <= across; i++)
    for (let j = 0; j <= rows; j++) {
      const here = isThere(i, j);
      // the bar ahead in x lies below cell (i, j) and above (i, j − 1); the one in y between (i − 1, j) and (i, j)
      const below = isThere(i, j - 1);
      const before = isThere(i - 1, j);
      let x = 0;
      let y = 0;
      for (let at = 0; at < end; at += STRIDE) {
        if (here || below) x += along(filaments, at, i * pitch, j * pitch, 1, 0, pitch, z);
        if (here || before) y += along(filaments, at, i * pitch, j * pitch, 0, 1, pitch, z);
      }
      give(i, j, x - y);
      give(i, j - 1, -x);
      give(i - 1, j, y);
    }
  return flux;
};
