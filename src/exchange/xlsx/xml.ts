/** Texts inside XML. */

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** What XML 1.0 has no place for: controls, halves of characters, and the two that are none. */
const IMPOSSIBLE = /[\p{Cs}\uFFFE\uFFFF]|(?![\t\n\r])\p{Cc}/gu;

export const escaped = (text: string): string =>
  text.replace(IMPOSSIBLE, '').replace(/[&<>"]/g, (sign) => ENTITIES[sign]!);
