/** Sets of choices as bits, 32 to a word: `words` of them from `at` on in a larger array. */

export const wordsFor = (choices: number): number => Math.ceil(choices / 32);

const ones = (word: number): number => {
  let v = word - ((word >>> 1) & 0x55555555);
  v = (v & 0x33333333) + ((v >>> 2) & 0x33333333);
  return Math.imul((v + (v >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
};

export const countOf = (sets: Int32Array, at: number, words: number): number => {
  let count = 0;
  for (let w = 0; w < words; w++) count += ones(sets[at + w]!);
  return count;
};

export const holds = (sets: Int32Array, at: number, choice: number): boolean =>
  ((sets[at + (choice >>> 5)]! >>> (choice & 31)) & 1) === 1;

export const put = (sets: Int32Array, at: number, choice: number): void => {
  sets[at + (choice >>> 5)]! |= 1 << (choice & 31);
};

/** The smallest member of a set that is not empty. */
export const firstOf = (sets: Int32Array, at: number): number => {
  let w = 0;
  while (sets[at + w] === 0) w++;
  const word = sets[at + w]!;
  return 32 * w + 31 - Math.clz32(word & -word);
};

/** The only member becomes this one. */
export const setOnly = (sets: Int32Array, at: number, words: number, choice: number): void => {
  sets.fill(0, at, at + words);
  put(sets, at, choice);
};
