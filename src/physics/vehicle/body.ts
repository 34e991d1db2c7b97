/**
 * All parts of one vehicle as one matrix, factored once: ΔL of loops i and j is −φᵢᵀ·A⁻¹·φⱼ, φ the flux per ampere.
 */
import { atNought, fillMatrix, imagesIn, sizeOf, type Meshed } from './body-matrix';
import type { Part, PlatePart } from './parts';
import { meshPlate, type PlateMesh } from './plate-mesh';
import { ringPath } from './ring';
import { factorBlocks, type SymmetryBlock } from './symmetry';

export interface Body extends Meshed {
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

/** Keeps the newest `most` of what is made, by key. */
const createKeeper = <T>(most: number) => {
  const kept = new Map<string, T>();
  return (key: string, make: () => T): T => {
    const known = kept.get(key);
    if (known !== undefined) return known;
    const made = make();
    if (kept.size >= most) kept.delete(kept.keys().next().value!);
    kept.set(key, made);
    return made;
  };
};

/** As many as a vehicle has meshes between the lowest and the highest that anybody looks at. */
const factored = createKeeper<readonly SymmetryBlock[]>(60);
/** Before a plane takes its images off: the vehicles of a site over steel. Some megabytes each. */
const filled = createKeeper<Float64Array>(8);

const factor = (matrix: Float64Array, meshed: Meshed): readonly SymmetryBlock[] => {
  const size = sizeOf(meshed);
  let trace = 0;
  for (let i = 0; i < size; i++) trace += matrix[i * size + i]!;
  for (const ridge of RIDGES) {
    for (let i = 0; i < size; i++) matrix[i * size + i]! += (ridge * trace) / size;
    const blocks = factorBlocks(matrix, size, meshed.plates, meshed.rings);
    if (blocks) return blocks;
  }
  throw new RangeError('the parts of a vehicle lie in one another');
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
  const body = { plates, rings, size: sizeOf({ plates, rings }) };
  const { meshed, key } = atNought(body, fineness);
  if (mirror === null) return { ...body, blocks: factored(key, () => factor(fillMatrix(meshed), meshed)) };
  const own = filled(key, () => fillMatrix(meshed));
  const images = imagesIn(body, mirror);
  return {
    ...body,
    blocks: factor(
      images.map((image, k) => own[k]! - image),
      body
    )
  };
};
