/** The loop shapes: the one list that everything which handles a shape goes through. */
import type { Point, Shape, ShapeKind } from '../schema';
import { circle } from './circle';
import type { ShapeDefinition, ShapeProblem } from './definition';
import { diagonal } from './diagonal';
import type { LoopPath } from './path';
import { polygon } from './polygon';
import { quadrupole } from './quadrupole';
import { rectangle } from './rectangle';

export const shapeDefinitions: { readonly [K in ShapeKind]: ShapeDefinition<K> } = {
  rectangle,
  quadrupole,
  diagonal,
  circle,
  polygon
};

export const SHAPE_KINDS = Object.keys(shapeDefinitions) as readonly ShapeKind[];

/** Widened to all shapes, which the compiler cannot follow: the kind picks the definition that takes this very shape. */
export const definitionOf = (shape: Shape): ShapeDefinition =>
  shapeDefinitions[shape.kind] as unknown as ShapeDefinition;

/** The wire's way, wound as the document says; the first cell of two is the one at −x before rotation. */
export const pathOf = (shape: Shape): LoopPath => definitionOf(shape).path(shape);
export const outlineOf = (shape: Shape): readonly Point[] => definitionOf(shape).outline(shape);
export const centreOf = (shape: Shape): Point => definitionOf(shape).centre(shape);
export const problemOf = (shape: Shape): ShapeProblem | null => definitionOf(shape).problem(shape);
export const moveShape = (shape: Shape, by: Point): Shape => definitionOf(shape).move(shape, by);
export const rotateShape = (shape: Shape, degrees: number, pivot: Point): Shape =>
  definitionOf(shape).rotate(shape, degrees, pivot);
