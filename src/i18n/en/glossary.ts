/** What the terms of the trade mean. */
export const glossary = {} as const;
