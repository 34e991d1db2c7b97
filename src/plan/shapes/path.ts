/**
 * Where a loop's wire runs, in plan.
 *
 * A cell is one closed run of the wire, walked in its winding sense. An edge is `shared` when the slot below it holds
 * the wires of two cells of the same loop (the middle of a quadrupole, the cut across a diagonal).
 */
import type { Point } from '../schema';

export interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly shared: boolean;
}

interface PolygonCell {
  readonly kind: 'polygon';
  readonly edges: readonly Edge[];
}

/** A round cell is wound counter-clockwise. */
interface CircleCell {
  readonly kind: 'circle';
  readonly centre: Point;
  readonly radius: number;
}

export type Cell = PolygonCell | CircleCell;

/** One turn follows every cell once; `sawCut` is the length of slot in metres, a shared slot counted once. */
export interface LoopPath {
  readonly cells: readonly Cell[];
  readonly sawCut: number;
}

export const edgesOf = (
  corners: readonly Point[],
  shared: (index: number) => boolean = () => false
): Edge[] =>
  corners.map((from, index) => ({ from, to: corners[(index + 1) % corners.length]!, shared: shared(index) }));
