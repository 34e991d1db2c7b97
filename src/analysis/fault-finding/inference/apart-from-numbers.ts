/** What a figure is worth that is no number on both sides: over the range, sound insulation, or of which nothing is said. */
import { SOUND_INSULATION, type Predicted } from '../forward/contract';
import { meterAt, type Observed } from './observed';
import { NOISE_ABOVE } from './priors';
import { logAnything, logNoFigure, logNoise, logOver, logSound, logSoundOver } from './unrelated';

/** Where a model says nothing, the meter shows a figure as often as not. */
const EITHER = Math.log(0.5);

/** ln of a probability where the meter was over its range, of a density where it showed a figure; 0 for numbers on both sides. */
export const apartFromNumbers = (
  { value, accuracy, asked: { quantity } }: Observed,
  predicted: Predicted
): number => {
  const blur = value === null ? 0 : meterAt(value, accuracy);
  if (predicted === null) return value === null ? EITHER : EITHER + logAnything(quantity, value, blur);
  if (predicted === 'sound') {
    if (value === null) return logSoundOver();
    // sound insulation is read with the error that the meter has there, not with the one near nought
    const least = Math.max(value, SOUND_INSULATION.low);
    return logSound(value, quantity, blur, meterAt(least, accuracy) / least);
  }
  if (predicted === 'over range')
    return value === null ? logNoFigure(quantity) : logNoise(quantity, value, blur);
  return value === null ? logOver(quantity, predicted) : 0;
};

/** Below this share of the least that is sound, insulation is not. */
const FAR_BELOW = 0.3;
/** ln of the probability below which a meter should not have been over its range. */
const SELDOM = Math.log(0.05);

/** Whether it takes a slip to read this where that is predicted; of numbers on both sides their misfit tells. */
export const isStrange = ({ value, asked: { quantity } }: Observed, predicted: Predicted): boolean => {
  if (predicted === null) return false;
  if (predicted === 'sound') return value !== null && value < FAR_BELOW * SOUND_INSULATION.low;
  if (predicted === 'over range') return value !== null && value < (NOISE_ABOVE[quantity] ?? Infinity);
  return value === null && logOver(quantity, predicted) < SELDOM;
};
