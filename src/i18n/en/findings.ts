/** What findings and advice say; made where they are found. */
export const findings = {} as const;
