/** Rectangle wound counter-clockwise; a corner cut takes `cornerCut` off both sides that meet and is √2 as long. */
import { t } from '#i18n/message';
import { perimeter } from '../geometry/polygons';
import type { Point, ShapeOf } from '../schema';
import {
  BOX_DIMENSIONS,
  boxBetween,
  boxCorners,
  boxHandles,
  boxProblem,
  dragBox,
  moveBox,
  placed,
  rotateBox
} from './box';
import type { ShapeDefinition } from './definition';
import { edgesOf } from './path';

type Rectangle = ShapeOf<'rectangle'>;

/** Share of the shorter side that a corner cut may take when a drag leaves too little room for it. */
const LARGEST_SHARE = 0.4;

function outline(shape: Rectangle): readonly Point[] {
  const cut = shape.cornerCut;
  if (cut === 0) return boxCorners(shape);
  const x = shape.width / 2;
  const y = shape.length / 2;
  const corners: readonly Point[] = [
    [cut - x, -y],
    [x - cut, -y],
    [x, cut - y],
    [x, y - cut],
    [x - cut, y],
    [cut - x, y],
    [-x, y - cut],
    [-x, cut - y]
  ];
  return corners.map((corner) => placed(shape, corner));
}

const room = (shape: Rectangle): number => Math.min(shape.width, shape.length) / 2;

export const rectangle: ShapeDefinition<'rectangle'> = {
  kind: 'rectangle',
  dimensions: [...BOX_DIMENSIONS, { key: 'cornerCut', kind: 'length' }],
  path(shape) {
    const corners = outline(shape);
    return { cells: [{ kind: 'polygon', edges: edgesOf(corners) }], sawCut: perimeter(corners) };
  },
  outline,
  handles: boxHandles,
  dragHandle(shape, handle, to, fromCentre) {
    const dragged = dragBox(shape, handle, to, fromCentre);
    if (dragged.cornerCut < room(dragged)) return dragged;
    return { ...dragged, cornerCut: 2 * room(dragged) * LARGEST_SHARE };
  },
  move: moveBox,
  rotate: rotateBox,
  fromBox: (a, b) => ({ kind: 'rectangle', ...boxBetween(a, b), cornerCut: 0 }),
  problem(shape) {
    const size = boxProblem(shape);
    if (size || (shape.cornerCut >= 0 && shape.cornerCut < room(shape))) return size;
    const expected = t('shape.cut', { room: room(shape) });
    return { key: 'cornerCut', found: t('shape.size', { size: shape.cornerCut }), expected };
  },
  centre: (shape) => shape.centre
};
