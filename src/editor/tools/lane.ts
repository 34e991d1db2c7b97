import { COUNTS } from '#plan/bounds';
import { addLane, newLane } from '#plan/edits/index';
import { chainTool } from './chain';

/** In the direction of travel, point by point. */
export const laneTool = chainTool({
  name: 'lane',
  least: 2,
  most: COUNTS.points,
  closes: false,
  draw(points, { site }) {
    const lane = newLane(site, points);
    const next = addLane(site, lane);
    if (next === site) return 'no such lane';
    return {
      step: { label: 'Draw lane', site: next, selection: [{ kind: 'lane', id: lane.id }] },
      tool: 'select'
    };
  }
});
