/**
 * A continuous plate that lies still: the stream function of a vehicle's plate, with the surface impedance of a metal
 * that is thick against its skin depth, Zs = (1 + j)·ρ/δ (Ramo, Whinnery & Van Duzer, *Fields and Waves*).
 */
import { DIPOLE } from '../field/dipoles';
import { inFrame, type Placement } from '../field/filaments';
import { MU0 } from '../constants';
import { choleskyFactor, type CholeskyFactor } from '../numeric/cholesky';
import { complex, type Complex } from '../numeric/complex';
import { plateFlux } from '../vehicle/flux';
import { addOwnBlock } from '../vehicle/plate-matrix';
import { meshPlate, type PlateMesh } from '../vehicle/plate-mesh';
import type { Screen } from './screen';

export interface Metal {
  /** Ω·m */
  readonly resistivity: number;
  readonly relativePermeability: number;
}

export interface SheetMesh {
  readonly mesh: PlateMesh;
  readonly factor: CholeskyFactor;
}

/** Largest cell against the distance to the nearest wire: tests state the error against finer meshes. */
const CELL_PER_CLEARANCE = 0.8;
const LEAST_STEP = 0.05;
const MOST_UNKNOWNS = 900;

/** A plate `width` × `length` metres, `clearance` from the nearest wire at the least; `fineness` above 1 proves convergence. */
export const meshSheet = (width: number, length: number, clearance: number, fineness = 1): SheetMesh => {
  const plate = { kind: 'plate', x: 0, y: 0, height: 0, width, length } as const;
  for (let coarser = 1; ; coarser *= 1.15) {
    const step = (coarser * Math.max(LEAST_STEP, CELL_PER_CLEARANCE * clearance)) / fineness;
    const mesh = meshPlate(plate, step, fineness / Math.min(coarser, 2), clearance);
    if (mesh.unknowns > MOST_UNKNOWNS * fineness * fineness && coarser < 100) continue;
    const matrix = new Float64Array(mesh.unknowns ** 2);
    addOwnBlock(matrix, mesh.unknowns, mesh, 0);
    const factor = choleskyFactor(matrix, mesh.unknowns);
    if (!factor) throw new RangeError('a plate without extent');
    return { mesh, factor };
  }
};

/** Surface impedance over jω, H: (1 − j)·µδ/2. */
export const surfaceRatio = ({ resistivity, relativePermeability }: Metal, frequency: number): Complex => {
  const skinDepth = Math.sqrt(resistivity / (Math.PI * frequency * MU0 * relativePermeability));
  const half = (MU0 * relativePermeability * skinDepth) / 2;
  return complex(half, -half);
};

/** ∬K·K of bilinear stream functions: the matrix of ∬∇ψ·∇ψ, times x. */
const surfaceProduct = ({ xs, ys, index, unknowns }: PlateMesh, x: Float64Array): Float64Array => {
  const result = new Float64Array(unknowns);
  const rows = ys.length;
  for (let p = 0; p + 1 < xs.length; p++)
    for (let q = 0; q + 1 < rows; q++) {
      const dx = xs[p + 1]! - xs[p]!;
      const dy = ys[q + 1]! - ys[q]!;
      const corner = p * rows + q;
      const nodes = [corner, corner + 1, corner + rows, corner + rows + 1].map((node) => index[node]!);
      const value = (k: number): number => (nodes[k]! < 0 ? 0 : x[nodes[k]!]!);
      for (let k = 0; k < 4; k++) {
        if (nodes[k]! < 0) continue;
        // across: neighbours k ^ 2 along x, k ^ 1 along y; weights of the bilinear element
        const acrossX = (2 * (value(k) - value(k ^ 2)) + (value(k ^ 1) - value(k ^ 3))) / 6;
        const acrossY = (2 * (value(k) - value(k ^ 1)) + (value(k ^ 2) - value(k ^ 3))) / 6;
        result[nodes[k]!]! += (acrossX * dy) / dx + (acrossY * dx) / dy;
      }
    }
  return result;
};

/** `placement`: the plate's middle on the plan, its length along the heading; `z` its height. */
export const sheetScreen = (
  { mesh, factor }: SheetMesh,
  metal: Metal,
  placement: Placement,
  z: number
): Screen => {
  const lifted: PlateMesh = { ...mesh, plate: { ...mesh.plate, height: z } };
  return {
    size: mesh.unknowns,
    factor,
    resist: (x) => surfaceProduct(mesh, x),
    fluxOf: (filaments) => plateFlux(lifted, inFrame(filaments, placement), filaments.length),
    ratioAt: (frequency) => surfaceRatio(metal, frequency),
    dipolesOf: (inPhase, ahead) => {
      const turn = ((placement.heading - 90) * Math.PI) / 180;
      const area = hatAreas(mesh);
      const dipoles = new Float64Array(DIPOLE * mesh.unknowns);
      for (let p = 1; p + 1 < mesh.xs.length; p++)
        for (let q = 1; q + 1 < mesh.ys.length; q++) {
          const unknown = mesh.index[p * mesh.ys.length + q]!;
          const u = mesh.xs[p]!;
          const v = mesh.ys[q]!;
          dipoles.set(
            [
              placement.x + u * Math.cos(turn) - v * Math.sin(turn),
              placement.y + u * Math.sin(turn) + v * Math.cos(turn),
              z,
              inPhase[unknown]! * area[unknown]!,
              ahead[unknown]! * area[unknown]!
            ],
            DIPOLE * unknown
          );
        }
      return dipoles;
    }
  };
};

/** ∬ of every hat, m². */
const hatAreas = ({ pointIndex, pointWeight, unknowns }: PlateMesh): Float64Array => {
  const areas = new Float64Array(unknowns);
  for (let k = 0; k < pointIndex.length; k++)
    if (pointIndex[k]! >= 0) areas[pointIndex[k]!]! += pointWeight[k]!;
  return areas;
};
