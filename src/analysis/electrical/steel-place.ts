/** A steel part of the drawing as a lattice or a rectangle in a frame of its own, as far as one loop sees it. */
import type { Placement } from '#physics/field/filaments';
import { cellSet, type CellSet } from '#physics/steel/lattice';
import { contains, extentOf, signedArea } from '#plan/geometry/polygons';
import { rotate, subtract } from '#plan/geometry/points';
import type { Point, Steel } from '#plan/schema';

/** How far beyond a loop its steel still counts, metres: further out the induced currents change a loop by under 1e-3. */
const REACH = 1;
/** With less a mat cannot close the currents of a loop round its outside. */
const LEAST_REACH = 0.4;
/** More meshes than this do not answer within a gesture. */
const MOST_CELLS = 1_000;

/** Origin at the outline's first corner, x along its first side: headings of a frame are those of its y axis. */
interface Frame {
  readonly origin: Point;
  readonly degrees: number;
}

const frameOf = ({ outline }: Steel): Frame => {
  const [dx, dy] = subtract(outline[1]!, outline[0]!);
  return { origin: outline[0]!, degrees: (Math.atan2(dy, dx) * 180) / Math.PI };
};

const inFrame = ({ origin, degrees }: Frame, points: readonly Point[]): Point[] =>
  points.map((point) => rotate(subtract(point, origin), -degrees));

const placementAt = ({ origin, degrees }: Frame, local: Point): Placement => {
  const [x, y] = rotate(local, degrees);
  return { x: origin[0] + x, y: origin[1] + y, heading: degrees + 90 };
};

export interface LatticePlace {
  readonly cells: CellSet;
  readonly placement: Placement;
  /** The pitch used, metres: the mat's own, or a multiple where a loop covers too many meshes. */
  readonly pitch: number;
}

/** The meshes of a mat that a loop with the given outline sees; null where there are none. */
export const latticeUnder = (
  mat: Extract<Steel, { kind: 'mat' }>,
  loop: readonly Point[]
): LatticePlace | null => {
  const frame = frameOf(mat);
  const outline = inFrame(frame, mat.outline);
  const whole = extentOf(outline);
  const box = extentOf(inFrame(frame, loop));
  const { pitch, reach } = fitting(box, whole, mat.pitch);
  const axis = (k: 0 | 1): { readonly start: number; readonly count: number; readonly from: number } => {
    const side = whole.max[k] - whole.min[k];
    const count = Math.floor(side / pitch + 1e-9);
    const start = whole.min[k] + (side - count * pitch) / 2;
    // a number of cells that depends on the loop's size alone: a loop that moves keeps its lattice
    const wanted = Math.ceil((box.max[k] - box.min[k] + 2 * reach) / pitch - 1e-9) + 1;
    const from = Math.floor((box.min[k] - reach - start) / pitch + 1e-9);
    const first = Math.max(0, from);
    return { start, from: first, count: Math.max(0, Math.min(count, from + wanted) - first) };
  };
  const across = axis(0);
  const along = axis(1);
  const corner: Point = [across.start + across.from * pitch, along.start + along.from * pitch];
  const cells = cellSet(across.count, along.count, (i, j) =>
    contains(outline, [corner[0] + (i + 0.5) * pitch, corner[1] + (j + 0.5) * pitch])
  );
  return cells.size === 0 ? null : { cells, placement: placementAt(frame, corner), pitch };
};

type Extent = ReturnType<typeof extentOf>;

/** Cells of the mat's box within a reach of the loop's. */
const cellsUnder = (loop: Extent, mat: Extent, reach: number, pitch: number): number => {
  const side = (k: 0 | 1): number =>
    Math.max(0, Math.min(loop.max[k] + reach, mat.max[k]) - Math.max(loop.min[k] - reach, mat.min[k]));
  return Math.ceil(side(0) / pitch) * Math.ceil(side(1) / pitch);
};

/** The reach that the most cells allow, and then a pitch that is a multiple of the mat's. */
const fitting = (
  loop: Extent,
  mat: Extent,
  pitch: number
): { readonly pitch: number; readonly reach: number } => {
  const cells = (reach: number, p: number): number => cellsUnder(loop, mat, reach, p);
  for (let reach = REACH; reach >= LEAST_REACH - 1e-9; reach -= 0.1)
    if (cells(reach, pitch) <= MOST_CELLS) return { pitch, reach };
  let multiple = 2;
  while (cells(LEAST_REACH, multiple * pitch) > MOST_CELLS) multiple++;
  return { pitch: multiple * pitch, reach: LEAST_REACH };
};

/** Whether the meshes under these corners, out to the whole reach, are at most so many. */
export const fitsLattice = (
  mat: Extract<Steel, { kind: 'mat' }>,
  corners: readonly Point[],
  most: number
): boolean => {
  const frame = frameOf(mat);
  const whole = extentOf(inFrame(frame, mat.outline));
  return cellsUnder(extentOf(inFrame(frame, corners)), whole, REACH, mat.pitch) <= most;
};

export interface SheetPlace {
  readonly width: number;
  readonly length: number;
  /** Middle of the rectangle, its length along the heading. */
  readonly placement: Placement;
}

/**
 * The part of a plate that a loop sees. A plate that is no rectangle counts as one of equal area, in the directions and
 * with the sides' ratio of its bounding box.
 */
export const sheetUnder = (plate: Steel, loop: readonly Point[]): SheetPlace => {
  const frame = frameOf(plate);
  const outline = inFrame(frame, plate.outline);
  const { min, max } = extentOf(outline);
  const box = extentOf(inFrame(frame, loop));
  const filled = (max[0] - min[0]) * (max[1] - min[1]);
  const shrink = Math.sqrt(Math.abs(signedArea(outline)) / filled);
  const axis = (k: 0 | 1): readonly [number, number] => {
    const middle = (min[k] + max[k]) / 2;
    const half = ((max[k] - min[k]) / 2) * shrink;
    const from = Math.max(middle - half, box.min[k] - REACH);
    const to = Math.min(middle + half, box.max[k] + REACH);
    return [(from + to) / 2, Math.max(to - from, 1e-3)];
  };
  const [x, width] = axis(0);
  const [y, length] = axis(1);
  return { width, length, placement: placementAt(frame, [x, y]) };
};

/** Whether the two come nearer than REACH in plan, by their boxes in the steel's frame. */
export const isNear = (steel: Steel, loop: readonly Point[]): boolean => {
  const frame = frameOf(steel);
  const a = extentOf(inFrame(frame, steel.outline));
  const b = extentOf(inFrame(frame, loop));
  return ([0, 1] as const).every((k) => a.min[k] < b.max[k] + REACH && b.min[k] < a.max[k] + REACH);
};
