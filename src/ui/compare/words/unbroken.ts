/** Sentences that others wrote, as those of findings, with every number kept on one line with its unit. */
const BEFORE_A_UNIT = /(?<=\d) (?=(?:%|°[CF]|[nµmk]?[mFHΩs]|k?Hz|cm|ft|in|m[²³])(?![\p{L}\d]))/gu;

export const unbroken = (text: string): string => text.replaceAll(BEFORE_A_UNIT, '\u00a0');
