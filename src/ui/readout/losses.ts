/** Losses as shares of a whole, for the bar and its table. */
import type { LoopLosses, LossCause, LossShare } from '#analysis/results';

const OF_LOOP: readonly (readonly [LossCause, keyof LoopLosses])[] = [
  ['copper', 'copperDc_ohm'],
  ['skin', 'skin_ohm'],
  ['proximity', 'proximity_ohm'],
  ['pavement', 'pavement_ohm'],
  ['steel', 'steel_ohm'],
  ['added', 'added_ohm']
];

export const lossesOfLoop = (losses: LoopLosses): readonly LossShare[] =>
  OF_LOOP.map(([cause, key]) => ({ cause, resistance_ohm: losses[key] }));

export interface ShownLoss extends LossShare {
  /** Of the whole, 0 to 1. */
  readonly share: number;
}

/** Causes that take part, in their own order; what is under a millionth of the whole is not there. */
export function shownLosses(shares: readonly LossShare[]): readonly ShownLoss[] {
  const whole = shares.reduce((sum, { resistance_ohm }) => sum + resistance_ohm, 0);
  if (!(whole > 0)) return [];
  return shares
    .map((share) => ({ ...share, share: share.resistance_ohm / whole }))
    .filter(({ share }) => Math.abs(share) > 1e-6);
}
