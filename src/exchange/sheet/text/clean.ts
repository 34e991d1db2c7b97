/** Texts of a site as they may stand on a sheet: nothing in them turns, breaks or hides what stands beside them. */

/** Marks that change the direction of what follows, that join or part letters unseen, and halves of characters. */
const UNSEEN = /[\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu;
const BREAKS = /[\s\p{Cc}]+/gu;

/** On one line. */
export const clean = (text: string): string => text.replace(BREAKS, ' ').replace(UNSEEN, '').trim();

/** Lines of what was written in lines. */
export const cleanLines = (text: string): readonly string[] =>
  text.split(/\r\n|[\n\r\u2028\u2029]/u).map(clean);
