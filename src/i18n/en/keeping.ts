/** Keeping, finding again and handing on sites. */
export const keeping = {} as const;
