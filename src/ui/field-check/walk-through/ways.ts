/** A way that is being gone, as it is kept. */
import { COMPLAINTS, type Complaint, type WalkStep } from '#analysis/walk-through/results';

export interface Going {
  readonly complaint: Complaint;
  /** Ids of answers, in order. */
  readonly answers: readonly string[];
}

/** By circuit. */
export type Ways = Readonly<Record<string, Going>>;

const isGoing = (found: unknown): found is Going => {
  const { complaint, answers } = (found ?? {}) as Partial<Record<keyof Going, unknown>>;
  return (
    COMPLAINTS.some((each) => each === complaint) &&
    Array.isArray(answers) &&
    answers.every((each) => typeof each === 'string')
  );
};

/** Whatever was stored; what does not fit is left out. */
export function waysFrom(found: unknown): Ways {
  if (typeof found !== 'object' || found === null) return {};
  return Object.fromEntries(
    Object.entries(found).filter((entry): entry is [string, Going] => isGoing(entry[1]))
  );
}

/** The answers that were given on the way to a step, without its own. */
export const answersBefore = (steps: readonly WalkStep[], id: string): readonly string[] => {
  const at = steps.findIndex((step) => step.id === id);
  return steps.slice(0, at < 0 ? steps.length : at).flatMap(({ given }) => (given === null ? [] : [given]));
};
