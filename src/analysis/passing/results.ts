/** What is known of vehicles that drive over loops. SI; responses are −ΔL/L, positive for a drop; places are metres along a way. */
import type { Point } from '#plan/schema';

/** A lane's centreline, or a path that somebody drew. */
export interface WayRef {
  readonly kind: 'lane' | 'path';
  readonly id: string;
}

/** The response of one circuit to one vehicle at `from + k·step` metres along the way (its own origin); nothing outside. */
export interface Profile {
  readonly circuit: string;
  readonly vehicle: string;
  readonly from: number;
  readonly step: number;
  readonly values: Float64Array;
}

/** The circuit detects the vehicle from one place to the other: trips at the first, releases at the second. */
export interface Zone {
  readonly from_m: number;
  readonly to_m: number;
}

export interface PassWish {
  readonly way: WayRef;
  readonly vehicles: readonly string[];
  /** To the right of the way, metres. */
  readonly offset_m: number;
}

export interface PassCurve {
  readonly profile: Profile;
  /** Null without a channel. */
  readonly threshold: number | null;
  readonly release: number | null;
  readonly zones: readonly Zone[];
  readonly strongest: { readonly along_m: number; readonly response: number };
}

/** Vehicles driven along a way. */
export interface PassPicture {
  readonly way: WayRef;
  readonly length_m: number;
  readonly offset_m: number;
  /** Where loops lie along the way, those within reach. */
  readonly loops: readonly {
    readonly id: string;
    readonly circuit: string | null;
    readonly from_m: number;
    readonly to_m: number;
  }[];
  readonly curves: readonly PassCurve[];
}

/** One vehicle on one path over one circuit, or past it in the lane beside. */
export interface PassReadout {
  readonly circuit: string;
  readonly vehicle: string;
  /** Null where no lane serves: then the path runs along +y through the loop. */
  readonly lane: string | null;
  /** The lane is one that the circuit serves, or one beside it. */
  readonly isServed: boolean;
  /** Of a served lane: asked for on this circuit. */
  readonly wanted: boolean;
  /** To the right of the lane's middle, metres. */
  readonly offset_m: number;
  readonly response: number;
  readonly at: Point;
  readonly heading: number;
  /** Response over trip threshold; null without a channel. */
  readonly margin: number | null;
  /** How often one passage trips: 1 is right, 0 is a miss, more is a double count. */
  readonly detections: number;
  /** From the first trip to the last release, of the vehicle's origin, and where that is on the plan; null without a detection. */
  readonly zone: {
    readonly length_m: number;
    readonly from: Point;
    readonly to: Point;
  } | null;
  /** Between two detections: the weakest place, where the vehicle is lost. */
  readonly gaps: readonly { readonly at: Point; readonly response: number; readonly length_m: number }[];
}

/** How high above the road a conducting plate of a car's size may be and still make a call, over one loop. */
export interface DetectionHeight {
  readonly circuit: string;
  readonly loop: string;
  /** Metres, within a percent, over steel some percent; null where even one at 5 cm makes none. 3 m is as far as it is looked for. */
  readonly height_m: number | null;
  /** Two thirds of the loop's shorter side: common practice. */
  readonly ruleOfThumb_m: number;
}
