/** Why an entry or a file cannot be taken. */
export const refusals = {} as const;
