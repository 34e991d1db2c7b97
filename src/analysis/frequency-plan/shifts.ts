/** What the assessment of a drawing knows of its vehicles, for a frequency plan of the same drawing. */
import { deepestOf } from '../beating/tank';
import type { Assessment } from '../results';
import type { PlanWish } from './plan';

export const shiftsOf = ({ circuits }: Pick<Assessment, 'circuits'>): PlanWish['shifts'] =>
  Object.fromEntries(circuits.map(({ id, responses }) => [id, deepestOf(responses)]));
