/** The magnetic field of a loop or a circuit, per ampere at its terminals, and the currents that it drives in a vehicle. SI. */
import type { Point, Probe } from '#plan/schema';

/** What carries the current: one loop alone, or all loops of a circuit, each with its share of the current. */
export interface FieldSource {
  readonly kind: 'loop' | 'circuit';
  readonly id: string;
}

export type FieldPlane =
  /** At a height over the road; two opposite corners of the box. u and v are x and y of the drawing. */
  | { readonly kind: 'plan'; readonly z_m: number; readonly from: Point; readonly to: Point }
  /** Standing on a line of the plan: u along it, 0 at `from`; v is the height over the road, from `low_m` to `high_m`. */
  | {
      readonly kind: 'section';
      readonly from: Point;
      readonly to: Point;
      readonly low_m: number;
      readonly high_m: number;
    };

export interface FieldWish {
  readonly source: FieldSource;
  readonly plane: FieldPlane;
  readonly columns: number;
  readonly rows: number;
  /** With its eddy currents; null for the field without it. */
  readonly vehicle: Probe | null;
  /** How many field lines to trace; 0 for none. */
  readonly lines: number;
}

export interface FieldPicture {
  readonly plane: FieldPlane;
  readonly columns: number;
  readonly rows: number;
  /**
   * Of each node, the first and the last on the box's border, row by row from below: tesla per ampere along u, along v and
   * across the plane (u × v, towards whoever sees u to the right and v upwards).
   */
  readonly field: Float64Array;
  /** In the plane, (u, v) in metres; along the field's part in the plane, from where it comes to where it goes. */
  readonly lines: readonly (readonly Point[])[];
  /** Where wires pass through a section, turn by turn; current towards the viewer counts positive. None on a plan. */
  readonly wires: readonly { readonly u: number; readonly v: number; readonly current: number }[];
  /** Cuts of the vehicle's plates and rings with a section, as lines, those of rings closed; their outlines on a plan. */
  readonly metal: readonly (readonly Point[])[];
  /** Over the nodes that no wire touches. */
  readonly strongest_T: number;
  /**
   * How near to the vehicle's plates the picture shows its mesh more than its metal: a third of its largest cell, metres; 0
   * without plates. The field across a plate vanishes in the mean over the hat of every node (from the rim's third inwards
   * within 1 % of the strongest that the source alone sends across it, tested); point by point, so near, it does not.
   */
  readonly unresolved_m: number;
  /** What is not in it, as keys of messages. */
  readonly leftOut: readonly ('steel' | 'pavement' | 'iron')[];
}

export interface CurrentsWish {
  readonly source: FieldSource;
  readonly vehicle: Probe;
}

/** The stream function of one plate: current flows along its contours, and between two contours flows their difference. */
export interface PlateCurrents {
  /** Nodes in the vehicle's own frame, x to its right and y ahead of it, metres. */
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** Amperes per ampere of the loop, ys outside, xs inside; zero on the rim. */
  readonly psi: Float64Array;
  readonly z_m: number;
}

export interface CurrentsPicture {
  readonly vehicle: Probe;
  readonly plates: readonly PlateCurrents[];
  /** Amperes per ampere, round each ring in the sense of its axis. */
  readonly rings: readonly {
    /** Its place among the vehicle's parts. */
    readonly part: number;
    readonly current: number;
  }[];
}
