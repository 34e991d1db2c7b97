/**
 * Tools that need two points: press and drag, or click and click again. What they draw between the points differs,
 * how the hand gives them does not.
 */
import type { Point } from '#plan/schema';
import { hasMoved } from '../reach';
import type { Scene } from '../scene';
import { createSnapper, type Snapper } from '../snapping/snapper';
import type { Snap } from '../snapping/snap';
import type { Outcome, ToolPointer, ToolState } from './tool';

export interface Stretch {
  readonly from: Point;
  readonly to: Point;
  /** What the second point snapped to. */
  readonly snap: Snap;
  readonly input: ToolPointer;
}

export interface TwoPointTool {
  readonly name: string;
  /** What is shown while the second point is still in the hand. */
  show(stretch: Stretch, scene: Scene): Omit<Outcome, 'next'>;
  /** What is left behind; null when the points are too near to each other to mean anything. */
  finish(stretch: Stretch, scene: Scene): (Omit<Outcome, 'next'> & { readonly next?: ToolState }) | null;
}

export function twoPointTool(tool: TwoPointTool): ToolState {
  const ready: ToolState = {
    name: `${tool.name}: ready`,
    busy: false,
    on(input, scene): Outcome | null {
      if (input.type !== 'move' && input.type !== 'down') return null;
      const snapper = createSnapper(scene);
      const snap = snapper.point(input.at, input);
      if (input.type === 'down') return stretching(snap.at, input, snapper, true).on(input, scene);
      const label = snap.text === '' ? null : { at: snap.at, text: snap.text };
      return { next: ready, overlay: { guides: snap.guides, label, cursor: 'crosshair' } };
    }
  };

  function stretching(from: Point, start: ToolPointer, snapper: Snapper, held: boolean): ToolState {
    const state: ToolState = {
      name: `${tool.name}: stretching`,
      busy: true,
      on(input, scene): Outcome | null {
        if (input.type === 'key' || input.type === 'double') return null;
        const snap = snapper.point(input.at, input);
        const stretch: Stretch = { from, to: snap.at, snap, input };
        const dragged = hasMoved(start, input);
        if (input.type === 'up' && held && !dragged)
          return { next: stretching(from, start, snapper, false), ...tool.show(stretch, scene) };
        const ends = input.type === 'up' ? held : input.type === 'down' && !held;
        if (!ends) return { next: state, ...tool.show(stretch, scene) };
        return { next: ready, ...tool.finish(stretch, scene) };
      }
    };
    return state;
  }

  return ready;
}
