import type { Translation } from '../message';

/** What a person likes, apart from any site. */
export const settings = {} as const satisfies Partial<Translation>;
