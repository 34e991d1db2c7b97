/**
 * Waiting for a database that may never answer: some browsers forget a request now and then, and then neither the page nor
 * its word about what is kept may wait for ever.
 */
import { SilentError } from './refusal';

/** Milliseconds: a slow disk answers in less. Once one wait was in vain, the others need not take as long. */
const FIRST = 10_000;
const LATER = 500;

/** What is waited for, or a `SilentError` when it takes too long; `isAtWork` says that it is seen to be under way. */
export type Patience = <Answer>(answer: Promise<Answer>, isAtWork: () => boolean) => Promise<Answer>;

export function createPatience(): Patience {
  let limit = FIRST;

  return async <Answer>(answer: Promise<Answer>, isAtWork: () => boolean): Promise<Answer> => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    const silence = new Promise<never>((_, reject) => {
      const look = () => {
        if (isAtWork()) timer = setTimeout(look, limit);
        else {
          limit = LATER;
          reject(new SilentError());
        }
      };
      timer = setTimeout(look, limit);
    });
    try {
      return await Promise.race([answer, silence]);
    } finally {
      clearTimeout(timer);
    }
  };
}
