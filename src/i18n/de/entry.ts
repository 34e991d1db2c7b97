import type { Translation } from '../message';

/** Typing sizes while drawing, snapping, the pointer that the keyboard moves. */
export const entry = {} as const satisfies Partial<Translation>;
