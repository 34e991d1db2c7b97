import type { Translation } from '../message';

/** Arranging, layers, locks, the context menu, the command palette, several things at once. */
export const arrange = {} as const satisfies Partial<Translation>;
