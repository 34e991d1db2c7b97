/**
 * What two loops at a known distance say of a vehicle's speed and length. SI; places are metres along the lane in the
 * direction of travel, speeds are shares where they are errors.
 */
import type { Profile } from '../passing/results';

/** Two circuits of one lane, in the order in which its traffic meets them. */
export interface LoopPair {
  readonly lane: string;
  readonly first: string;
  readonly second: string;
  /** From leading edge to leading edge in the lane's direction. */
  readonly spacing_m: number;
}

export interface SpeedWish {
  readonly first: string;
  readonly second: string;
  readonly vehicles: readonly string[];
}

/** One circuit of the pair as traffic of one direction meets it. */
export interface PairSide {
  readonly circuit: string;
  /** Of all its loops in the lane. */
  readonly from_m: number;
  readonly to_m: number;
  readonly threshold: number;
  readonly release: number;
  /** A trip is seen up to this much later: the time until the unit measures this channel again. */
  readonly scan_s: number;
}

/** The first trip and the last release of a pass: places of the vehicle's middle. */
export interface Crossing {
  readonly trip_m: number;
  readonly release_m: number;
  /** How often it trips: more than once is a vehicle told as several. */
  readonly detections: number;
}

/** One vehicle that drives over both. */
export interface PairPass {
  readonly vehicle: string;
  readonly vehicleLength_m: number;
  readonly profiles: readonly [Profile, Profile];
  /** Null where a circuit does not detect it. */
  readonly crossings: readonly [Crossing, Crossing] | null;
  /** From trip to trip if the second circuit had the first one's threshold; null where it does not trip. */
  readonly evenTripDistance_m: number | null;
}

/** All vehicles in one direction of travel. */
export interface PairDirection {
  /** The one that is met first, and the other. */
  readonly sides: readonly [PairSide, PairSide];
  /** From leading edge to leading edge, which is what the measurement divides. */
  readonly spacing_m: number;
  readonly passes: readonly PairPass[];
}

/** Everything about a pair that does not depend on how fast is driven. */
export interface PairPicture {
  readonly lane: string;
  readonly length_m: number;
  readonly forward: PairDirection;
  readonly backward: PairDirection;
  /** Plus or minus, nineteen times in twenty. */
  readonly spacingTolerance_m: number;
}

/** Plus or minus nineteen times in twenty, and the most that can be. */
export interface Spread {
  readonly usual: number;
  readonly worst: number;
}

/** One passage measured at one speed. */
export interface SpeedMeasurement {
  readonly tripDistance_m: number;
  /** From trip to trip, s. */
  readonly between_s: number;
  /** The two circuits occupied, s. */
  readonly on_s: readonly [number, number];
  readonly speed_m_s: number;
  readonly length_m: number;
  /** Shares of the true speed: what comes of the same distance everywhere, and what comes of chance. */
  readonly errors: {
    /** All that the two trips differ by: thresholds and responses together. */
    readonly trips: number;
    /** What the thresholds alone add to it; null where an even threshold would not trip. */
    readonly thresholds: number | null;
    readonly responses: number | null;
    readonly spacing: number;
    readonly time: Spread;
    /** Around `trips`. */
    readonly chance: Spread;
  };
  /** Metres, around `length_m`, plus or minus. */
  readonly lengthChance_m: number;
}
