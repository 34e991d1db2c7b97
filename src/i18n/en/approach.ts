/** Words of this part. */
export const approach = {} as const;
