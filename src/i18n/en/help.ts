/** Key list, first steps, ideas. */
export const help = {} as const;
