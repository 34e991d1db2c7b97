import type { Translation } from '../message';

/** Key list, first steps, ideas. */
export const help = {} as const satisfies Partial<Translation>;
