/**
 * What one vehicle does to a circuit at very many places, by its compressed form: to first order in ΔL where the response
 * is weak, and with what the whole network makes of it where it is strong. Not over steel.
 */
import type { SolvedCircuit } from './circuit-model';

/** From where to before where among the places a loop answers; null: nowhere. */
export type Range = readonly [number, number] | null;

/** Places of a vehicle, and what its compressed form makes of a loop there. */
export interface Places {
  readonly count: number;
  /** One behind the other, so close that what the network makes of them changes evenly. */
  readonly isRun: boolean;
  /** Of each of the circuit's loops. */
  readonly ranges: readonly Range[];
  /** Length of z. */
  readonly rank: number;
  /** z of a loop at the places from one number to before another, one after the other. */
  readonly reduced: (loop: number, from: number, to: number) => Float64Array;
}

/** −ΔL of a pair of loops, H, at the places from `from` on. */
interface PairDrop {
  readonly i: number;
  readonly j: number;
  readonly from: number;
  readonly drops: Float64Array;
}

const pairDrops = (circuit: SolvedCircuit, places: Places): readonly PairDrop[] => {
  const { ranges, rank } = places;
  const reduced = circuit.input.loops.map((_, loop) => {
    const range = ranges[loop];
    return range ? places.reduced(loop, ...range) : null;
  });
  return reduced.flatMap((a, i) =>
    reduced.slice(0, i + 1).flatMap((b, j): PairDrop[] => {
      const [rangeA, rangeB] = [ranges[i], ranges[j]];
      if (!a || !b || !rangeA || !rangeB) return [];
      const from = Math.max(rangeA[0], rangeB[0]);
      const count = Math.min(rangeA[1], rangeB[1]) - from;
      if (count <= 0) return [];
      const drops = new Float64Array(count);
      for (let k = 0; k < count; k++) {
        const [atA, atB] = [(from + k - rangeA[0]) * rank, (from + k - rangeB[0]) * rank];
        let sum = 0;
        for (let r = 0; r < rank; r++) sum += a[atA + r]! * b[atB + r]!;
        drops[k] = sum;
      }
      return [{ i, j, from, drops }];
    })
  );
};

/** −ΔL/L at the terminals at every place; 0 where no loop is in its range. */
export const responsesAt = (circuit: SolvedCircuit, places: Places): Float64Array => {
  const pairs = pairDrops(circuit, places);
  const responses = new Float64Array(places.count);
  for (const { i, j, from, drops } of pairs) {
    const weight = ((i === j ? 1 : 2) * circuit.weights[i]![j]!) / circuit.inductance;
    for (let k = 0; k < drops.length; k++) responses[from + k]! += weight * drops[k]!;
  }
  if (circuit.input.loops.length === 1) correctSingle(circuit, pairs, responses);
  else correctAll(circuit, pairs, responses, places.isRun);
  return responses;
};

/** Below this the first order is within 0.05 % of a response. */
const WEAK = 5e-4;

const exact = (circuit: SolvedCircuit, dropOf: (i: number, j: number) => number): number =>
  1 - circuit.inductanceWith((i, j) => -dropOf(i, j)) / circuit.inductance;

/** Of a single loop the network is one curve: what it makes of the first order follows from two drops. */
const correctSingle = (
  circuit: SolvedCircuit,
  [pair]: readonly PairDrop[],
  responses: Float64Array
): void => {
  if (!pair) return;
  const most = pair.drops.reduce((largest, drop) => Math.max(largest, drop), 0);
  const weight = circuit.weights[0]![0]! / circuit.inductance;
  if (Math.abs(weight) * most < WEAK) return;
  const [half, whole] = [most / 2, most].map((drop) => exact(circuit, () => drop) / (weight * drop) - 1);
  for (let k = 0; k < pair.drops.length; k++) {
    const share = pair.drops[k]! / most;
    // the parabola through (0, 1), the half and the whole
    responses[pair.from + k]! *= 1 + share * (4 * half! - whole!) + 2 * share * share * (whole! - 2 * half!);
  }
};

/**
 * In a run what the network adds to the first order changes evenly from place to place: every other one is solved, those
 * between by a cubic. Where the shares of two loops cancel, their sum says nothing of how strong they are.
 */
const correctAll = (
  circuit: SolvedCircuit,
  pairs: readonly PairDrop[],
  responses: Float64Array,
  isRun: boolean
): void => {
  const count = responses.length;
  const strengths = new Float64Array(count);
  for (const { i, j, from, drops } of pairs) {
    const weight = Math.abs(circuit.weights[i]![j]! / circuit.inductance);
    for (let k = 0; k < drops.length; k++) strengths[from + k]! += weight * Math.abs(drops[k]!);
  }
  const additions = new Float64Array(count).fill(NaN);
  const additionAt = (k: number): number => {
    if (k < 0 || k >= count || strengths[k] === 0) return 0;
    if (Number.isNaN(additions[k])) {
      const here = pairs.filter(({ from, drops }) => k >= from && k < from + drops.length);
      const dropOf = (i: number, j: number): number => {
        const pair = here.find((each) => each.i === Math.max(i, j) && each.j === Math.min(i, j));
        return pair ? pair.drops[k - pair.from]! : 0;
      };
      additions[k] = exact(circuit, dropOf) - responses[k]!;
    }
    return additions[k]!;
  };
  const corrected = responses.map((response, k) => {
    if (strengths[k]! < WEAK) return response;
    const isBetween = isRun && k % 2 === 1 && k >= 3 && k + 3 < count;
    if (!isBetween) return response + additionAt(k);
    const near = additionAt(k - 1) + additionAt(k + 1);
    const far = additionAt(k - 3) + additionAt(k + 3);
    return response + (9 * near - far) / 16;
  });
  responses.set(corrected);
};
