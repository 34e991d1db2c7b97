/**
 * The nearest value that helps, to both sides of where a number is. It is tried outwards in its own steps to both sides at
 * once, so that nothing nearer helps whatever happens between; the step in which it first helps is then made finer, by values
 * that are round where they are shown. Where both sides help in one step the finer values decide which is nearer.
 */
import type { Grid } from '#plan/variables/grid';
import type { VariableRange } from '#plan/variables/variable';
import type { Steps } from '../steps';
import { candidatesFrom, tidy, type Candidate } from './candidates';
import { silently } from './within';

/** The last step of a number that is not whole is divided into so many, as near as round values allow. */
export const FINER = 10;
/** Tries that it takes about to find one of so many. */
const TO_FIND = Math.ceil(Math.log2(FINER));

/** Whether a value helps; null for one that cannot be. */
export type Trying = (value: number) => Steps<boolean | null>;

export interface Hit {
  readonly to: number;
  readonly within: number;
}

/** A number's range, and the round values among which it is told: coarsest first. */
interface Room {
  readonly range: VariableRange;
  readonly grids: readonly Grid[];
}

/** Places of a grid nearer than this to a value are that value. */
const CRUMB = 1e-6;

/** Of the step that leads to it from the present side, the nearest round value that helps too. */
function* refined(
  helps: Trying,
  before: number,
  hit: number,
  { range: { isWhole, step, least, most }, grids }: Room
): Steps<Hit> {
  if (isWhole) return { to: hit, within: step };
  const sign = Math.sign(hit - before);
  for (const grid of grids) {
    const [start, end] = [before, hit].map((value) => sign * grid.placeOf(value)) as [number, number];
    const valueAt = (place: number): number => {
      const isIt = Math.abs(place - end) < CRUMB;
      return isIt ? hit : grid.valueAt(sign * place);
    };
    let [low, high] = [Math.floor(start + CRUMB), Math.ceil(end - CRUMB)];
    // beyond the hit only where the number may still be that
    if (valueAt(high) < least || valueAt(high) > most) high -= 1;
    if (high <= low || !(valueAt(high) === hit || (yield* helps(valueAt(high))))) continue;
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2);
      if (yield* helps(valueAt(middle))) high = middle;
      else low = middle;
    }
    return { to: valueAt(high), within: grid.step };
  }
  return { to: hit, within: Math.abs(hit - before) };
}

/** Far out only every so many steps were tried: those that were passed over are tried now. */
function* finer(helps: Trying, from: number, { value, stride }: Candidate, room: Room): Steps<Hit> {
  const { step } = room.range;
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
  const { to, within } = yield* refined(helps, before, found, room);
  return { to, within: stride > 1 ? Math.max(within, stride * step) : within };
}

/** Null where nothing helps. A step may say which share is done, 0 to 1. */
export function* nearestHit(
  from: number,
  range: VariableRange,
  grids: readonly Grid[],
  helps: Trying
): Steps<Hit | null> {
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
      const made = yield* finer(saying, from, hit, { range, grids });
      if (!best || Math.abs(made.to - from) < Math.abs(best.to - from)) best = made;
    }
    return best;
  }
  return null;
}
