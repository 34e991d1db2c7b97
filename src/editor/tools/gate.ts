/** A gate's leaf, closed, from its hinge or post to its tip; how it opens follows from the tool's options. */
import { usualOpening } from '#plan/edits/index';
import { segmentMarkTool } from './segment-mark';

export const gateTool = segmentMarkTool('gate', (points, { drawing }) => ({
  opening: usualOpening(drawing.gate, points)
}));
