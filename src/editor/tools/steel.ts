/** Steel in the pavement: press and drag for a rectangle, click point by point for any other outline. */
import { COUNTS } from '#plan/bounds';
import { addSteel, newSteel } from '#plan/edits/index';
import type { Point, Site } from '#plan/schema';
import { boxAround, boxCorners } from '../geometry/box';
import { hasMoved } from '../reach';
import type { Step } from '../types';
import { joinedText, sizeText } from '../wording';
import { chainTool } from './chain';
import type { Outcome, ToolPointer, ToolState } from './tool';
import { twoPointTool } from './two-points';

/** Metres: a smaller rectangle is a slip of the hand. */
const SMALLEST = 0.1;

/** Null for an outline that the site cannot hold. */
export function steelStep(site: Site, outline: readonly Point[]): Step | null {
  const steel = newSteel(site, outline);
  const next = addSteel(site, steel);
  if (next === site) return null;
  return { label: `Draw steel ${steel.kind}`, site: next, selection: [{ kind: 'steel', id: steel.id }] };
}

const outlineTool = chainTool({
  name: 'steel outline',
  least: 3,
  most: COUNTS.points,
  closes: true,
  draw(points, { site }) {
    const step = steelStep(site, points);
    return step ? { step, tool: 'select' } : 'an outline that crosses itself';
  }
});

const corners = (from: Point, to: Point): Point[] | null =>
  Math.abs(to[0] - from[0]) < SMALLEST || Math.abs(to[1] - from[1]) < SMALLEST
    ? null
    : boxCorners(boxAround([from, to])!);

const boxTool = twoPointTool({
  name: 'steel box',
  show({ from, to, snap }, { site }) {
    const outline = corners(from, to);
    const step = outline && steelStep(site, outline);
    if (!step) return { overlay: { guides: snap.guides, cursor: 'crosshair' } };
    const size = sizeText(site, Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1]));
    const label = { at: to, text: joinedText(size, snap.text) };
    return { draft: step.site, overlay: { guides: snap.guides, label, cursor: 'crosshair' } };
  },
  finish({ from, to }, { site }) {
    const outline = corners(from, to);
    const step = outline && steelStep(site, outline);
    return step && { step, tool: 'select' };
  }
});

/** The button is down: a movement makes a rectangle, a release the first point of an outline. */
function pressing(start: ToolPointer): ToolState {
  const state: ToolState = {
    name: 'steel: pressing',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type === 'move') {
        if (!hasMoved(start, input)) return { next: state, overlay: { cursor: 'crosshair' } };
        const begun = boxTool.on(start, scene)!;
        return begun.next.on(input, scene);
      }
      return input.type === 'up' ? outlineTool.on(start, scene) : null;
    }
  };
  return state;
}

export const steelTool: ToolState = {
  name: 'steel: ready',
  busy: false,
  on(input, scene): Outcome | null {
    if (input.type === 'down') return { next: pressing(input), overlay: { cursor: 'crosshair' } };
    const outcome = input.type === 'move' ? boxTool.on(input, scene) : null;
    return outcome && { ...outcome, next: steelTool };
  }
};
