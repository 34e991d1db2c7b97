/** Values of a variable from its present one outwards, nearest first. */
import type { VariableRange } from '#plan/variables/variable';

export interface Candidate {
  /** So many steps from the present value, 1 and more. */
  readonly steps: number;
  /** How many steps nearer to it the next candidate on the same side lies: 1 but far out. */
  readonly stride: number;
  readonly value: number;
}

/** Up to here in every step of the variable; beyond, strides grow with the way that is behind. */
const EVERY = 240;
const GROWTH = 0.05;

/** Sums of steps leave no crumbs: 1.85, not 1.8500000000000003. */
export const tidy = (value: number): number => Number(value.toPrecision(12));

/** On one side; the end of the range is one of them, wherever it lies among the steps. */
const onSide = (from: number, end: number, step: number): readonly Candidate[] => {
  const room = Math.abs(end - from) / step;
  if (!(room > 1e-9)) return [];
  const sign = Math.sign(end - from);
  const candidates: Candidate[] = [];
  let at = 0;
  while (at < room) {
    const stride = at < EVERY ? 1 : Math.ceil(GROWTH * at);
    const steps = at + stride > room - 1e-9 ? room : at + stride;
    candidates.push({
      steps,
      stride: steps - at,
      value: steps === room ? end : tidy(from + sign * steps * step)
    });
    at = steps;
  }
  return candidates;
};

/** Upwards and downwards, each nearest first. */
export const candidatesFrom = (
  from: number,
  { least, most, step }: VariableRange
): readonly [up: readonly Candidate[], down: readonly Candidate[]] => [
  onSide(from, most, step),
  onSide(from, least, step)
];
