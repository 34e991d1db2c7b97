/**
 * A loop as the physics sees it: columns of wires in a slot. Every wire of a column carries the loop's current in the
 * same direction; wires lie in horizontal planes, z up, road surface at 0.
 */
export interface StraightRun {
  readonly kind: 'straight';
  readonly x: number;
  readonly y: number;
  /** Unit direction of the current. */
  readonly ux: number;
  readonly uy: number;
  readonly length: number;
  /** Height of every wire, metres. */
  readonly heights: readonly number[];
}

/** A whole circle, counter-clockwise. */
export interface RoundRun {
  readonly kind: 'round';
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly heights: readonly number[];
}

export type Run = StraightRun | RoundRun;

export interface Winding {
  readonly runs: readonly Run[];
  /** Radius of the conductor, metres. */
  readonly wireRadius: number;
  /** Distance between neighbouring wires of a column: the insulated diameter, metres. */
  readonly pitch: number;
  /** Slots with the wires that lie in each: what proximity effect depends on. Length in metres. */
  readonly columns: readonly { readonly length: number; readonly wires: number }[];
  /** Length of all turns in the slot, metres. */
  readonly wireLength: number;
}

export const runLength = (run: Run): number =>
  run.kind === 'straight' ? run.length : 2 * Math.PI * run.radius;

export const meanHeight = ({ heights }: Run): number =>
  heights.reduce((sum, height) => sum + height, 0) / heights.length;
