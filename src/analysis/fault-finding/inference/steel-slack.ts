/**
 * Steel that nobody drew is modelled as a plane at some depth that loses more or less; what really lies there has bars with
 * a pitch, ends somewhere, and is nearer to one loop than to another. So what it takes from a loop's inductance may be off
 * by a share of itself, and what it takes from Q by a larger one. Judgement, no published source.
 */
import type { AskedFigure, Predicted } from '../forward/contract';
import type { StraySpread } from './covariance';

const OF_INDUCTANCE = 0.15;
const OF_LOSSES = 0.3;
/** Of each figure by itself. */
const OF_ITS_OWN = 0.07;

/** `without`: what would be read without the steel. */
export const withSteelSlack = (
  spread: StraySpread,
  asked: readonly AskedFigure[],
  predicted: readonly Predicted[],
  without: readonly Predicted[]
): StraySpread => {
  const moves = asked.map((_, k) => {
    const [a, b] = [predicted[k], without[k]];
    return typeof a === 'number' && typeof b === 'number' && a * b > 0 ? Math.log(a / b) : 0;
  });
  const isLoss = asked.map(({ quantity }) => quantity === 'q');
  return {
    inputs: [...spread.inputs, 'steel', 'steel losses'],
    derivatives: spread.derivatives.map((row, k) => [
      ...row,
      isLoss[k] ? 0 : OF_INDUCTANCE * moves[k]!,
      isLoss[k] ? OF_LOSSES * moves[k]! : 0
    ]),
    model: spread.model.map((own, k) => Math.hypot(own, OF_ITS_OWN * moves[k]!))
  };
};
