/** Words of this part. */
export const map = {} as const;
