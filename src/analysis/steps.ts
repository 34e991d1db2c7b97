/** Work that is done in steps, so that something more urgent may come in between. A step may say which share is done, 0 to 1. */
export type Steps<T> = Generator<number | void, T>;

/** All of it at once. */
export const finish = <T>(steps: Steps<T>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};
