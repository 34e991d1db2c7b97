/** Texts in a given width: over several lines, or shortened. */
import { widthOf, type Face } from '#scenes/paper-type';

const ELLIPSIS = '…';
/** Longer than what any line or cell can hold: the rest is not even measured. */
const MOST = 4000;

/** How many of the characters fit, at least one, so that there is always a way on. */
function fitting(text: string, width: number, face: Face): number {
  let low = 1;
  let high = text.length;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (widthOf(text.slice(0, middle), face) <= width) low = middle;
    else high = middle - 1;
  }
  // the two halves of a character outside the first plane stay together
  return low < text.length && /[\uD800-\uDBFF]/u.test(text[low - 1]!) ? Math.max(1, low - 1) : low;
}

/** Empty where not even an ellipsis fits. */
export function shortened(text: string, width: number, face: Face): string {
  if (text.length <= MOST && widthOf(text, face) <= width) return text;
  const room = width - widthOf(ELLIPSIS, face);
  const start = text.slice(0, MOST);
  const kept = start.slice(0, fitting(start, room, face)).trimEnd();
  if (widthOf(kept, face) <= room) return kept + ELLIPSIS;
  return room >= 0 ? ELLIPSIS : '';
}

/** Of a word that is wider than the line: pieces that fit. */
function pieces(word: string, width: number, face: Face): string[] {
  const found: string[] = [];
  let rest = word;
  while (rest !== '') {
    const count = widthOf(rest, face) <= width ? rest.length : fitting(rest, width, face);
    found.push(rest.slice(0, count));
    rest = rest.slice(count);
  }
  return found;
}

/** At least one line, the last one shortened where `most` do not hold everything. */
export function wrapped(text: string, width: number, face: Face, most = Infinity): readonly string[] {
  const cut = text.length > MOST;
  if (!cut && widthOf(text, face) <= width) return [text];
  const words = text
    .slice(0, MOST)
    .split(/ +/u)
    .filter((word) => word !== '')
    .flatMap((word) => pieces(word, width, face));
  const lines: string[] = [];
  for (const word of words) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && widthOf(longer, face) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  if (lines.length === 0) return [''];
  const kept = lines.slice(0, most);
  if (lines.length > most || cut)
    kept[kept.length - 1] = shortened(`${kept.at(-1) ?? ''}${ELLIPSIS}`, width, face);
  return kept;
}

export const widestWord = (text: string, face: Face): number =>
  Math.max(
    0,
    ...text
      .slice(0, MOST)
      .split(/ +/u)
      .map((word) => widthOf(word, face))
  );
