/** What a part of some work says of how far it is, put into the whole of it. */
import type { Steps } from '../steps';

/** The same steps; `shareOf` hears how many were taken and what the last one said, and says what it is of the whole; null: nothing. */
export function* within<T>(
  steps: Steps<T>,
  shareOf: (taken: number, said: number | null) => number | null
): Steps<T> {
  for (let taken = 1; ; taken++) {
    const step = steps.next();
    if (step.done) return step.value;
    const share = shareOf(taken, typeof step.value === 'number' ? step.value : null);
    if (share === null) yield;
    else yield share;
  }
}

/** Says nothing: how far one try is says little of how far a search is. */
export const silently = <T>(steps: Steps<T>): Steps<T> => within(steps, () => null);
