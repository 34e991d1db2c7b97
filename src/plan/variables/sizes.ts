/** Width and length of any shape, how it is turned, its corner cuts, and how far two loops lie apart. */
import { BOUNDS } from '../bounds';
import { extentOf } from '../geometry/polygons';
import { setShape } from '../edits/loops';
import { tidyShape } from '../edits/tidy';
import { followRoutes } from '../lead-out';
import type { Loop, Point, Shape, Site } from '../schema';
import { all, around, byId, continuous, onSite, stepsOf, type VariableDefinition } from './definition';

type Axis = 0 | 1;

/** Of the box that the points fill, metres. */
const extentAlong = (points: readonly Point[], axis: Axis): number => {
  const { min, max } = extentOf(points);
  return max[axis] - min[axis];
};

/** A circle's diameter counts as its width; a polygon's sides are those of the box about it. */
const sideOf = (shape: Shape, axis: Axis): number | null => {
  switch (shape.kind) {
    case 'circle':
      return axis === 0 ? shape.diameter : null;
    case 'polygon':
      return extentAlong(shape.points, axis);
    default:
      return axis === 0 ? shape.width : shape.length;
  }
};

/** About its middle. */
const withSide = (shape: Shape, axis: Axis, side: number): Shape => {
  switch (shape.kind) {
    case 'circle':
      return { ...shape, diameter: side };
    case 'polygon': {
      const { min, max } = extentOf(shape.points);
      const middle = (min[axis] + max[axis]) / 2;
      const factor = side / (max[axis] - min[axis]);
      const points = shape.points.map(([x, y]): Point => {
        const to = middle + factor * ((axis === 0 ? x : y) - middle);
        return axis === 0 ? [to, y] : [x, to];
      });
      return tidyShape({ ...shape, points });
    }
    default:
      return axis === 0 ? { ...shape, width: side } : { ...shape, length: side };
  }
};

/** Drawn tails follow, as they do in a drawing. */
export const reshaped = (site: Site, loop: Loop, shape: Shape): Site => {
  const next = setShape(site, loop.id, shape);
  return next === site ? site : followRoutes(next);
};

const side = (axis: Axis, practical: readonly [number, number]): VariableDefinition => ({
  value: ({ site }, { subject }) => {
    const loop = byId(site.loops, subject);
    return loop ? sideOf(loop.shape, axis) : null;
  },
  put: (experiment, { subject }, value) => {
    const loop = byId(experiment.site.loops, subject)!;
    return onSite(experiment, reshaped(experiment.site, loop, withSide(loop.shape, axis, value)));
  },
  range: ({ site }, { subject }) => {
    const { shape } = byId(site.loops, subject)!;
    const cut = shape.kind === 'rectangle' ? 2 * shape.cornerCut : 0;
    const least = cut + Math.max(practical[0], BOUNDS.side.min);
    return continuous(...around(sideOf(shape, axis)!, least, practical[1]), stepsOf(site).side);
  },
  subjects: ({ loops }) => all(loops.filter(({ shape }) => sideOf(shape, axis) !== null))
});

export const width = side(0, [0.2, 10]);
export const length = side(1, [0.2, 30]);

export const rotation: VariableDefinition = {
  value: ({ site }, { subject }) => {
    const shape = byId(site.loops, subject)?.shape;
    return shape && 'rotation' in shape ? shape.rotation : null;
  },
  put: (experiment, { subject }, value) => {
    const loop = byId(experiment.site.loops, subject)!;
    const shape = { ...loop.shape, rotation: value } as Shape;
    return onSite(experiment, reshaped(experiment.site, loop, shape));
  },
  range: ({ site }, { subject }) => {
    const { shape } = byId(site.loops, subject)!;
    return continuous(...around('rotation' in shape ? shape.rotation : 0, -90, 90), 5);
  },
  subjects: ({ loops }) => all(loops.filter(({ shape }) => 'rotation' in shape))
};

/** Of the shorter side, as the practice of sawing has it at most: beyond it no side is left. */
const MOST_CUT = 0.45;

export const cornerCut: VariableDefinition = {
  value: ({ site }, { subject }) => {
    const shape = byId(site.loops, subject)?.shape;
    return shape?.kind === 'rectangle' ? shape.cornerCut : null;
  },
  put: (experiment, { subject }, value) => {
    const loop = byId(experiment.site.loops, subject)!;
    const shape = { ...loop.shape, cornerCut: value } as Shape;
    return onSite(experiment, reshaped(experiment.site, loop, shape));
  },
  range: ({ site }, { subject }) => {
    const { shape } = byId(site.loops, subject)!;
    if (shape.kind !== 'rectangle') return null;
    const most = MOST_CUT * Math.min(shape.width, shape.length);
    return continuous(0, Math.max(shape.cornerCut, most), stepsOf(site).side);
  },
  subjects: ({ loops }) => all(loops.filter(({ shape }) => shape.kind === 'rectangle'))
};
