/**
 * The nearest value that helps, to both sides of where a number is. It is tried outwards in its own steps to both sides at
 * once, so that nothing nearer helps whatever happens between; the step in which it first helps is then made finer. Where
 * both sides help in one step the finer values decide which is nearer.
 */
import type { VariableRange } from '#plan/variables/variable';
import type { Steps } from '../steps';
import { candidatesFrom, tidy, type Candidate } from './candidates';
import { silently } from './within';

/** The last step of a number that is not whole is divided into so many. */
const FINER = 10;
/** Tries that it takes at most to find one of so many. */
const TO_FIND = Math.ceil(Math.log2(FINER));

/** Whether a value helps; null for one that cannot be. */
export type Trying = (value: number) => Steps<boolean | null>;

export interface Hit {
  readonly to: number;
  readonly within: number;
}

/** Of the step that leads to it from the present side, the nearest tenth that helps too. */
function* refined(helps: Trying, before: number, hit: number, isWhole: boolean): Steps<number> {
  if (isWhole) return hit;
  let [low, high] = [0, FINER];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (yield* helps(tidy(before + ((hit - before) * middle) / FINER))) high = middle;
    else low = middle;
  }
  return high === FINER ? hit : tidy(before + ((hit - before) * high) / FINER);
}

/** Far out only every so many steps were tried: those that were passed over are tried now. */
function* finer(
  helps: Trying,
  from: number,
  { value, stride }: Candidate,
  { step, isWhole }: VariableRange
): Steps<Hit> {
  const sign = Math.sign(value - from);
  let before = tidy(value - sign * stride * step);
  let found = value;
  for (let k = 1; k < stride; k++) {
    const next = tidy(before + sign * step);
    if (yield* helps(next)) {
      found = next;
      break;
    }
    before = next;
  }
  const to = yield* refined(helps, before, found, isWhole);
  const fine = isWhole ? step : Math.abs(found - before) / FINER;
  return { to, within: stride > 1 ? Math.max(fine, stride * step) : fine };
}

/** Null where nothing helps. A step may say which share is done, 0 to 1. */
export function* nearestHit(from: number, range: VariableRange, helps: Trying): Steps<Hit | null> {
  const sides = candidatesFrom(from, range);
  const longest = Math.max(...sides.map(({ length }) => length));
  const total = sides[0].length + sides[1].length;
  const quietly: Trying = (value) => silently(helps(value));
  let count = 0;
  for (let k = 0; k < longest; k++) {
    // the end of a range may lie nearer than a whole step
    const here = sides.flatMap((side) => side[k] ?? []).sort((a, b) => a.steps - b.steps);
    const hits: Candidate[] = [];
    for (const candidate of here) {
      if (yield* quietly(candidate.value)) hits.push(candidate);
      yield (count += 1) / total;
    }
    if (hits.length === 0) continue;
    const done = count / total;
    const most = hits.reduce((sum, { stride }) => sum + stride - 1 + (range.isWhole ? 0 : TO_FIND), 0);
    let finest = 0;
    /** The rest of the way is that of the finer values, as many as may be needed. */
    const saying: Trying = function* (value) {
      const answer = yield* quietly(value);
      yield done + (1 - done) * Math.min(1, (finest += 1) / most);
      return answer;
    };
    let best: Hit | null = null;
    for (const hit of hits) {
      const made = yield* finer(saying, from, hit, range);
      if (!best || Math.abs(made.to - from) < Math.abs(best.to - from)) best = made;
    }
    return best;
  }
  return null;
}
