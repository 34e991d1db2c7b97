/** The cause that none of the models holds: every figure may be off by itself, insulation may be bad, meters may show nothing. */
import type { Predicted } from '../forward/contract';
import { seenUnder } from './likelihood';
import { logSum } from './normal';
import { UNMODELLED, UNMODELLED_LEAK, UNMODELLED_LOST } from './priors';
import type { Scene } from './scene';
import type { Suspect } from './suspect';

export const unmodelled = ({ observed, nominal, relative }: Scene, logPrior: number): Suspect => {
  // a figure of which nothing is known
  const loses = (predicted: Predicted, k: number, isLeaky: boolean): boolean => {
    if (observed[k]!.isBaseline) return false;
    return predicted === 'sound' ? isLeaky : observed[k]!.value === null;
  };
  const lost = observed.filter(({ value, isBaseline }, k) => {
    return value === null && !isBaseline && nominal.predicted[k] !== 'sound';
  });
  const particles = [false, true].flatMap((isLeaky) => {
    const predicted = nominal.predicted.map((each, k) => (loses(each, k, isLeaky) ? null : each));
    const share = isLeaky ? UNMODELLED_LEAK : 1 - UNMODELLED_LEAK;
    return UNMODELLED.map((off) => {
      const look = seenUnder(observed, predicted, nominal.spread, relative, off);
      const prior =
        logPrior + Math.log(share / UNMODELLED.length) + lost.length * Math.log(2 * UNMODELLED_LOST);
      return { values: [], spans: [], logMass: prior + look.logLikelihood, look };
    });
  });
  return {
    hypotheses: [],
    isUnknown: true,
    logMass: logSum(particles.map(({ logMass }) => logMass)),
    particles,
    unmodelled: particles.map((_, k) => UNMODELLED[k % UNMODELLED.length]!)
  };
};
