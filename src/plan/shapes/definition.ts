/** What the program must know of a loop shape; one file per shape fills it in, `index.ts` lists them. */
import type { Point, ShapeKind, ShapeOf } from '../schema';
import type { LoopPath } from './path';

/** A number of the shape that a person types; `key` is the field in the document. */
export interface Dimension {
  readonly key: 'width' | 'length' | 'diameter' | 'rotation' | 'cornerCut';
  readonly kind: 'length' | 'angle';
}

/** Somewhere to take hold of a shape: a corner or a side of its box, or a point of a polygon. */
export interface Handle {
  readonly id: string;
  readonly at: Point;
}

export interface ShapeDefinition<K extends ShapeKind = ShapeKind> {
  readonly kind: K;
  readonly dimensions: readonly Dimension[];
  /** The wire's way, in the plan's coordinates and in the winding sense of the document. */
  path(shape: ShapeOf<K>): LoopPath;
  /** The closed outline seen from above, for drawing and picking. */
  outline(shape: ShapeOf<K>): readonly Point[];
  handles(shape: ShapeOf<K>): readonly Handle[];
  /** The shape after `handle` was dragged to `to`; the opposite handle stays where it is, or the centre if `fromCentre`. */
  dragHandle(shape: ShapeOf<K>, handle: string, to: Point, fromCentre?: boolean): ShapeOf<K>;
  move(shape: ShapeOf<K>, by: Point): ShapeOf<K>;
  /** Turned by `degrees` counter-clockwise about `pivot`. */
  rotate(shape: ShapeOf<K>, degrees: number, pivot: Point): ShapeOf<K>;
  /** The shape that fills the box of two opposite corners. */
  fromBox(a: Point, b: Point): ShapeOf<K>;
  /** What makes the shape impossible, in words, or null. */
  problem(shape: ShapeOf<K>): ShapeProblem | null;
  centre(shape: ShapeOf<K>): Point;
}

export interface ShapeProblem {
  /** Field of the shape that is wrong. */
  readonly key: Dimension['key'] | 'points';
  readonly found: string;
  readonly expected: string;
}
