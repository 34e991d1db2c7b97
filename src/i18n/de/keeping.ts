import type { Translation } from '../message';

/** Keeping, finding again and handing on sites. */
export const keeping = {} as const satisfies Partial<Translation>;
