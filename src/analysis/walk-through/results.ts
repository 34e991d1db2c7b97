/** A way through a complaint, with the site's own figures at each step. Plain data. */
import type { ToldValue } from '../fault-finding/results';
import type { Quantity, TestPoint } from '#plan/schema';

export const COMPLAINTS = [
  'no power',
  'always calling',
  'never calling',
  'calls with nobody there',
  'misses motorcycles',
  'two lanes call together',
  'works until it rains',
  'drops a standing vehicle'
] as const;
export type Complaint = (typeof COMPLAINTS)[number];

/** A key under `walk.` and what fills it. */
export interface Said {
  readonly key: string;
  readonly values: Readonly<Record<string, ToldValue>>;
}

/** What may hurt at a step. */
export type Hazard = 'mains' | 'traffic' | 'gate' | 'insulation tester';

interface WalkAnswer {
  readonly id: string;
  readonly label: Said;
}

export interface WalkStep {
  readonly id: string;
  /** What to look at or do. */
  readonly question: Said;
  /** Figures of this site that belong to it: what should be read, which neighbour, which vehicle, with their numbers. */
  readonly facts: readonly Said[];
  readonly hazards: readonly Hazard[];
  readonly answers: readonly WalkAnswer[];
  /** A reading that can be entered here. */
  readonly measure: { readonly testPoint: TestPoint; readonly quantity: Quantity } | null;
  /** The answer that was given; null at the step where one is wanted. */
  readonly given: string | null;
  /** What was not asked on the way here because the site's own figures rule it out, or decide it. */
  readonly ruledOut: readonly Said[];
}

/** Where the way ends: what it is, what to do, and how to make sure. */
export interface WalkEnd {
  readonly id: string;
  readonly verdict: Said;
  readonly remedies: readonly Said[];
  readonly facts: readonly Said[];
  readonly hazards: readonly Hazard[];
  /** How to make sure that it was this. */
  readonly check: Said;
  /** As of a step. */
  readonly ruledOut: readonly Said[];
}

export interface Walk {
  readonly complaint: Complaint;
  readonly circuit: string;
  /** Those answered, in order, and the next one unless the way has ended. */
  readonly steps: readonly WalkStep[];
  readonly end: WalkEnd | null;
}

export interface WalkWish {
  readonly complaint: Complaint;
  readonly circuit: string;
  /** Ids of the answers given so far: of each step at most one counts, those of steps that are not on the way do not. */
  readonly answers: readonly string[];
  /** In hand today; none: those with which the circuit was read last. */
  readonly instruments?: readonly string[];
}
