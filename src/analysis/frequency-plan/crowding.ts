/**
 * Too many channels for the room there is. Choices of several channels that exclude one another, every two of them, can
 * serve one channel between them: when all the choices left fall into fewer such groups than there are channels waiting,
 * no plan is left. What a search by trying alone would have to find out for every arrangement anew.
 */
import { holds } from './bits';
import type { Arc } from './network';

export interface Crowding {
  /**
   * True when it is certain that the channels with more than one choice left cannot all have one. `domains` holds the
   * choices of all channels of the part as bits, from `at` on; a channel with one choice left takes nothing more away.
   */
  isTooFull(domains: Int32Array, at: number, waiting: readonly number[] | Int32Array, count: number): boolean;
}

/**
 * `arcs` of each channel of the part, `words` to a set of choices. `rankOf`: choices that exclude one another have ranks
 * close together, which makes for large groups; a frequency is one.
 */
export const createCrowding = (
  arcs: readonly (readonly Arc[])[],
  choicesOf: (channel: number) => readonly number[],
  words: number,
  rankOf: (channel: number, choice: number) => number
): Crowding => {
  const places = arcs
    .flatMap((_, channel) => choicesOf(channel).map((choice) => ({ channel, choice })))
    .map((place) => ({ ...place, rank: rankOf(place.channel, place.choice) }))
    .sort((a, b) => a.rank - b.rank || a.choice - b.choice || a.channel - b.channel);
  const row = Math.ceil(places.length / 32);
  const most = 32 * words;
  const indexOf = new Int32Array(arcs.length * most).fill(-1);
  places.forEach(({ channel, choice }, index) => {
    indexOf[channel * most + choice] = index;
  });
  const excluded = new Int32Array(places.length * row);
  const exclude = (a: number, b: number): void => {
    excluded[a * row + (b >>> 5)]! |= 1 << (b & 31);
  };
  places.forEach(({ channel, choice }, index) => {
    for (const other of choicesOf(channel))
      if (other !== choice) exclude(index, indexOf[channel * most + other]!);
    for (const { to, masks } of arcs[channel]!)
      for (const other of choicesOf(to))
        if (!holds(masks, choice * words, other)) exclude(index, indexOf[to * most + other]!);
  });
  const uncovered = new Int32Array(row);
  const joining = new Int32Array(row);

  return {
    isTooFull: (domains, at, waiting, count) => {
      uncovered.fill(0);
      for (let k = 0; k < count; k++) {
        const channel = waiting[k]!;
        for (let w = 0; w < words; w++)
          for (let left = domains[at + channel * words + w]!; left !== 0; left &= left - 1) {
            const index = indexOf[channel * most + 32 * w + 31 - Math.clz32(left & -left)]!;
            uncovered[index >>> 5]! |= 1 << (index & 31);
          }
      }
      let groups = 0;
      for (let first = 0; first < row; first++)
        while (uncovered[first] !== 0) {
          groups += 1;
          if (groups >= count) return false;
          joining.set(uncovered);
          for (let word = first; word < row; word++)
            while (joining[word] !== 0) {
              const bit = joining[word]! & -joining[word]!;
              const index = 32 * word + 31 - Math.clz32(bit);
              uncovered[word]! &= ~bit;
              joining[word]! &= ~bit;
              const own = index * row;
              for (let w = word; w < row; w++) joining[w]! &= excluded[own + w]!;
            }
        }
      return true;
    }
  };
};
