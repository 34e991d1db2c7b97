import type { Translation } from '../message';

/** What the terms of the trade mean. */
export const glossary = {} as const satisfies Partial<Translation>;
