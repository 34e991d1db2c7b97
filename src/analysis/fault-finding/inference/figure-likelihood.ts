/** How likely one figure by itself is, whatever the others read. */
import type { Predicted } from '../forward/contract';
import { logDensity, logSum } from './normal';
import { rowOf } from './likelihood';
import { covarianceOf, type LoopShares, type StraySpread } from './covariance';
import { apartFromNumbers } from './apart-from-numbers';
import type { Observed } from './observed';
import { slipOf } from './slip';

export interface Under {
  readonly spread: StraySpread;
  readonly shares: LoopShares;
  /** A share by which every number may be off by itself. */
  readonly unmodelled: number;
}

/** One standard deviation of meter, tolerances and model together, in the figure's unit. */
export const deviationOf = (
  observed: Observed,
  predicted: number,
  { spread, shares, unmodelled }: Under,
  place: number
): number => {
  const row = rowOf(observed, predicted, spread, place);
  return Math.sqrt(
    covarianceOf(row, row, { inputs: spread.inputs, shares }, true) + (unmodelled * predicted) ** 2
  );
};

/** ln of it; slips counted. */
export const logFigure = (observed: Observed, predicted: Predicted, under: Under, place: number): number => {
  const { value } = observed;
  if (typeof predicted !== 'number' || value === null) return apartFromNumbers(observed, predicted);
  const deviation = deviationOf(observed, predicted, under, place);
  const slip = slipOf(observed, predicted, deviation);
  return logSum([
    Math.log1p(-slip.share) + logDensity(value, predicted, deviation),
    Math.log(slip.share) + slip.logDensity
  ]);
};
