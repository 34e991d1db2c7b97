/** Densities of figures that no normal distribution tells: of which nothing is known, over the range, of sound insulation. */
import type { Quantity } from '#plan/schema';
import { SOUND_INSULATION } from '../forward/contract';
import { logNormalShare, logSum, normalShare } from './normal';
import { ANYTHING, LOST_SHARE, METER_TOPS, NOISE_ABOVE, NOISE_SHARE, SLIP_SHARE } from './priors';

/** Below `blur` a meter tells nothing from nothing: there the density stays what it is at it. */
const logUniform = (value: number, [low, high]: readonly [number, number], blur: number): number =>
  -Math.log(Math.max(low, blur, Math.abs(value))) - Math.log(Math.log(high / low));

/** ln of the density of a figure that could be anything. `blur`: the meter's deviation, in the figure's unit. */
export const logAnything = (quantity: Quantity, value: number, blur: number): number =>
  logUniform(value, ANYTHING[quantity], blur);

/** ln of the probability that the meter is over its range where `value` is to be read. */
export const logOver = (quantity: Quantity, value: number): number => {
  const meter = METER_TOPS[quantity];
  if (!meter || value <= 0) return Math.log(LOST_SHARE);
  const above = Math.exp(logNormalShare(Math.log(value / meter.top) / meter.spread));
  return Math.log(LOST_SHARE + (1 - LOST_SHARE) * above);
};

/** Probability of the same. */
export const overShare = (quantity: Quantity, value: number): number => Math.exp(logOver(quantity, value));

/** ln of the density of a figure that was read where there is nothing to read. */
export const logNoise = (quantity: Quantity, value: number, blur: number): number => {
  const [low, high] = ANYTHING[quantity];
  const least = NOISE_ABOVE[quantity] ?? low;
  const slip = Math.log(SLIP_SHARE) + logAnything(quantity, value, blur);
  if (Math.abs(value) < least) return slip;
  return Math.log(NOISE_SHARE[quantity]) + logUniform(value, [least, high], blur);
};

export const logNoFigure = (quantity: Quantity): number => Math.log1p(-NOISE_SHARE[quantity]);

/**
 * ln of the density of sound insulation as a meter reads it: even on a logarithmic scale between the ends, which the meter's
 * relative error `share` blurs. `blur`: the meter's deviation where it was read, in the figure's unit.
 */
export const logSound = (value: number, quantity: Quantity, blur: number, share: number): number => {
  const { low, high, overRange } = SOUND_INSULATION;
  const slip = Math.log(SLIP_SHARE) + logAnything(quantity, value, blur);
  if (!(value > 0)) return slip;
  const spread = Math.max(LEAST_BLUR, share);
  const above = normalShare(Math.log(value / low) / spread);
  const below = normalShare(Math.log(high / value) / spread);
  const density = (Math.max(0, above + below - 1) / (value * Math.log(high / low))) * (1 - overRange);
  return logSum([Math.log1p(-SLIP_SHARE) + Math.log(density), slip]);
};

/** Of a meter's relative error. */
const LEAST_BLUR = 0.01;

export const logSoundOver = (): number => Math.log(SOUND_INSULATION.overRange);
