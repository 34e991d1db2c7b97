/** Work that is done in steps, so that something more urgent may come in between. */
export type Steps<T> = Generator<void, T>;

/** All of it at once. */
export const finish = <T>(steps: Steps<T>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};
