/**
 * Choices that are alike: exchanging two of them everywhere changes nothing. As long as neither is taken by anybody, one of
 * them need be tried only; without this every arrangement is refuted once for every order of equal settings.
 */
import { holds } from './bits';
import type { Arc } from './network';

const exchanged = (choice: number, a: number, b: number): number =>
  choice === a ? b : choice === b ? a : choice;

/**
 * By choice the smallest one that it is alike with (itself, if none), for a part of a network. `choicesOf`: what each
 * channel has left.
 */
export const alikeChoices = (
  arcs: readonly (readonly Arc[])[],
  choicesOf: (channel: number) => readonly number[],
  words: number
): Int32Array => {
  const size = 32 * words;
  const has = arcs.map((_, channel) => new Set(choicesOf(channel)));
  const areAlike = (a: number, b: number): boolean =>
    has.every((choices) => choices.has(a) === choices.has(b)) &&
    arcs.every((list, channel) =>
      list.every(({ to, masks }) =>
        choicesOf(channel).every((choice) => {
          const other = exchanged(choice, a, b);
          // only a and b move: whatever else goes with a choice has to go with its exchange
          return choicesOf(to).every(
            (theirs) =>
              holds(masks, choice * words, theirs) === holds(masks, other * words, exchanged(theirs, a, b))
          );
        })
      )
    );
  const first = Int32Array.from({ length: size }, (_, choice) => choice);
  const inUse = [...new Set(has.flatMap((choices) => [...choices]))].sort((a, b) => a - b);
  // being alike is an equivalence: comparing with the first of each class is enough
  inUse.forEach((b, k) => {
    first[b] = inUse.slice(0, k).find((a) => first[a] === a && areAlike(a, b)) ?? b;
  });
  return first;
};
