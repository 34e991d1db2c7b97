/** In the direction of travel, point by point: straight on, or in arcs; one lane or several side by side. */
import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { BOUNDS, COUNTS } from '#plan/bounds';
import { addLanes, usualLaneWidth } from '#plan/edits/index';
import type { Point } from '#plan/schema';
import { laneLine } from '../geometry/lane-line';
import type { Ref } from '../types';
import { chainTool } from './chain';

/** Whether a point was given as the end of an arc: what was drawn stays so when the hand goes over to straight lines. */
const ends = new WeakMap<Point, boolean>();

function isArcTo(point: Point, isArc: boolean): boolean {
  const known = ends.get(point);
  if (known === undefined) ends.set(point, isArc);
  return known ?? isArc;
}

export const laneTool = chainTool({
  name: 'lane',
  least: 2,
  most: COUNTS.points,
  closes: false,
  draw(points, { site, drawing }) {
    const given = points.map((at) => ({ at, isArc: isArcTo(at, drawing.isArc) }));
    const line = laneLine(given, drawing.bendRadius);
    if (!line) return t('drawing.noArc');
    if (line.radii.some((radius) => radius > BOUNDS.bendRadius.max)) return t('drawing.noLane');
    const { laneCount: count, lanesOppose: oppose, laneWidth } = drawing;
    const made = addLanes(site, { line, count, oppose, width: laneWidth ?? usualLaneWidth(site) });
    if (made === 'bend too tight') return t('drawing.tooTight');
    if (made === 'no such lane') return t('drawing.noLane');
    const selection = made.ids.map((id): Ref => ({ kind: 'lane', id }));
    return { step: { label: saying('step.lanes', { count }), site: made.site, selection }, tool: 'select' };
  }
});
