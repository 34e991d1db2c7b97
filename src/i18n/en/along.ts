/** Words of this part. */
export const along = {} as const;
