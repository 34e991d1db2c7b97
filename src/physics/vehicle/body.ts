/**
 * All parts of one vehicle as one matrix, factored once: ΔL of loops i and j is −φᵢᵀ·A⁻¹·φⱼ, φ the flux per ampere.
 */
import { MU0 } from '../constants';
import type { Part, PlatePart } from './parts';
import { addOwnBlock, addPlateBlock } from './plate-matrix';
import { meshPlate, type PlateMesh } from './plate-mesh';
import { CORNER_VALUES, cornerPotentials } from './rectangle-potential';
import { mutualOfImage, mutualOfRings, ringPath, type RingPath } from './ring';
import { factorBlocks, type SymmetryBlock } from './symmetry';

export interface Body {
  readonly plates: readonly PlateMesh[];
  readonly rings: readonly RingPath[];
  readonly size: number;
  readonly blocks: readonly SymmetryBlock[];
}

/**
 * Shares of the diagonal's mean added to it. The first is nothing beside the mesh's error; parts drawn into one another
 * leave a matrix that is not quite positive, and get the first of the others that mends it.
 */
const RIDGES = [1e-9, 1e-4, 1e-2, 1];

/** Largest cell against the plate's height, found by trial: errors of a few tenths of a percent at the usual heights. */
const CELL_PER_HEIGHT = 0.8;
/** Below this height a finer mesh follows nothing but the wires' own shape. */
const LEAST_HEIGHT = 0.18;
/** A vehicle with more unknowns than this is meshed more coarsely: its factor must fit into a moment and into memory. */
const MOST_UNKNOWNS = 1_600;

/** A plate smaller than this share of the largest is meshed more coarsely: it carries a small part of the response. */
const SMALL_PLATE = 0.2;
const SMALL_FINENESS = 0.7;

const meshPlates = (plates: readonly PlatePart[], fineness: number): PlateMesh[] => {
  const largest = Math.max(0, ...plates.map(({ width, length }) => width * length));
  for (let coarser = 1; ; coarser *= 1.2) {
    const meshes = plates.map((plate) => {
      const fine = plate.width * plate.length < SMALL_PLATE * largest ? SMALL_FINENESS * fineness : fineness;
      const step = (coarser * CELL_PER_HEIGHT * Math.max(plate.height, LEAST_HEIGHT)) / fine;
      return meshPlate(plate, step, fine / coarser);
    });
    const unknowns = meshes.reduce((sum, mesh) => sum + mesh.unknowns, 0);
    if (unknowns <= MOST_UNKNOWNS * fineness * fineness || coarser > 100) return meshes;
  }
};

/**
 * The matrix of one plate by itself knows its nodes alone, not its height: at neighbouring heights, which mostly have the
 * same nodes, it is the same to the last bit.
 */
const factored = new Map<string, Body['blocks']>();
const MOST_FACTORED = 60;

const nodesOf = ({ xs, ys }: PlateMesh): string => `${xs.join()} ${ys.join()}`;

const keepFactored = (nodes: string, blocks: Body['blocks']): void => {
  if (factored.size >= MOST_FACTORED) factored.delete(factored.keys().next().value!);
  factored.set(nodes, blocks);
};

/**
 * Meshes, fills and factors the matrix of a vehicle. `fineness` below 1 is quick, above 1 proves convergence. Over a
 * conducting plane `mirror` metres below the road every current has its image, reversed, as deep below the plane as it is
 * above: its inductances are subtracted.
 */
export const buildBody = (parts: readonly Part[], fineness = 1, mirror: number | null = null): Body => {
  const plates = meshPlates(
    parts.filter((part) => part.kind === 'plate'),
    fineness
  );
  const rings = parts.filter((part) => part.kind === 'ring').map((ring) => ringPath(ring, fineness));
  const alone = plates.length === 1 && rings.length === 0 && mirror === null ? plates[0]! : null;
  const known = alone && factored.get(nodesOf(alone));
  if (known) return { plates, rings, size: alone.unknowns, blocks: known };
  const offsets: number[] = [];
  let size = 0;
  for (const plate of plates) {
    offsets.push(size);
    size += plate.unknowns;
  }
  const firstRing = size;
  size += rings.length;
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
  if (mirror !== null) subtractImages(matrix, size, plates, rings, offsets, firstRing, mirror);
  let trace = 0;
  for (let i = 0; i < size; i++) trace += matrix[i * size + i]!;
  for (const ridge of RIDGES) {
    for (let i = 0; i < size; i++) matrix[i * size + i]! += (ridge * trace) / size;
    const blocks = factorBlocks(matrix, size, plates, rings);
    if (blocks) {
      if (alone) keepFactored(nodesOf(alone), blocks);
      return { plates, rings, size, blocks };
    }
  }
  throw new RangeError('the parts of a vehicle lie in one another');
};

/** Takes the images in a plane at z = −`depth` off the matrix (lower triangle). */
const subtractImages = (
  matrix: Float64Array,
  size: number,
  plates: readonly PlateMesh[],
  rings: readonly RingPath[],
  offsets: readonly number[],
  firstRing: number,
  depth: number
): void => {
  const images = new Float64Array(size * size);
  const below = plates.map((mesh) => ({
    ...mesh,
    plate: { ...mesh.plate, height: -2 * depth - mesh.plate.height }
  }));
  plates.forEach((outer, i) => {
    for (let j = 0; j <= i; j++) addPlateBlock(images, size, outer, below[j]!, offsets[i]!, offsets[j]!);
  });
  rings.forEach((ring, i) => {
    const row = (firstRing + i) * size;
    below.forEach((plate, j) => ringRow(ring, plate, images, row + offsets[j]!));
    for (let j = 0; j <= i; j++) images[row + firstRing + j] = -mutualOfImage(ring, rings[j]!, depth);
  });
  for (let k = 0; k < matrix.length; k++) matrix[k]! -= images[k]!;
};

/** Flux through a ring of every hat of a plate: ∮ A·dl with A of its surface current in closed form. */
const ringRow = (ring: RingPath, plate: PlateMesh, matrix: Float64Array, start: number): void => {
  const ny = plate.ys.length;
  const corners = new Float64Array(plate.xs.length * ny * CORNER_VALUES);
  for (let k = 0; k < ring.x.length; k++) {
    const x = ring.x[k]!;
    const y = ring.y[k]!;
    const h = Math.abs(ring.z[k]! - plate.plate.height);
    for (let c = 0, at = 0; c < plate.xs.length; c++)
      for (let d = 0; d < ny; d++, at += CORNER_VALUES)
        cornerPotentials(plate.xs[c]! - x, plate.ys[d]! - y, h, corners, at);
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
