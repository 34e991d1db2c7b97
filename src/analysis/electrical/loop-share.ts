/**
 * Relative change of a circuit's terminal inductance over that of its loops' own: energy in their field over all of it.
 * Below 1 for what the lead-in adds, above where its capacitance raises what the terminals see.
 */
import type { SolvedCircuit } from './circuit-model';

/** `field`: the same circuit at the frequency whose loop inductances count; a vehicle changes those by much the same at any. */
export const loopShareOf = (solved: SolvedCircuit, field: SolvedCircuit = solved): number => {
  let sum = 0;
  solved.weights.forEach((row, i) =>
    row.forEach((weight, j) => {
      const henries = i === j ? field.loops[i]!.inductance + field.steelOf(i).re : field.input.mutual(i, j);
      sum += weight * henries;
    })
  );
  return sum / solved.inductance;
};
