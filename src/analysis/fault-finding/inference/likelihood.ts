/**
 * How likely the readings are under what a cause predicts. Figures that are numbers stray together, normally; those over a
 * meter's range tell that there was more than it can show; sound insulation is as good as it happens to be.
 */
import { forwardSubstitute, type CholeskyFactor } from '#physics/numeric/cholesky';
import type { Predicted } from '../forward/contract';
import { apartFromNumbers } from './apart-from-numbers';
import { correlatedFit } from './correlated';
import type { Relative, Row, StraySpread } from './covariance';
import { meterAt, type Observed } from './observed';
import { LOST_SHARE } from './priors';
import type { Look } from './refine';
import { slipOf } from './slip';
import { logOver } from './unrelated';

export interface Seen extends Look {
  readonly predicted: readonly Predicted[];
  readonly spread: StraySpread;
  /** Places of the figures that are numbers, read and predicted. */
  readonly numbers: readonly number[];
  readonly factor: CholeskyFactor | null;
}

export const rowOf = (
  { asked, accuracy, isBaseline }: Observed,
  predicted: number,
  spread: StraySpread,
  place: number
): Row => ({
  asked,
  predicted,
  derivatives: spread.derivatives[place]!,
  model: spread.model[place]!,
  meter: meterAt(predicted, accuracy),
  isBaseline
});

/** Of a figure over the range where a number is predicted: a squared misfit that another place may take away. */
const reducible = ({ value, asked }: Observed, predicted: Predicted): number =>
  value === null && typeof predicted === 'number'
    ? -2 * (logOver(asked.quantity, predicted) - Math.log(1 - LOST_SHARE))
    : 0;

/** Of those of the figures that are numbers, in an order of their own. */
const covarianceOfNumbers = (
  observed: readonly Observed[],
  predicted: readonly Predicted[],
  numbers: readonly number[],
  relative: Float64Array,
  unmodelled: number
): Float64Array => {
  const size = numbers.length;
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    const row = numbers[i]! * observed.length;
    const value = predicted[numbers[i]!] as number;
    for (let j = 0; j <= i; j++)
      matrix[i * size + j] = matrix[j * size + i] =
        value * (predicted[numbers[j]!] as number) * relative[row + numbers[j]!]!;
    const { accuracy, isBaseline } = observed[numbers[i]!]!;
    const own = isBaseline ? 0 : unmodelled * value;
    matrix[i * (size + 1)]! += meterAt(value, accuracy) ** 2 + own * own;
  }
  return matrix;
};

/** What the readings are worth under predictions that stray as `spread` says. `unmodelled`: a share by which each number may be off on top, for itself. */
export const seenUnder = (
  observed: readonly Observed[],
  predicted: readonly Predicted[],
  spread: StraySpread,
  relative: Relative,
  unmodelled = 0
): Seen => {
  const numbers: number[] = [];
  let rest = 0;
  let restMisfit = 0;
  observed.forEach((each, k) => {
    const value = predicted[k]!;
    if (typeof value === 'number' && each.value !== null) numbers.push(k);
    else {
      rest += apartFromNumbers(each, value);
      restMisfit += reducible(each, value);
    }
  });
  const covariance = covarianceOfNumbers(observed, predicted, numbers, relative(spread), unmodelled);
  const fit = correlatedFit(
    numbers.map((k) => observed[k]!.value! - (predicted[k] as number)),
    covariance,
    numbers.map((k, i) =>
      slipOf(observed[k]!, predicted[k] as number, Math.sqrt(covariance[i * (numbers.length + 1)]!))
    )
  );
  return {
    logLikelihood: fit.logLikelihood + rest,
    logNormal: fit.logNormal + rest,
    misfit: fit.misfit + restMisfit,
    predicted,
    spread,
    numbers,
    factor: fit.factor
  };
};

/** A figure that becomes another kind of figure counts as this many deviations. */
const ANOTHER_KIND = 2;

const kindOf = (predicted: Predicted): string =>
  typeof predicted === 'number' ? 'number' : String(predicted);

/** How far what two places predict is apart, in standard deviations of the first; over-range figures on the scale of their meters. */
export const apartOf =
  (observed: readonly Observed[]) =>
  (a: Seen, b: Seen): number => {
    let far = 0;
    const moved = new Float64Array(a.numbers.length);
    observed.forEach(({ value, asked }, k) => {
      const [one, other] = [a.predicted[k]!, b.predicted[k]!];
      if (kindOf(one) !== kindOf(other)) far += ANOTHER_KIND ** 2;
      else if (value === null && typeof one === 'number' && typeof other === 'number')
        far += Math.abs(logOver(asked.quantity, one) - logOver(asked.quantity, other)) * 2;
    });
    a.numbers.forEach((k, at) => {
      const other = b.predicted[k];
      if (typeof other === 'number') moved[at] = other - (a.predicted[k] as number);
    });
    if (a.factor) for (const each of forwardSubstitute(a.factor, moved)) far += each * each;
    return Math.sqrt(far);
  };
