/** Words of this part. */
export const across = {} as const;
