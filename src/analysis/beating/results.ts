/** What follows from a drawing for its channels: where they run, which two beat, and what would clear them. As `../results`. */

/** Where a channel's oscillator runs, from the quietest to the busiest day. */
export interface Sweep {
  /** With nothing over the loops, at the site's temperature. */
  readonly rest_Hz: number;
  readonly cold_Hz: number;
  readonly hot_Hz: number;
  /** Deepest ΔL/L that a vehicle causes on its best path (negative, or 0), and the vehicle. */
  readonly deepest: number;
  readonly vehicle: string | null;
  /** The lowest at rest, and the highest with the vehicle. */
  readonly low_Hz: number;
  readonly high_Hz: number;
}

/** A circuit on a channel. */
export interface ChannelReadout {
  readonly circuit: string;
  readonly unit: string;
  readonly number: number;
  /** Counted from 1; null where the frequency is given. */
  readonly setting: number | null;
  readonly sweep: Sweep;
  /** Where each of the unit's settings would let it run at rest; null for one on which it would not oscillate. */
  readonly settings: readonly { readonly setting: number; readonly frequency_Hz: number | null }[];
}

export const BEAT_VERDICTS = ['clear', 'watch', 'false calls likely'] as const;
export type BeatVerdict = (typeof BEAT_VERDICTS)[number];

/** What a pair's other channel does to this one. */
export interface BeatSide {
  readonly circuit: string;
  /** Apparent ΔL/L after the unit's averaging. */
  readonly ripple: number;
  readonly tripThreshold: number;
  /** Ripple over the threshold. */
  readonly ratio: number;
  readonly measuringTime_s: number;
}

/** Where the mutual inductance of two circuits comes from, H at the terminals; signed as the circuits are wired. */
export interface BeatCoupling {
  readonly loops_H: number;
  /** What steel in the pavement adds; mostly of the other sign. */
  readonly steel_H: number;
  /** Of shared conduits, as an amount: its sign is not known, so it counts against. */
  readonly conduits_H: number;
}

export interface Beat {
  readonly a: string;
  readonly b: string;
  readonly k: number;
  readonly coupling: BeatCoupling;
  /** Smallest distance between the intervals that the two frequencies sweep. */
  readonly separation_Hz: number;
  /** Nearer than this the two may lock to each other; then no averaging is counted. */
  readonly lockingRange_Hz: number;
  /** Apparent ΔL/L after the unit's averaging, of the channel that suffers more. */
  readonly ripple: number;
  /** Ripple over that channel's trip threshold. */
  readonly ratio: number;
  readonly verdict: BeatVerdict;
  /** Of `a` and of `b`. */
  readonly sides: readonly [BeatSide, BeatSide];
  /** What would clear it, each computed; null until computed, empty for a clear pair. */
  readonly remedies: readonly Remedy[] | null;
}

/** One change, and what it does. Nothing else changes. */
export type Remedy = RemedyChange & {
  /** Of the pair, after the change. */
  readonly ratio: number;
  readonly verdict: BeatVerdict;
  /** The worst of any pair of the circuits that change, after the change. */
  readonly worstRatio: number;
  /** Other circuits with which one that changes then beats more: by verdict, not by a hair. */
  readonly spoils: readonly string[];
};

type RemedyChange =
  | {
      readonly kind: 'setting';
      readonly circuit: string;
      readonly setting: number;
      readonly frequency_Hz: number;
    }
  /** The circuit's loops moved away from the other's, along the line between their middles. */
  | { readonly kind: 'distance'; readonly circuit: string; readonly by_m: number }
  /** One loop's sense of winding, in a circuit of several. */
  | { readonly kind: 'winding'; readonly circuit: string; readonly loop: string }
  /** Both on one unit that scans in turn: `unit` is theirs already, or one with a free channel; null for a new one. */
  | { readonly kind: 'scanning'; readonly unit: string | null }
  /** `lost`: vehicles that are asked for and would no longer make a call on every path. */
  | {
      readonly kind: 'threshold';
      readonly circuits: readonly {
        readonly circuit: string;
        readonly tripThreshold: number;
        readonly lost: readonly string[];
      }[];
    }
  | { readonly kind: 'measuring-time'; readonly units: readonly string[]; readonly measuringTime_s: number }
  /** A conduit of its own for one of them. */
  | { readonly kind: 'conduit'; readonly conduits: readonly string[] };

export type RemedyKind = RemedyChange['kind'];
