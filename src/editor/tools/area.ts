/** Areas: press and drag for a rectangle, click corner by corner for any other outline. */
import { COUNTS } from '#plan/bounds';
import { add, rotate } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { opensEntry } from '../entry/typing';
import { hasMoved } from '../reach';
import type { Step } from '../types';
import { joinedText, sizeText } from '../wording';
import { chainTool } from './chain';
import { acrossCorners, cornerSizing } from './corner-sizes';
import type { Outcome, ToolPointer, ToolState } from './tool';
import { twoPointTool, type Stretch } from './two-points';

export interface AreaTool {
  readonly name: string;
  /** The document with the area in it; null for an outline that it cannot hold. */
  step(site: Site, outline: readonly Point[]): Step | null;
  /** Why that outline cannot be. */
  refusal(): string;
}

/** Metres: a smaller rectangle is a slip of the hand. */
const SMALLEST = 0.1;

/** Counter-clockwise from the corner that it began at, in the frame of the angle that was typed; null for a slip. */
function corners(stretch: Stretch): Point[] | null {
  const [x, y] = acrossCorners(stretch);
  if (Math.abs(x) < SMALLEST || Math.abs(y) < SMALLEST) return null;
  const { angle = 0 } = stretch.input.typed;
  const at = (across: number, up: number): Point => add(stretch.from, rotate([across, up], angle));
  const [left, right] = [Math.min(0, x), Math.max(0, x)];
  const [low, high] = [Math.min(0, y), Math.max(0, y)];
  return [at(left, low), at(right, low), at(right, high), at(left, high)];
}

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
    sizing: cornerSizing(true),
    show(stretch, { site }) {
      const { to, snap } = stretch;
      const outline = corners(stretch);
      const step = outline && area.step(site, outline);
      if (!step) return { overlay: { guides: snap.guides, cursor: 'crosshair' } };
      const [x, y] = acrossCorners(stretch);
      const label = { at: to, text: joinedText(sizeText(site, Math.abs(x), Math.abs(y)), snap.text) };
      return { draft: step.site, overlay: { guides: snap.guides, label, cursor: 'crosshair' } };
    },
    finish(stretch, { site }) {
      const outline = corners(stretch);
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
        if (input.type === 'double' || (input.type === 'key' && !opensEntry(input.key))) return null;
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
