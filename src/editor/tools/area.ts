/** Areas: press and drag for a rectangle, click corner by corner for any other outline. */
import { COUNTS } from '#plan/bounds';
import type { Point, Site } from '#plan/schema';
import { boxAround, boxCorners } from '../geometry/box';
import { hasMoved } from '../reach';
import type { Step } from '../types';
import { joinedText, sizeText } from '../wording';
import { chainTool } from './chain';
import type { Outcome, ToolPointer, ToolState } from './tool';
import { twoPointTool } from './two-points';

export interface AreaTool {
  readonly name: string;
  /** The document with the area in it; null for an outline that it cannot hold. */
  step(site: Site, outline: readonly Point[]): Step | null;
  /** Why that outline cannot be. */
  refusal(): string;
}

/** Metres: a smaller rectangle is a slip of the hand. */
const SMALLEST = 0.1;

const corners = (from: Point, to: Point): Point[] | null =>
  Math.abs(to[0] - from[0]) < SMALLEST || Math.abs(to[1] - from[1]) < SMALLEST
    ? null
    : boxCorners(boxAround([from, to])!);

export function areaTool(area: AreaTool): ToolState {
  const outlineTool = chainTool({
    name: `${area.name} outline`,
    least: 3,
    most: COUNTS.points,
    closes: true,
    draw(points, { site }) {
      const step = area.step(site, points);
      return step ? { step, tool: 'select' } : area.refusal();
    }
  });

  const boxTool = twoPointTool({
    name: `${area.name} box`,
    show({ from, to, snap }, { site }) {
      const outline = corners(from, to);
      const step = outline && area.step(site, outline);
      if (!step) return { overlay: { guides: snap.guides, cursor: 'crosshair' } };
      const size = sizeText(site, Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1]));
      const label = { at: to, text: joinedText(size, snap.text) };
      return { draft: step.site, overlay: { guides: snap.guides, label, cursor: 'crosshair' } };
    },
    finish({ from, to }, { site }) {
      const outline = corners(from, to);
      const step = outline && area.step(site, outline);
      return step && { step, tool: 'select' };
    }
  });

  /** The button is down: a movement or a typed size makes a rectangle, a release the first point of an outline. */
  function pressing(start: ToolPointer): ToolState {
    const state: ToolState = {
      name: `${area.name}: pressing`,
      busy: true,
      on(input, scene): Outcome | null {
        if (input.type === 'up') return outlineTool.on(start, scene);
        if (input.type === 'double') return null;
        if (input.type === 'move' && !hasMoved(start, input))
          return { next: state, overlay: { cursor: 'crosshair' } };
        const begun = boxTool.on(start, scene)!;
        return begun.next.on(input, scene);
      }
    };
    return state;
  }

  const ready: ToolState = {
    name: `${area.name}: ready`,
    busy: false,
    on(input, scene): Outcome | null {
      if (input.type === 'down') return { next: pressing(input), overlay: { cursor: 'crosshair' } };
      const outcome = input.type === 'move' ? boxTool.on(input, scene) : null;
      return outcome && { ...outcome, next: ready };
    }
  };
  return ready;
}
