/** Rounding after a rotation or a drag: a tenth of a micrometre, so that sixteenths of an inch stay exact. */
import type { Point, Shape } from '../schema';

const PER_METRE = 1e7;
const PER_DEGREE = 1e6;

const rounded = (value: number, fineness: number): number => Math.round(value * fineness) / fineness + 0;

export const tidyLength = (metres: number): number => rounded(metres, PER_METRE);
export const tidyAngle = (degrees: number): number => rounded(degrees, PER_DEGREE);
export const tidyPoint = ([x, y]: Point): Point => [tidyLength(x), tidyLength(y)];

export function tidyShape(shape: Shape): Shape {
  switch (shape.kind) {
    case 'polygon':
      return { ...shape, points: shape.points.map(tidyPoint) };
    case 'circle':
      return { ...shape, centre: tidyPoint(shape.centre), diameter: tidyLength(shape.diameter) };
    case 'rectangle':
      return { ...tidyBox(shape), cornerCut: tidyLength(shape.cornerCut) };
    default:
      return tidyBox(shape);
  }
}

function tidyBox<B extends Exclude<Shape, { kind: 'polygon' | 'circle' }>>(box: B): B {
  return {
    ...box,
    centre: tidyPoint(box.centre),
    width: tidyLength(box.width),
    length: tidyLength(box.length),
    rotation: tidyAngle(box.rotation)
  };
}
