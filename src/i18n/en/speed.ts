/** Words of this part. */
export const speed = {} as const;
