/** Words of this part. */
export const calls = {} as const;
