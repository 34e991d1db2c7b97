/**
 * The height at which a plate gives a stated ΔL/L on the standard circuit, driven along the lane's middle over the middle
 * of the loop, at the strongest place of that pass.
 */
import type { Vehicle } from '#plan/schema';
import { createBodyStore } from '../electrical/bodies';
import { raised } from '../electrical/raised';
import { lineWithoutLane } from '../passing/lane-line';
import { extentAlong } from '../passing/paths';
import { strongestOnPath } from '../passing/strongest';
import { standardCircuit } from './standard-circuit';

export interface PlateSize {
  /** Metres, across and along the lane. */
  readonly width: number;
  readonly length: number;
}

const LOWEST = 0.02;
const HIGHEST = 3;
const FIRST = 0.3;
/** Heights nearer than this are one, metres. */
const FINE_ENOUGH = 1e-6;
const MOST_ROUNDS = 20;

const plateAt = ({ width, length }: PlateSize, height: number): Vehicle => ({
  id: 'plate',
  name: '',
  parts: [{ kind: 'plate', centre: [0, 0], width, length, height }]
});

/** ΔL/L, negative, of the plate at `height` metres: what a pass over the standard circuit says of it. */
export const standardEffect = (size: PlateSize, height: number): number => passOf(plateAt(size, height))(0);

/** By how far the plate is lifted beyond the height that its mesh is made for. */
const passOf = (vehicle: Vehicle): ((lift: number) => number) => {
  const { solved, loop } = standardCircuit();
  const body = createBodyStore().get(vehicle);
  const line = lineWithoutLane([0, 0], 1);
  const extents = [extentAlong(loop, line)];
  return (lift) => strongestOnPath(solved, raised(body, lift), vehicle, line, 0, extents).deltaLOverL;
};

/**
 * Metres. The response falls with every bit of height, so halving the interval finds it; the mesh is then made for the
 * height found and the search repeated until both agree.
 * @throws RangeError where no height from 2 cm to 3 m gives the figure
 */
export const solveHeight = (size: PlateSize, deltaLOverL: number): number => {
  let height = FIRST;
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const pass = passOf(plateAt(size, height));
    let low = LOWEST;
    let high = HIGHEST;
    if (pass(low - height) > deltaLOverL || pass(high - height) < deltaLOverL)
      throw new RangeError('no height gives this response');
    while (high - low > FINE_ENOUGH / 10) {
      const middle = (low + high) / 2;
      if (pass(middle - height) < deltaLOverL) low = middle;
      else high = middle;
    }
    const found = (low + high) / 2;
    if (Math.abs(found - height) < FINE_ENOUGH) return found;
    height = found;
  }
  return height;
};
