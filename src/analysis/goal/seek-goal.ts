/**
 * The smallest change of one number that makes a finding go away, and what else it changes. Where nothing helps it says
 * which value comes nearest.
 */
import type { Site } from '#plan/schema';
import { gridsOf } from '#plan/variables/grid';
import { experimentOn, rangeOf, valueOf, withValue } from '#plan/variables/index';
import type { Means } from '../means';
import type { Finding, Severity } from '../results';
import type { Steps } from '../steps';
import { createAttempts, isIt, type Tried } from './attempts';
import { createJudge } from './judge';
import { FINER, nearestHit } from './nearest-hit';
import { allNeeds } from './needs';
import type { FindingRef, Goal, GoalReason, GoalWish } from './results';
import { silently, within } from './within';

const GRAVITY: Readonly<Record<Severity, number>> = { problem: 2, caution: 1, note: 0 };

const refOf = ({ code, subject, severity }: Finding): FindingRef => ({ code, subject, severity });

/**
 * Those of the second list that the first has nothing for: of several of a kind about one thing, as of vehicles that are
 * missed, the gravest is held against the gravest, and so on. `isLess`: whether its like in the first does not stand for one.
 */
const beyond = (
  first: readonly Finding[],
  second: readonly Finding[],
  isLess: (one: Finding, other: Finding) => boolean
): readonly Finding[] => {
  const gravest = (all: readonly Finding[]): Finding[] =>
    [...all].sort((a, b) => GRAVITY[b.severity] - GRAVITY[a.severity]);
  return second.filter((each) => {
    const like = gravest(first.filter((other) => isIt(each, other)));
    const match = like[gravest(second.filter((other) => isIt(each, other))).indexOf(each)];
    return match === undefined || isLess(match, each);
  });
};

/** New ones, and those that got graver. */
const broughtBy = (before: readonly Finding[], after: readonly Finding[]): readonly FindingRef[] =>
  beyond(before, after, (one, other) => GRAVITY[one.severity] < GRAVITY[other.severity]).map(refOf);

/** Those that are gone. */
const clearedBy = (before: readonly Finding[], after: readonly Finding[]): readonly FindingRef[] =>
  beyond(after, before, () => false).map(refOf);

/** Numbers that no drawing holds: findings are of the drawing. */
const BESIDE_THE_DRAWING = new Set(['offset', 'along', 'shortedTurns']);

/** Shares of the whole: the search, then all findings of the drawing as it is, and as it would be. */
const SEARCHED = 0.8;
const BEFORE = 0.9;
/** Steps after which half of a judgement counts as done: how many there are is not known before they are taken. */
const HALF_WAY = 30;

interface Change {
  readonly before: readonly Finding[];
  readonly after: readonly Finding[];
}

function* judgedBoth(site: Site, there: Site, means: Means): Steps<Change> {
  const { judge } = createJudge(means);
  let steps = 0;
  const before = yield* within(judge(site, allNeeds(site)), (taken) => {
    steps = taken;
    return SEARCHED + (BEFORE - SEARCHED) * (taken / (HALF_WAY + taken));
  });
  // of two drawings that differ in one number one takes about as many steps as the other
  const after = yield* within(
    judge(there, allNeeds(there)),
    (taken) => BEFORE + (1 - BEFORE) * Math.min(1, taken / steps)
  );
  return { before: before.findings, after: after.findings };
}

export function* seekGoalInSteps(site: Site, wish: GoalWish, means: Means): Steps<Goal> {
  const { variable, finding } = wish;
  const present = experimentOn(site);
  const from = valueOf(present, variable);
  const range = rangeOf(present, variable);
  const attempts = createAttempts(present, wish, createJudge(means).judge);
  const none = (reason: GoalReason, best: Tried | null = null): Goal => ({
    kind: 'none',
    ...{ reason, from, least: range?.least ?? NaN, most: range?.most ?? NaN, tried: attempts.count() },
    best: best && { at: best.value, told: best.told }
  });
  if (from === null || !range) return none('not possible');
  const start = yield* silently(attempts.whole(from));
  if (!start || start.isGone) return none('not possible');
  if (BESIDE_THE_DRAWING.has(variable.kind)) return none('no effect', start);

  const grids = gridsOf(variable, site.displayUnits, range.step / FINER);
  const hit = yield* within(nearestHit(from, range, grids, attempts.helps), (_, said) =>
    said === null ? null : SEARCHED * said
  );
  if (!hit) {
    const best = yield* silently(attempts.best(start));
    yield BEFORE;
    const reason = yield* silently(attempts.reason(start));
    yield 1;
    return none(reason, best);
  }
  const there = withValue(present, variable, hit.to)!.site;
  const { before, after } = yield* judgedBoth(site, there, means);
  yield 1;
  return {
    kind: 'found',
    ...{ from, ...hit, tried: attempts.count() },
    brings: broughtBy(before, after),
    clears: clearedBy(before, after).filter((each) => !isIt(finding, each))
  };
}
