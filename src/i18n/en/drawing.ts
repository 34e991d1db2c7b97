/** Tools that draw, and what they say. */
export const drawing = {} as const;
