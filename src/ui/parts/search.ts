/** Which of some things somebody means who types a few letters. */

/** Letters as people type them in a hurry: without case and accents. */
const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{Diacritic}/gu, '')
    .toLowerCase();

/** Those whose text holds every word of `wanted`, in any order; all of them when nothing is wanted. */
export function found<T>(things: readonly T[], wanted: string, textOf: (thing: T) => string): readonly T[] {
  const words = plain(wanted)
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return things;
  return things.filter((thing) => {
    const text = plain(textOf(thing));
    return words.every((word) => text.includes(word));
  });
}
