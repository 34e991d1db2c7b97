/** Shares below this are what rounding left of nothing: fields that cancel. */
const NOTHING = 1e-8;

/** Nought where a share is only a remainder of rounding: as people read it, never what is computed with. */
export const withoutRemainder = (share: number): number => (Math.abs(share) < NOTHING ? 0 : share);
