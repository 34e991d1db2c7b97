/**
 * When a unit sees a trip. It measures a channel every so often: a trip is seen up to one such scan later, at any moment
 * of it alike. Two circuits are late independently of one another, so the time between them is off by the difference of
 * two such lots.
 */
import type { Circuit, Site, Unit } from '#plan/schema';
import type { Spread } from './results';

/** How often of twenty a tolerance may be missed. */
const MISSED = 1 / 20;

/** Seconds from one measurement of a channel to the next: in turn with the channels in use, or by itself. */
export const scanOf = ({ circuits }: Pick<Site, 'circuits'>, unit: Unit): number => {
  const used = circuits.filter(({ channel }) => channel?.unit === unit.id).length;
  return unit.measuringTime_s * (unit.scansInTurn ? Math.max(1, used) : 1);
};

export const scanOfCircuit = (site: Site, { channel }: Circuit): number => {
  const unit = channel && site.units.find(({ id }) => id === channel.unit);
  return unit ? scanOf(site, unit) : 0;
};

/**
 * Half the width that the difference of two even lots, from nought to `a` and from nought to `b`, keeps nineteen times in
 * twenty. Its density is a trapezium: level in the middle, falling to nothing at ±(a + b)/2 about its mean; a tail beyond x
 * holds ((a + b)/2 − x)²/(2ab).
 */
export const differenceOf = (a: number, b: number): number => {
  const [long, short] = a > b ? [a, b] : [b, a];
  const tail = Math.sqrt(MISSED * long * short);
  // the tails reach into the level part where one lot is far shorter than the other
  return tail < short ? (long + short) / 2 - tail : ((1 - MISSED) * long) / 2;
};

/** Seconds: the difference of how late the two are seen. */
export const timeSpread = (first_s: number, second_s: number): Spread => ({
  usual: differenceOf(first_s, second_s),
  worst: Math.max(first_s, second_s)
});
