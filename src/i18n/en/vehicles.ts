/** Words of this part. */
export const vehicles = {} as const;
