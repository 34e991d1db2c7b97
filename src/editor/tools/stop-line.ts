/** Across the lane that is clicked, from edge to edge. */
import type { Point } from '#plan/schema';
import type { Station } from '../geometry/lanes';
import { laneMarkTool } from './lane-mark';

function across({ at: [x, y], ahead: [dx, dy] }: Station, width: number): readonly [Point, Point] {
  const half = width / 2;
  return [
    [x + dy * half, y - dx * half],
    [x - dy * half, y + dx * half]
  ];
}

export const stopLineTool = laneMarkTool({ kind: 'stop-line', inLane: across });
