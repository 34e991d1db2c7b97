/**
 * Values of a number as they are tried, and what is known of each. A finding about vehicles is there as soon as one of them
 * makes it: while a number is run through, the vehicle that was worst when all were looked at is driven first, and the
 * others only where it makes no finding any more. What one of them falls short by, all of them fall short by at least.
 */
import { withValue } from '#plan/variables/index';
import type { Experiment } from '#plan/variables/variable';
import type { Site } from '#plan/schema';
import type { Finding } from '../results';
import type { Steps } from '../steps';
import type { Judge, Judged } from './judge';
import { needsOf, type Needs } from './needs';
import type { FindingRef, GoalReason, GoalWish } from './results';
import { shortfallOf } from './shortfall';
import { becameWorse, type Seen } from './worse';

/** Shortfalls that differ by a smaller share are one. */
const SAME = 1e-9;

export interface Tried {
  readonly value: number;
  readonly isGone: boolean;
  /** Of a value that was not looked at whole at least so much; without end where the finding is only gone since it got worse. */
  readonly shortfall: number;
  readonly told: string;
  readonly isWhole: boolean;
}

export const isIt = (ref: FindingRef, { code, subject }: Pick<Finding, 'code' | 'subject'>): boolean =>
  code === ref.code && subject === ref.subject;

export interface Attempts {
  /** How many values were tried. */
  readonly count: () => number;
  /** With all that the finding follows from; null for a value that the drawing cannot take. */
  readonly whole: (value: number) => Steps<Tried | null>;
  /** Whether the finding is gone, with as little as that takes. */
  readonly helps: (value: number) => Steps<boolean | null>;
  /** Of all that were tried, `start` among them, the one that comes nearest; the first of those that do. */
  readonly best: (start: Tried) => Steps<Tried>;
  readonly reason: (start: Tried) => Steps<GoalReason>;
}

const onlyOf = ({ result, findings }: Judged, vehicles: ReadonlySet<string>): Judged => {
  const isOne = ({ vehicle }: { readonly vehicle: string }): boolean => vehicles.has(vehicle);
  const circuits = result.circuits.map((circuit) => ({
    ...circuit,
    responses: circuit.responses.filter(isOne),
    steel: circuit.steel && { ...circuit.steel, responses: circuit.steel.responses.filter(isOne) }
  }));
  const passes = result.passes?.filter(isOne) ?? null;
  return { findings, result: { ...result, circuits, passes } };
};

/** Beside a lane one vehicle takes another one's finding away: what calls from the middle is no matter of the edge. */
const BY_ALL: ReadonlySet<string> = new Set(['next-lane-edge']);

/** As few of the vehicles as make all of the shortfall: none, one, or, where that cannot be said, all. */
const decidingOf = (
  finding: FindingRef,
  judged: Judged,
  site: Site,
  { wanted, paths }: Needs
): Needs['vehicles'] => {
  if (BY_ALL.has(finding.code)) return null;
  const { circuits, passes } = judged.result;
  const driven = [
    ...circuits.filter(({ id }) => wanted.has(id)).flatMap(({ responses }) => responses),
    ...(passes ?? []).filter(({ circuit }) => paths.has(circuit))
  ];
  if (driven.length === 0 && wanted.size === 0) return null;
  const whole = shortfallOf(finding, judged, site);
  const ids = new Set(driven.map(({ vehicle }) => vehicle));
  const few = [[], ...[...ids].map((vehicle) => [vehicle])].map((each) => new Set(each));
  return few.find((vehicles) => shortfallOf(finding, onlyOf(judged, vehicles), site) === whole) ?? null;
};

export const createAttempts = (
  present: Experiment,
  { variable, finding }: GoalWish,
  judge: Judge['judge']
): Attempts => {
  const needs = needsOf(finding);
  const tried = new Map<number, Tried>();
  let deciding: Needs['vehicles'] = null;
  /** Of the first value that was looked at. */
  let start: Seen | null = null;

  function* look(value: number, vehicles: Needs['vehicles']): Steps<Tried | null> {
    const site = withValue(present, variable, value)?.site;
    if (!site) return null;
    const judged = yield* judge(site, { ...needs, vehicles });
    const it = judged.findings.find((each) => isIt(finding, each));
    const isWhole = vehicles === null;
    start ??= { site, judged };
    const isWorse = it === undefined && becameWorse(finding, start, { site, judged });
    const made: Tried = {
      ...{ value, isWhole, isGone: it === undefined && !isWorse, told: it?.message ?? '' },
      shortfall: it ? shortfallOf(finding, judged, site) : isWorse ? Infinity : 0
    };
    // that some of them make no finding says nothing of the others
    if (!isWhole && made.isGone) return made;
    if (isWhole && it) deciding = decidingOf(finding, judged, site, needs);
    tried.set(value, made);
    return made;
  }

  const whole: Attempts['whole'] = (value) => look(value, null);

  function* seenWhole(each: Tried): Steps<Tried> {
    return each.isWhole ? each : ((yield* whole(each.value)) ?? each);
  }

  return {
    count: () => tried.size,
    whole,
    *helps(value) {
      if (deciding !== null) {
        const quick = yield* look(value, deciding);
        if (!quick?.isGone) return quick && false;
      }
      return (yield* whole(value))?.isGone ?? null;
    },
    *best(start) {
      const nearestFirst = [...tried.values()]
        .filter(({ shortfall }) => !Number.isNaN(shortfall))
        .sort((a, b) => a.shortfall - b.shortfall);
      let best = start;
      for (const each of nearestFirst) {
        if (!(each.shortfall < best.shortfall)) break;
        const seen = yield* seenWhole(each);
        if (seen.shortfall < best.shortfall) best = seen;
      }
      return best;
    },
    *reason(start) {
      const hair = SAME * Math.max(Math.abs(start.shortfall), 1e-12);
      const isSame = (shortfall: number): boolean => !(Math.abs(shortfall - start.shortfall) > hair);
      const all = [...tried.values()].filter(({ shortfall }) => !Number.isNaN(shortfall));
      // what falls short by more at the least is another one, whatever it is
      if (
        all.some(({ shortfall, isWhole }) =>
          isWhole ? !isSame(shortfall) : shortfall > start.shortfall + hair
        )
      )
        return 'not enough';
      for (const each of all) if (!isSame((yield* seenWhole(each)).shortfall)) return 'not enough';
      return 'no effect';
    }
  };
};
