/** Two points, then how far beside them the dimension's line lies: a third place, or a length that is typed. */
import { BOUNDS } from '#plan/bounds';
import { distance } from '#plan/geometry/points';
import { tidyLength } from '#plan/edits/tidy';
import type { Point } from '#plan/schema';
import { offsetFrom } from '../geometry/marks';
import { hasMoved } from '../reach';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import type { Step } from '../types';
import { joinedText, lengthText } from '../wording';
import { markStep } from './mark-step';
import type { Outcome, ToolPointer, ToolState } from './tool';
import { twoPointTool } from './two-points';

/** Metres: nearer points have nothing between them to measure. */
const SHORTEST = 0.01;
/** Pixels from the measured points to the line while nothing has been said about it. */
const USUAL_OFFSET = 24;

type Ends = readonly [Point, Point];

function stepAt(ends: Ends, offset: number, scene: Scene): Step | null {
  const { min, max } = BOUNDS.dimensionOffset;
  const kept = tidyLength(Math.min(max, Math.max(min, offset)));
  return distance(...ends) < SHORTEST ? null : markStep(scene.site, 'dimension', ends, { offset: kept });
}

/** Held: the button that ended the second point is still down. */
function offsetting(ends: Ends, start: ToolPointer | null): ToolState {
  function shown(at: Point, input: ToolPointer, scene: Scene) {
    const snap = createSnapper(scene).point(at, input);
    const offset = offsetFrom(ends, snap.at);
    const step = stepAt(ends, offset, scene);
    const label = { at: snap.at, text: joinedText(lengthText(scene.site, Math.abs(offset)), snap.text) };
    return { step, draft: step?.site ?? null, overlay: { guides: snap.guides, label, cursor: 'crosshair' } };
  }
  const state: ToolState = {
    name: 'dimension: offsetting',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type === 'double') return null;
      if (input.type === 'key') {
        if (input.key !== 'Enter') return null;
        const step = stepAt(ends, USUAL_OFFSET / scene.viewport.scale, scene);
        return { next: dimensionTool, ...(step ? { step, tool: 'select' } : {}) };
      }
      const { step, draft, overlay } = shown(input.at, input, scene);
      const isRelease = input.type === 'up' && start !== null && !hasMoved(start, input);
      if (isRelease) return { next: offsetting(ends, null), draft, overlay };
      if (input.type === 'move') return { next: state, draft, overlay };
      return { next: dimensionTool, ...(step ? { step, tool: 'select' } : {}) };
    }
  };
  return state;
}

export const dimensionTool: ToolState = twoPointTool({
  name: 'dimension',
  show({ from, to, snap }, scene) {
    const step = stepAt([from, to], USUAL_OFFSET / scene.viewport.scale, scene);
    const text = joinedText(lengthText(scene.site, distance(from, to)), snap.text);
    const guides = [...snap.guides, { from, to, label: '' }];
    return { draft: step?.site ?? null, overlay: { guides, label: { at: to, text }, cursor: 'crosshair' } };
  },
  finish({ from, to, input, snap }, scene) {
    const step = stepAt([from, to], USUAL_OFFSET / scene.viewport.scale, scene);
    if (!step) return null;
    const next = offsetting([from, to], input.type === 'down' ? input : null);
    return { next, draft: step.site, overlay: { guides: snap.guides, cursor: 'crosshair' } };
  }
});
