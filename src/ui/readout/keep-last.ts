/** What follows an edit only after a moment is shown as it last was until then, and said to be old. */

export interface Kept<T> {
  readonly value: T | null;
  readonly isOld: boolean;
}

/**
 * Remembers the last value of each id. `take` answers with the present value, or, while more is to come, with the last
 * one as old; when nothing more is to come, a value that is not there has gone.
 */
export function keepLast<T>(): { take(id: string, now: T | null | undefined, isPending: boolean): Kept<T> } {
  const last = new Map<string, T>();
  return {
    take(id, now, isPending) {
      if (now !== null && now !== undefined) {
        last.set(id, now);
        return { value: now, isOld: false };
      }
      if (!isPending) last.delete(id);
      return { value: last.get(id) ?? null, isOld: true };
    }
  };
}
