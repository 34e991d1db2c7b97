/**
 * Bz of a loop on a lattice as close as half of a vehicle's samples, in the direction that the vehicle heads to: wherever it
 * stands, its samples lie between nodes of it in the same way, and all of them follow from one set of weights (Lagrange's
 * polynomial through six nodes a side). For maps, which ask for thousands of places of one heading.
 */
import { inFrame, verticalField, type Filaments } from '../field/filaments';
import type { CompressedBody } from './compressed';
import { reducedBy, sampleRings } from './reduce';
import type { PlateSampling } from './sampling';

/** Where the vehicle's origin may stand, in its own heading: x to its right, y ahead, metres. */
export interface Ground {
  readonly left: number;
  readonly right: number;
  readonly rear: number;
  readonly front: number;
}

/** Lattice steps in a step of the samples. */
const PER_SAMPLE = 2;
const NODES = 6;
/** Nodes before the one at or below a place. */
const BEFORE = NODES / 2 - 1;

interface PlateLattice {
  readonly plate: PlateSampling;
  readonly stepX: number;
  readonly stepY: number;
  readonly left: number;
  readonly rear: number;
  readonly columns: number;
  readonly rows: number;
  /** Column by column. */
  readonly field: Float64Array;
}

/** The lattice without its values: its size decides whether it is worth making. */
const planned = (plate: PlateSampling, ground: Ground): Omit<PlateLattice, 'field'> => {
  const { xs, ys } = plate;
  const stepX = (xs[1]! - xs[0]!) / PER_SAMPLE;
  const stepY = (ys[1]! - ys[0]!) / PER_SAMPLE;
  const left = ground.left + xs[0]! - BEFORE * stepX;
  const rear = ground.rear + ys[0]! - BEFORE * stepY;
  return {
    plate,
    stepX,
    stepY,
    left,
    rear,
    columns: Math.ceil((ground.right + xs[xs.length - 1]! - left) / stepX) + BEFORE + 3,
    rows: Math.ceil((ground.front + ys[ys.length - 1]! - rear) / stepY) + BEFORE + 3
  };
};

/** Nodes that a lattice for these places needs. */
export const latticeSize = ({ plates }: CompressedBody, ground: Ground): number =>
  plates.reduce((sum, plate) => {
    const { columns, rows } = planned(plate, ground);
    return sum + columns * rows;
  }, 0);

/** Columns that are made before others get their turn. */
const A_TURN = 16;

export interface Lattice {
  /** z with the vehicle's origin at places of the ground, one after the other. */
  readonly reducedAt: (places: readonly (readonly [number, number])[]) => Float64Array;
}

export function* latticeInSteps(
  body: CompressedBody,
  filaments: Filaments,
  heading: number,
  ground: Ground
): Generator<void, Lattice> {
  const end = filaments.length;
  // a copy: the frame's room is used again
  const local = inFrame(filaments, { x: 0, y: 0, heading }).slice(0, end);
  const lattices: PlateLattice[] = [];
  for (const plate of body.plates) {
    const plan = planned(plate, ground);
    const field = new Float64Array(plan.columns * plan.rows);
    const y = Float64Array.from({ length: plan.rows }, (_, row) => plan.rear + row * plan.stepY);
    const x = new Float64Array(plan.rows);
    for (let column = 0; column < plan.columns; column++) {
      const part = field.subarray(column * plan.rows, (column + 1) * plan.rows);
      verticalField(local, end, x.fill(plan.left + column * plan.stepX), y, plate.height, part);
      if (column % A_TURN === A_TURN - 1) yield;
    }
    lattices.push({ ...plan, field });
  }
  return {
    reducedAt: (places) =>
      reducedBy(body, places.length, (k, samples) => {
        const [x, y] = places[k]!;
        let at = 0;
        for (const lattice of lattices) {
          sampleAt(lattice, x, y, samples, at);
          at += lattice.plate.xs.length * lattice.plate.ys.length;
        }
        sampleRings(body.rings, local, end, x, y, samples, at);
      })
  };
}

const acrossWeights = new Float64Array(NODES);
const alongWeights = new Float64Array(NODES);
let between = new Float64Array(0);

/** Lagrange's weights of the nodes −2 to 3 at t in [0, 1]. */
const weightsAt = (t: number, weights: Float64Array): void => {
  for (let a = 0; a < NODES; a++) {
    let weight = 1;
    for (let b = 0; b < NODES; b++) if (b !== a) weight *= (t - (b - BEFORE)) / (a - b);
    weights[a] = weight;
  }
};

const sampleAt = (
  { plate: { xs, ys }, stepX, stepY, left, rear, rows, field }: PlateLattice,
  x: number,
  y: number,
  into: Float64Array,
  at: number
): void => {
  const u = (x + xs[0]! - left) / stepX;
  const v = (y + ys[0]! - rear) / stepY;
  const i = Math.floor(u + 1e-9);
  const j = Math.floor(v + 1e-9);
  weightsAt(u - i, acrossWeights);
  weightsAt(v - j, alongWeights);
  const [w0, w1, w2, w3, w4, w5] = acrossWeights as unknown as readonly number[];
  const [h0, h1, h2, h3, h4, h5] = alongWeights as unknown as readonly number[];
  const length = PER_SAMPLE * (ys.length - 1) + NODES;
  if (between.length < length) between = new Float64Array(2 * length);
  for (let c = 0; c < xs.length; c++) {
    const start = (i - BEFORE + PER_SAMPLE * c) * rows + j - BEFORE;
    for (let k = 0; k < length; k++) {
      const from = start + k;
      between[k] =
        w0! * field[from]! +
        w1! * field[from + rows]! +
        w2! * field[from + 2 * rows]! +
        w3! * field[from + 3 * rows]! +
        w4! * field[from + 4 * rows]! +
        w5! * field[from + 5 * rows]!;
    }
    for (let k = 0, from = 0; k < ys.length; k++, from += PER_SAMPLE)
      into[at + c * ys.length + k] =
        h0! * between[from]! +
        h1! * between[from + 1]! +
        h2! * between[from + 2]! +
        h3! * between[from + 3]! +
        h4! * between[from + 4]! +
        h5! * between[from + 5]!;
  }
};
