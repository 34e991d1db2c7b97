/** Along the lane that is clicked, in its direction of travel; which way it points is an option of the tool. */
import { add, scale } from '#plan/geometry/points';
import { laneMarkTool } from './lane-mark';

/** Metres from tail to head. */
const LENGTH = 5;

export const arrowTool = laneMarkTool({
  kind: 'arrow',
  inLane: ({ at, ahead }) => [add(at, scale(ahead, -LENGTH / 2)), add(at, scale(ahead, LENGTH / 2))],
  fields: (_, { drawing }) => ({ turn: drawing.arrow })
});
