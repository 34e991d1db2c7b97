/** Typing sizes while drawing, snapping, the pointer that the keyboard moves. */
export const entry = {} as const;
