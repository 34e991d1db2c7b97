/** Round loop wound counter-clockwise. */
import { add, between, dot, rotate, scale, subtract } from '../geometry/points';
import type { Point, ShapeOf } from '../schema';
import { clampSide, moveBox, sizeProblem } from './box';
import type { ShapeDefinition } from './definition';

/** For drawing and picking only; the path keeps the true circle. */
const OUTLINE_POINTS = 72;

const HANDLES: readonly (readonly [string, Point])[] = [
  ['e', [1, 0]],
  ['n', [0, 1]],
  ['w', [-1, 0]],
  ['s', [0, -1]]
];

const onRim = (shape: ShapeOf<'circle'>, towards: Point): Point =>
  add(shape.centre, scale(towards, shape.diameter / 2));

export const circle: ShapeDefinition<'circle'> = {
  kind: 'circle',
  dimensions: [{ key: 'diameter', kind: 'length' }],
  path: (shape) => ({
    cells: [{ kind: 'circle', centre: shape.centre, radius: shape.diameter / 2 }],
    sawCut: Math.PI * shape.diameter
  }),
  outline: (shape) =>
    Array.from({ length: OUTLINE_POINTS }, (_, index) =>
      onRim(shape, rotate([1, 0], (360 * index) / OUTLINE_POINTS))
    ),
  handles: (shape) => HANDLES.map(([id, towards]) => ({ id, at: onRim(shape, towards) })),
  dragHandle(shape, handle, to, fromCentre = false) {
    const towards = HANDLES.find(([id]) => id === handle)?.[1];
    if (!towards) return shape;
    const fixed = fromCentre ? shape.centre : onRim(shape, scale(towards, -1));
    const reach = dot(subtract(to, fixed), towards) * (fromCentre ? 2 : 1);
    const diameter = clampSide(reach);
    return {
      ...shape,
      diameter,
      centre: fromCentre ? shape.centre : add(fixed, scale(towards, diameter / 2))
    };
  },
  move: moveBox,
  rotate: (shape, degrees, pivot) => ({ ...shape, centre: rotate(shape.centre, degrees, pivot) }),
  fromBox: (a, b) => ({
    kind: 'circle',
    centre: between(a, b),
    diameter: clampSide(Math.min(Math.abs(b[0] - a[0]), Math.abs(b[1] - a[1])))
  }),
  problem: (shape) => sizeProblem('diameter', shape.diameter),
  centre: (shape) => shape.centre
};
