/** Which commands somebody means who types a few letters, the likeliest first. */

/** Without case and accents, and with words apart. */
const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .toLowerCase();

/** The letters of a word in their order, with others between them: how many others, or null. */
function scattered(text: string, word: string): number | null {
  let at = -1;
  let first = -1;
  for (const letter of word) {
    at = text.indexOf(letter, at + 1);
    if (at === -1) return null;
    if (first === -1) first = at;
  }
  return at - first + 1 - word.length;
}

/** 0 for the best: the beginning of the text, a whole word, its beginning, anywhere, letters in the right order. */
function distanceOf(text: string, word: string): number | null {
  const at = text.indexOf(word);
  if (at === 0) return 0;
  if (` ${text} `.includes(` ${word} `)) return 1;
  if (text.includes(` ${word}`)) return 2;
  if (at > 0) return 3;
  const between = word.length < 3 ? null : scattered(text, word);
  return between === null || between > 3 * word.length ? null : 6 + between;
}

/** How far the text is from what is wanted; null if a word is not in it. */
export function mismatch(text: string, wanted: string): number | null {
  const words = plain(wanted)
    .split(/\s+/)
    .filter((word) => word !== '');
  const sought = plain(text);
  return words.reduce<number | null>((sum, word) => {
    const far = sum === null ? null : distanceOf(sought, word);
    return sum === null || far === null ? null : sum + far;
  }, 0);
}

/**
 * What fits, the nearest first; of equals what was used last comes first, and what can be done now before what cannot.
 */
export function ranked<
  T extends { readonly id: string; readonly label: string; readonly isPossible: boolean }
>(actions: readonly T[], wanted: string, recent: readonly string[]): readonly T[] {
  const used = ({ id }: T): number => {
    const at = recent.indexOf(id);
    return at === -1 ? recent.length : at;
  };
  return actions
    .map((action, place) => ({ action, place, far: mismatch(action.label, wanted) }))
    .filter((each): each is typeof each & { far: number } => each.far !== null)
    .sort(
      (a, b) =>
        Number(b.action.isPossible) - Number(a.action.isPossible) ||
        a.far - b.far ||
        used(a.action) - used(b.action) ||
        a.place - b.place
    )
    .map(({ action }) => action);
}
