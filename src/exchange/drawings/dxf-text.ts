/** Texts inside DXF: one line each, without the signs that readers take for something else. */

const LONGEST = 200;
const UNSEEN = /[\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu;

/**
 * A line break would end the value and begin a code of its own; `%%`, `^` and `\U+` begin codes inside a text, for which the
 * format has ways to write the signs themselves.
 */
export function dxfText(text: string): string {
  const plain = text
    .slice(0, 2 * LONGEST)
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .replace(UNSEEN, '')
    .trim();
  return [...plain]
    .slice(0, LONGEST)
    .join('')
    .replace(/%{2,}/g, (signs) => '%%%'.repeat(signs.length))
    .replace(/\^/g, '^ ')
    .replace(/\\(?=[UuMm]\+)/g, '\\U+005C');
}
