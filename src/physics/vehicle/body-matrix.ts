/**
 * The matrix of all parts of one vehicle: plates by Galerkin's method, rings by their flux. It knows the meshes and how high
 * the parts lie above one another, not how high the vehicle lies: at neighbouring heights, which mostly have the same
 * nodes, it is the same.
 */
import { MU0 } from '../constants';
import { addOwnBlock, addPlateBlock } from './plate-matrix';
import type { PlateMesh } from './plate-mesh';
import { cornerRoom, cornersOf, CORNER_VALUES } from './rectangle-potential';
import { mutualOfImage, mutualOfRings, ringPath, type RingPath } from './ring';

/** What a matrix is filled for: the plates' unknowns one after the other, then the rings. */
export interface Meshed {
  readonly plates: readonly PlateMesh[];
  readonly rings: readonly RingPath[];
}

export const sizeOf = ({ plates, rings }: Meshed): number =>
  plates.reduce((sum, { unknowns }) => sum + unknowns, rings.length);

/** Heights that differ by less are one, metres: sums of heights leave crumbs. */
const CRUMB = 1e-9;

/**
 * The same parts with the first of them at height zero, so that whatever is made of it is the same to the last bit for a
 * vehicle that was lifted as a whole. Equal `key`: equal parts, and so equal matrices.
 */
export const atNought = (
  { plates, rings }: Meshed,
  fineness: number
): { readonly meshed: Meshed; readonly key: string } => {
  const base = plates[0]?.plate.height ?? rings[0]?.ring.height ?? 0;
  const lowered = (height: number): number => Math.round((height - base) / CRUMB) * CRUMB;
  const meshed: Meshed = {
    plates: plates.map((mesh) => ({
      ...mesh,
      plate: { ...mesh.plate, height: lowered(mesh.plate.height) }
    })),
    rings: rings.map(({ ring }) => ringPath({ ...ring, height: lowered(ring.height) }, fineness))
  };
  const nodes = meshed.plates.map(({ xs, ys, plate }) => `${xs.join()} ${ys.join()} ${plate.height}`);
  return {
    meshed,
    key: `${nodes.join('|')} ${JSON.stringify(meshed.rings.map(({ ring }) => ring))} ${fineness}`
  };
};

const firstOf = (plates: readonly PlateMesh[]): readonly number[] => {
  let first = 0;
  return plates.map(({ unknowns }) => (first += unknowns) - unknowns);
};

/** H; of the square only the lower triangle counts. */
export const fillMatrix = (meshed: Meshed): Float64Array => {
  const { plates, rings } = meshed;
  const size = sizeOf(meshed);
  const offsets = firstOf(plates);
  const firstRing = size - rings.length;
  const matrix = new Float64Array(size * size);
  plates.forEach((outer, i) => {
    addOwnBlock(matrix, size, outer, offsets[i]!);
    for (let j = 0; j < i; j++) addPlateBlock(matrix, size, outer, plates[j]!, offsets[i]!, offsets[j]!);
  });
  rings.forEach((ring, i) => {
    const row = (firstRing + i) * size;
    plates.forEach((plate, j) => ringRow(ring, plate, matrix, row + offsets[j]!));
    for (let j = 0; j < i; j++) matrix[row + firstRing + j] = mutualOfRings(ring, rings[j]!);
    matrix[row + firstRing + i] = ring.inductance;
  });
  return matrix;
};

/** Of every part with the images of all in a plane at z = −`depth`: what the plane takes off the matrix, H. */
export const imagesIn = (meshed: Meshed, depth: number): Float64Array => {
  const { plates, rings } = meshed;
  const size = sizeOf(meshed);
  const offsets = firstOf(plates);
  const firstRing = size - rings.length;
  const images = new Float64Array(size * size);
  const below = plates.map((mesh) => ({
    ...mesh,
    plate: { ...mesh.plate, height: -2 * depth - mesh.plate.height }
  }));
  plates.forEach((outer, i) => {
    addOwnBlock(images, size, outer, offsets[i]!, below[i]);
    for (let j = 0; j < i; j++) addPlateBlock(images, size, outer, below[j]!, offsets[i]!, offsets[j]!);
  });
  rings.forEach((ring, i) => {
    const row = (firstRing + i) * size;
    below.forEach((plate, j) => ringRow(ring, plate, images, row + offsets[j]!));
    for (let j = 0; j <= i; j++) images[row + firstRing + j] = -mutualOfImage(ring, rings[j]!, depth);
  });
  return images;
};

/** Flux through a ring of every hat of a plate: ∮ A·dl with A of its surface current in closed form. */
const ringRow = (ring: RingPath, plate: PlateMesh, matrix: Float64Array, start: number): void => {
  const ny = plate.ys.length;
  const room = cornerRoom(plate.xs.length, ny);
  const { corners } = room;
  for (let k = 0; k < ring.x.length; k++) {
    const x = ring.x[k]!;
    const y = ring.y[k]!;
    const h = Math.abs(ring.z[k]! - plate.plate.height);
    cornersOf(plate.xs, plate.ys, x, y, h, room);
    for (let c = 0; c < plate.xs.length - 1; c++)
      for (let d = 0; d < ny - 1; d++) {
        const at = (value: number): number => {
          const low = (c * ny + d) * CORNER_VALUES + value;
          const high = low + ny * CORNER_VALUES;
          return (
            corners[high + CORNER_VALUES]! - corners[high]! - corners[low + CORNER_VALUES]! + corners[low]!
          );
        };
        const width = plate.xs[c + 1]! - plate.xs[c]!;
        const length = plate.ys[d + 1]! - plate.ys[d]!;
        const one = at(0);
        const farX = (at(1) - (plate.xs[c]! - x) * one) / width;
        const farY = (at(2) - (plate.ys[d]! - y) * one) / length;
        for (let a = 0; a < 2; a++)
          for (let b = 0; b < 2; b++) {
            const column = plate.index[(c + a) * ny + d + b]!;
            if (column < 0) continue;
            const alongX = ((b === 0 ? -1 : 1) / length) * (a === 0 ? one - farX : farX);
            const alongY = -((a === 0 ? -1 : 1) / width) * (b === 0 ? one - farY : farY);
            matrix[start + column]! += (MU0 / (4 * Math.PI)) * (alongX * ring.dx[k]! + alongY * ring.dy[k]!);
          }
      }
  }
};
