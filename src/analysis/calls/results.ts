/**
 * Traffic over a drawing, and what the units' outputs made of it. Seconds from the start; responses are −ΔL/L; vehicles are
 * told by their number in `vehicles`.
 */

/** One vehicle of the traffic. Between its times it drives evenly. */
export interface Trajectory {
  readonly vehicle: string;
  readonly lane: string;
  /** To the right of the lane's middle, metres. */
  readonly offset_m: number;
  readonly times: Float64Array;
  /** Of the vehicle's own origin, metres along the lane. */
  readonly places: Float64Array;
}

export type EventKind =
  /** The response exceeds the threshold, and falls below the release. */
  | 'detected'
  | 'left'
  /** The output. */
  | 'on'
  | 'off'
  /** The unit has taken a standing vehicle for part of the road. */
  | 'tuned-out';

export interface ChannelEvent {
  readonly time_s: number;
  readonly kind: EventKind;
}

export interface Call {
  readonly from_s: number;
  readonly to_s: number;
  /** Those of the lanes served that were over the loops while it began or held. */
  readonly vehicles: readonly number[];
}

/** Why an output did not say what happened. */
export type Cause =
  /** Its strongest response stays under the threshold. */
  | 'too-weak'
  /** It left before the delay had run out. */
  | 'left-before-delay'
  /** The one before was still over the loops. */
  | 'still-occupied'
  /** The call was still held by the extension. */
  | 'still-extended'
  /** Pulse: it came before the unit had re-armed. */
  | 'not-re-armed'
  /** The unit had taken the one before, or this one, for part of the road. */
  | 'tuned-out'
  /** The longest presence had run out. */
  | 'timed-out'
  /** Its middle is too high, or the loops lie too far apart: the response falls below the release in between. */
  | 'lost-in-between'
  /** A vehicle of another lane. */
  | 'other-lane'
  /** A response that is no single vehicle's: several together. */
  | 'several-together';

export type MistakeKind = 'missed' | 'merged' | 'split' | 'false';

export interface Mistake {
  readonly kind: MistakeKind;
  readonly time_s: number;
  readonly cause: Cause;
  readonly vehicles: readonly number[];
  /** Numbers of calls in `calls`. */
  readonly calls: readonly number[];
  /** What the cause rests on, where there is one: the strongest response or the weakest in between, and what it would have needed. */
  readonly response: number | null;
  readonly needed: number | null;
  /** How long it stayed, or came after the one before, and what that would have had to be. */
  readonly seconds: number | null;
  readonly neededSeconds: number | null;
}

/** What one circuit's channel counted, against the truth: vehicles of the lanes served whose body was over the loops. */
export interface CallSummary {
  readonly circuit: string;
  readonly vehicles: number;
  readonly calls: number;
  readonly missed: number;
  readonly merged: number;
  readonly split: number;
  readonly false: number;
  /** Shares of the time. */
  readonly occupancy: number;
  readonly trueOccupancy: number;
}

/** The truth: a vehicle of a lane served, while its body is over the circuit's loops. */
interface Stay {
  /** Its number in `vehicles`. */
  readonly vehicle: number;
  readonly from_s: number;
  readonly to_s: number;
}

export interface ChannelCalls {
  readonly summary: CallSummary;
  /** In the order of their beginnings. */
  readonly stays: readonly Stay[];
  readonly events: readonly ChannelEvent[];
  readonly calls: readonly Call[];
  readonly mistakes: readonly Mistake[];
}

export interface CallsPicture {
  readonly duration_s: number;
  /** Of the traffic: how long, and how many wanted to drive within `duration_s`. Fewer do where a lane has no room for them. */
  readonly asked: { readonly duration_s: number; readonly vehicles: number };
  readonly vehicles: readonly Trajectory[];
  readonly channels: readonly ChannelCalls[];
}

/** Asked with `simulate-calls`. */
export interface CallsWish {
  /** Not further than this, s from the start; else as long as the traffic says. */
  readonly until_s?: number;
}

/** A stretch of time in detail. */
export interface TraceWish {
  readonly from_s: number;
  readonly to_s: number;
}

/** Straight between its times. */
export interface Trace {
  readonly circuit: string;
  readonly times: Float64Array;
  /** −ΔL/L, and what the unit at that time takes for the empty road. */
  readonly responses: Float64Array;
  readonly references: Float64Array;
}
