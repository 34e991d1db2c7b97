/**
 * Two halves side by side that share the slot in the middle, along the length. The half at −x is wound
 * counter-clockwise and the other clockwise, so both run the same way in the shared slot.
 */
import { distance } from '../geometry/points';
import { perimeter } from '../geometry/polygons';
import type { Point } from '../schema';
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

export const quadrupole: ShapeDefinition<'quadrupole'> = {
  kind: 'quadrupole',
  dimensions: BOX_DIMENSIONS,
  path(shape) {
    const x = shape.width / 2;
    const y = shape.length / 2;
    const at = (local: Point) => placed(shape, local);
    const near = at([0, -y]);
    const far = at([0, y]);
    const left = edgesOf([at([-x, -y]), near, far, at([-x, y])], (index) => index === 1);
    const right = edgesOf([near, far, at([x, y]), at([x, -y])], (index) => index === 0);
    return {
      cells: [
        { kind: 'polygon', edges: left },
        { kind: 'polygon', edges: right }
      ],
      sawCut: perimeter(boxCorners(shape)) + distance(near, far)
    };
  },
  outline: boxCorners,
  handles: boxHandles,
  dragHandle: dragBox,
  move: moveBox,
  rotate: rotateBox,
  fromBox: (a, b) => ({ kind: 'quadrupole', ...boxBetween(a, b) }),
  problem: boxProblem,
  centre: (shape) => shape.centre
};
