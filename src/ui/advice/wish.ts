/** Where the adviser begins. */
import type { TurnsWish } from '#analysis/advice/advice';
import type { Circuit, Site } from '#plan/schema';

/**
 * Henries at the terminals, common practice: enough that the loops outweigh an ordinary lead-in, not so much that the
 * winding's capacitance rules.
 */
const USUAL = { least: 80e-6, most: 300e-6 } as const;
/** NEMA TS 1 and TS 2, from memory of the standard. */
const LEAST_Q = 5;

/** The usual window inside what the unit accepts; all of what it accepts where the two have nothing in common. */
export function usualWish(site: Site, circuit: Circuit): TurnsWish {
  const range = site.units.find(({ id }) => id === circuit.channel?.unit)?.inductanceRange_H;
  const least_H = Math.max(USUAL.least, range?.[0] ?? 0);
  const most_H = Math.min(USUAL.most, range?.[1] ?? Infinity);
  if (least_H < most_H || !range) return { least_H, most_H, leastQ: LEAST_Q };
  return { least_H: range[0], most_H: range[1], leastQ: LEAST_Q };
}
