/**
 * Self and mutual inductance of whole loops: sums over the columns of wires that make them.
 * Sections 1 and 2 of the model; each primitive names its source. Filaments: a wire's current counts as flowing on its
 * axis for every other wire, which is exact for round wires without proximity effect.
 */
import { mutualOfRuns, selfOfRun } from './runs';
import type { Winding } from './winding';

/** Self-inductance, H, of the magnetic field outside the copper. The field inside it comes from `wire/round-wire`. */
export const externalInductance = ({ runs, wireRadius }: Winding): number => {
  let sum = 0;
  runs.forEach((run, i) => {
    sum += selfOfRun(run, wireRadius);
    for (let j = 0; j < i; j++) sum += 2 * mutualOfRuns(run, runs[j]!);
  });
  return sum;
};

/** Mutual inductance, H, of two loops wound as drawn: positive where they help each other. */
export const mutualInductance = (a: Winding, b: Winding): number => {
  const closest = (a.pitch + b.pitch) / 2;
  let sum = 0;
  for (const run of a.runs) for (const other of b.runs) sum += mutualOfRuns(run, other, closest);
  return sum;
};
