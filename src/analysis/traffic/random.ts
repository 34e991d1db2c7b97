/**
 * Numbers drawn by lot that are the same for the same seed on every machine: Marsaglia's xorshift with the shifts 13, 17, 5
 * (G. Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8(14), 2003), begun from a seed that the finalizer of
 * MurmurHash3 (A. Appleby, 2011, public domain) has mixed, so that neighbouring seeds have nothing in common.
 */

/** From 0 to below 1. */
export type Lot = () => number;

/** The finalizer: one to one on 32 bits. */
export const mixed = (value: number): number => {
  let h = value >>> 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

/** `keys`: what the lots are drawn for; other keys give others that have nothing to do with them. */
export const lotsOf = (seed: number, ...keys: readonly number[]): Lot => {
  // the golden ratio's bits, as is usual: key 0 must not leave the seed as it is
  let state = keys.reduce((sum, key) => mixed(sum + 0x9e3779b9 + mixed(key)), mixed(seed));
  // a state of nothing would stay nothing
  if (state === 0) state = 0x9e3779b9;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 2 ** 32;
  };
};

/** Exponential with mean 1. */
export const exponential = (lot: Lot): number => -Math.log1p(-lot());

/** Normal with mean 0 and deviation 1, cut off at `most`: two lots each (Box and Muller 1958). */
export const normal = (lot: Lot, most: number): number => {
  const size = Math.sqrt(2 * exponential(lot));
  const value = size * Math.cos(2 * Math.PI * lot());
  return Math.min(most, Math.max(-most, value));
};
