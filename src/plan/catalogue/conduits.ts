/**
 * What two lead-ins that lie side by side couple by, where the designer states nothing.
 *
 * Common practice, no published source. Two pairs with 4 mm between their wires and 8 mm between their axes would couple
 * by up to 58 nH/m if they ran straight (`analysis/beating/straight-pairs.ts`); twisting turns the sign over at every half twist, so that what
 * is left is what irregular twists and the untwisted ends leave: a fiftieth of it.
 */
import type { Conduit } from '../schema';

export const USUAL_MUTUAL = 1e-9;

/** H per metre, as an amount. */
export const mutualPerMetreOf = (conduit: Pick<Conduit, 'mutualPerMetre_H'>): number =>
  conduit.mutualPerMetre_H ?? USUAL_MUTUAL;
