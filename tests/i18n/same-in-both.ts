/** Messages that are the same in German, each with the reason: names, units, symbols, and words that both languages share. */
export const SAME_IN_BOTH: Readonly<Record<string, string>> = {};
