/** Dragging one point of a thing. A result that the document may not hold leaves the site as it is. */
import type { Point, Site } from '../schema';
import { definitionOf } from '../shapes/index';
import { clampPoint } from './limits';
import { setShape } from './loops';
import { updateMark } from './marks';
import { tidyPoint, tidyShape } from './tidy';

export function dragLoopHandle(site: Site, id: string, handle: string, to: Point, fromCentre = false): Site {
  const loop = site.loops.find((each) => each.id === id);
  if (!loop) return site;
  const dragged = definitionOf(loop.shape).dragHandle(loop.shape, handle, clampPoint(to), fromCentre);
  const shape = tidyShape(dragged);
  return JSON.stringify(shape) === JSON.stringify(loop.shape) ? site : setShape(site, id, shape);
}

const withPoint = (points: readonly Point[], index: number, to: Point): readonly Point[] =>
  points.map((point, at) => (at === index ? tidyPoint(clampPoint(to)) : point));

export function moveMarkPoint(site: Site, id: string, index: number, to: Point): Site {
  const mark = site.marks.find((each) => each.id === id);
  return mark ? updateMark(site, id, { points: withPoint(mark.points, index, to) }) : site;
}
