/**
 * Two triangles that share the slot from corner (−w/2, −l/2) to (+w/2, +l/2). The one on the −x side is wound
 * counter-clockwise and the other clockwise, so both run the same way in the shared slot.
 */
import { distance } from '../geometry/points';
import { perimeter } from '../geometry/polygons';
import {
  BOX_DIMENSIONS,
  boxBetween,
  boxCorners,
  boxHandles,
  boxProblem,
  dragBox,
  moveBox,
  rotateBox
} from './box';
import type { ShapeDefinition } from './definition';
import { edgesOf } from './path';

const isShared = (index: number): boolean => index === 0;

export const diagonal: ShapeDefinition<'diagonal'> = {
  kind: 'diagonal',
  dimensions: BOX_DIMENSIONS,
  path(shape) {
    const corners = boxCorners(shape);
    const [start, right, end, left] = [corners[0]!, corners[1]!, corners[2]!, corners[3]!];
    return {
      cells: [
        { kind: 'polygon', edges: edgesOf([start, end, left], isShared) },
        { kind: 'polygon', edges: edgesOf([start, end, right], isShared) }
      ],
      sawCut: perimeter(corners) + distance(start, end)
    };
  },
  outline: boxCorners,
  handles: boxHandles,
  dragHandle: dragBox,
  move: moveBox,
  rotate: rotateBox,
  fromBox: (a, b) => ({ kind: 'diagonal', ...boxBetween(a, b) }),
  problem: boxProblem,
  centre: (shape) => shape.centre
};
