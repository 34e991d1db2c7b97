/** Random numbers that are the same for the same seed for ever: xorshift (Marsaglia 2003), spread by a multiplier at the start. */
export interface Random {
  /** 0 ≤ x < 1 */
  readonly share: () => number;
  readonly between: (least: number, most: number) => number;
  /** Every ratio equally likely. */
  readonly byRatio: (least: number, most: number) => number;
  /** Both ends included. */
  readonly whole: (least: number, most: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
  /** Mean 0, deviation 1 (Box and Muller 1958). */
  readonly normal: () => number;
}

export const createRandom = (seed: number): Random => {
  let state = (Math.imul(seed + 1, 0x9e3779b1) ^ 0x5bd1e995) >>> 0 || 1;
  const share = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
  for (let k = 0; k < 16; k++) share();
  const between = (least: number, most: number) => least + (most - least) * share();
  const whole = (least: number, most: number) => least + Math.floor((most - least + 1) * share());
  return {
    share,
    between,
    byRatio: (least, most) => Math.exp(between(Math.log(least), Math.log(most))),
    whole,
    pick: (from) => from[whole(0, from.length - 1)]!,
    chance: (wanted) => share() < wanted,
    normal: () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share())
  };
};
