import type { ShapeOf } from '#plan/schema';

export const rectangle: ShapeOf<'rectangle'> = {
  kind: 'rectangle',
  centre: [1, 2],
  width: 1.2,
  length: 2.4,
  rotation: 0,
  cornerCut: 0
};
export const quadrupole: ShapeOf<'quadrupole'> = {
  kind: 'quadrupole',
  centre: [4, 6],
  width: 1.8,
  length: 6,
  rotation: 0
};
export const diagonal: ShapeOf<'diagonal'> = {
  kind: 'diagonal',
  centre: [8, 1],
  width: 1.8,
  length: 2.4,
  rotation: 0
};
export const circle: ShapeOf<'circle'> = { kind: 'circle', centre: [0, 4], diameter: 1.8 };
export const polygon: ShapeOf<'polygon'> = {
  kind: 'polygon',
  points: [
    [0, 0],
    [4, 0],
    [0, 3]
  ]
};
export const everyShape = [rectangle, quadrupole, diagonal, circle, polygon] as const;
