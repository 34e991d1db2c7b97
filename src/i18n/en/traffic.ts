/** Words of this part. */
export const traffic = {} as const;
