/** The answer to "which settings?". Plain data: it crosses from the worker to the page. */
import type { BeatVerdict } from '../results';
import type { Deepest } from '../beating/tank';

/**
 * 'smallest ripple': the smallest worst ratio, whatever has to be changed for it. 'fewest changes': few settings changed,
 * as long as every pair that can be clear is clear.
 */
export const PLAN_AIMS = ['smallest ripple', 'fewest changes'] as const;
export type PlanAim = (typeof PLAN_AIMS)[number];

export interface PlanWish {
  readonly aim: PlanAim;
  /** By circuit the vehicle that shifts it most, as the assessment of the same drawing has it; none counts as no shift. */
  readonly shifts: Readonly<Record<string, Deepest>>;
}

/** Why a plan leaves a channel as it is. */
export type KeptReason = 'pinned' | 'given' | 'one setting' | 'no oscillation';

export interface Tuning {
  /** Counted from 1; null where the frequency is given. */
  readonly setting: number | null;
  /** At rest; null where it does not oscillate. */
  readonly frequency_Hz: number | null;
}

/** A setting of the unit that is not offered to the channel. */
export interface ExcludedSetting {
  readonly setting: number;
  readonly frequency_Hz: number | null;
  readonly why: 'no oscillation' | 'outside the usual band';
}

export interface PlannedChannel {
  readonly circuit: string;
  readonly unit: string;
  readonly number: number;
  readonly before: Tuning;
  readonly after: Tuning;
  readonly kept: KeptReason | null;
  readonly excluded: readonly ExcludedSetting[];
}

export interface PlannedPair {
  readonly a: string;
  readonly b: string;
  readonly ratio: number;
  readonly verdict: BeatVerdict;
  /** Both channels are kept: no plan changes anything about it. */
  readonly isKept: boolean;
}

/** All pairs that can run together, on one set of settings. */
export interface PlanState {
  /** The worst first. */
  readonly worst: readonly PlannedPair[];
  readonly verdicts: Readonly<Record<BeatVerdict, number>>;
  /** The worst ratio of the pairs about which a plan can do something; null without any. */
  readonly changeable: number | null;
}

export interface FrequencyPlan {
  /** Every circuit on a channel that can be wound, in the order of the document. */
  readonly channels: readonly PlannedChannel[];
  readonly before: PlanState;
  readonly after: PlanState;
  /** The smallest worst ratio found, of the pairs about which a plan can do something; what 'fewest changes' may stay above. */
  readonly smallest: number;
  /** Whether no plan has a smaller one; else none has one under `lowerBound`. */
  readonly isProven: boolean;
  readonly lowerBound: number;
  /** Choices tried. */
  readonly nodes: number;
}
