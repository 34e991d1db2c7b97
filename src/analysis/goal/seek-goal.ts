/**
 * The smallest change of one number that makes a finding go away. The number is tried outwards from what it is, in its own
 * steps to both sides at once, so that the first that helps is the nearest whatever the finding does between; the last step
 * is then made finer. Where nothing helps it says which value comes nearest.
 */
import type { Site } from '#plan/schema';
import { experimentOn, rangeOf, valueOf, withValue } from '#plan/variables/index';
import type { Experiment, Variable, VariableRange } from '#plan/variables/variable';
import type { Means } from '../means';
import type { Finding, Severity } from '../results';
import type { Steps } from '../steps';
import { candidatesFrom, tidy, type Candidate } from './candidates';
import { createJudge, type Judge } from './judge';
import { allNeeds, needsOf } from './needs';
import type { FindingRef, Goal, GoalReason, GoalWish } from './results';
import { shortfallOf } from './shortfall';

/** The last step of a number that is not whole is divided into so many. */
const FINER = 10;
/** Shortfalls that differ by a smaller share are one. */
const SAME = 1e-9;

interface Tried {
  readonly value: number;
  readonly isGone: boolean;
  readonly shortfall: number;
  readonly told: string;
}

const isIt = (ref: FindingRef, { code, subject }: Pick<Finding, 'code' | 'subject'>): boolean =>
  code === ref.code && subject === ref.subject;

interface Search {
  readonly present: Experiment;
  readonly variable: Variable;
  readonly finding: FindingRef;
  readonly judge: Judge['judge'];
  readonly tried: Tried[];
}

/** Null for a value that the drawing cannot take. */
function* tryOut({ present, variable, finding, judge, tried }: Search, value: number): Steps<Tried | null> {
  const site = withValue(present, variable, value)?.site;
  if (!site) return null;
  const judged = yield* judge(site, needsOf(finding));
  const it = judged.findings.find((each) => isIt(finding, each));
  const made: Tried = {
    value,
    isGone: it === undefined,
    shortfall: it ? shortfallOf(finding, judged, site) : 0,
    told: it?.message ?? ''
  };
  tried.push(made);
  return made;
}

/** Of the step that leads to it from the present side, the nearest tenth that helps too. */
function* refined(search: Search, from: number, hit: number, isWhole: boolean): Steps<number> {
  if (isWhole) return hit;
  let [low, high] = [0, FINER];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const made = yield* tryOut(search, tidy(from + ((hit - from) * middle) / FINER));
    if (made?.isGone) high = middle;
    else low = middle;
  }
  return high === FINER ? hit : tidy(from + ((hit - from) * high) / FINER);
}

interface Hit {
  readonly to: number;
  readonly within: number;
}

/** Far out only every so many steps were tried: those that were passed over are tried now. */
function* nearest(search: Search, from: number, hit: Candidate, range: VariableRange): Steps<Hit> {
  const sign = Math.sign(hit.value - from);
  let before = tidy(hit.value - sign * hit.stride * range.step);
  let found = hit.value;
  for (let k = 1; k < hit.stride; k++) {
    const value = tidy(before + sign * range.step);
    const made = yield* tryOut(search, value);
    if (made?.isGone) {
      found = value;
      break;
    }
    before = value;
  }
  const to = yield* refined(search, before, found, range.isWhole);
  const fine = range.isWhole ? range.step : Math.abs(found - before) / FINER;
  return { to, within: hit.stride > 1 ? Math.max(fine, hit.stride * range.step) : fine };
}

/** Outwards on both sides; null where nothing helps. */
function* scanned(search: Search, from: number, range: VariableRange): Steps<Hit | null> {
  const sides = candidatesFrom(from, range);
  const longest = Math.max(...sides.map(({ length }) => length));
  const total = sides[0].length + sides[1].length;
  let count = 0;
  for (let k = 0; k < longest; k++) {
    // the end of a range may lie nearer than a whole step
    const here = sides.flatMap((side) => side[k] ?? []).sort((a, b) => a.steps - b.steps);
    const hits: Candidate[] = [];
    for (const candidate of here) {
      const made = yield* tryOut(search, candidate.value);
      yield (count += 1) / total;
      if (made?.isGone) hits.push(candidate);
    }
    if (hits.length === 0) continue;
    let best: Hit | null = null;
    for (const hit of hits) {
      const made = yield* nearest(search, from, hit, range);
      if (!best || Math.abs(made.to - from) < Math.abs(best.to - from)) best = made;
    }
    return best;
  }
  return null;
}

const GRAVITY: Readonly<Record<Severity, number>> = { problem: 2, caution: 1, note: 0 };

const refOf = ({ code, subject, severity }: Finding): FindingRef => ({ code, subject, severity });

/** New ones, and those that got graver. */
const broughtBy = (before: readonly Finding[], after: readonly Finding[]): readonly FindingRef[] =>
  after
    .filter((each) => {
      const same = before.filter((other) => isIt(each, other));
      return same.every(({ severity }) => GRAVITY[severity] < GRAVITY[each.severity]);
    })
    .map(refOf);

const reasonFor = (start: Tried, tried: readonly Tried[]): GoalReason => {
  const known = tried.map(({ shortfall }) => shortfall).filter((each) => !Number.isNaN(each));
  const spread = Math.max(...known) - Math.min(...known);
  const isFlat = known.length === 0 || !(spread > SAME * Math.max(Math.abs(start.shortfall), 1e-12));
  return isFlat ? 'no effect' : 'not enough';
};

/** Numbers that no drawing holds: findings are of the drawing. */
const BESIDE_THE_DRAWING = new Set(['offset', 'along', 'shortedTurns']);

export function* seekGoalInSteps(site: Site, { variable, finding }: GoalWish, means: Means): Steps<Goal> {
  const present = experimentOn(site);
  const from = valueOf(present, variable);
  const range = rangeOf(present, variable);
  const { judge } = createJudge(means);
  const tried: Tried[] = [];
  const search: Search = { present, variable, finding, judge, tried };
  const none = (reason: GoalReason, best: Tried | null = null): Goal => ({
    kind: 'none',
    ...{ reason, from, least: range?.least ?? NaN, most: range?.most ?? NaN, tried: tried.length },
    best: best && { at: best.value, told: best.told }
  });
  if (from === null || !range) return none('not possible');
  const start = yield* tryOut(search, from);
  if (!start || start.isGone) return none('not possible');
  if (BESIDE_THE_DRAWING.has(variable.kind)) return none('no effect', start);

  const hit = yield* scanned(search, from, range);
  if (!hit) {
    const reason = reasonFor(start, tried);
    const best = tried.reduce((least, each) => (each.shortfall < least.shortfall ? each : least), start);
    return none(reason, best);
  }
  const there = withValue(present, variable, hit.to)!.site;
  const before = yield* judge(site, allNeeds(site));
  const after = yield* judge(there, allNeeds(there));
  return {
    kind: 'found',
    ...{ from, ...hit, tried: tried.length },
    brings: broughtBy(before.findings, after.findings),
    clears: before.findings
      .filter((each) => !isIt(finding, each) && !after.findings.some((other) => isIt(each, other)))
      .map(refOf)
  };
}
