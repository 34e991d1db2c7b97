/**
 * Paint that belongs to a lane: a click in a lane puts it there as it usually lies; press and drag, or two clicks that
 * begin beside the lanes, draw it freely, and so do two clicks anywhere with shift.
 */
import type { MarkKind, Point, Site } from '#plan/schema';
import { opensEntry } from '../entry/typing';
import { laneAt, type Station } from '../geometry/lanes';
import { hasMoved } from '../reach';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import type { Step } from '../types';
import { segmentMarkTool, segmentStep, type FieldsOf } from './segment-mark';
import type { Outcome, ToolPointer, ToolState } from './tool';

export interface LaneMark {
  readonly kind: MarkKind;
  /** Where it usually lies at a place of a lane of that width, metres. */
  readonly inLane: (station: Station, width: number) => readonly [Point, Point];
  readonly fields?: FieldsOf;
}

export function laneMarkTool({ kind, inLane, fields = () => ({}) }: LaneMark): ToolState {
  const freeTool = segmentMarkTool(kind, fields);

  function usual(site: Site, at: Point): readonly [Point, Point] | null {
    const found = laneAt(site.lanes, at);
    return found && inLane(found.station, found.lane.width);
  }

  function usualStep(input: ToolPointer, scene: Scene): Step | null {
    const points = input.shift ? null : usual(scene.site, createSnapper(scene).point(input.at, input).at);
    return points && segmentStep(kind, points, scene, fields);
  }

  function pressing(start: ToolPointer): ToolState {
    const state: ToolState = {
      name: `${kind}: pressing`,
      busy: true,
      on(input, scene): Outcome | null {
        if (input.type === 'double' || (input.type === 'key' && !opensEntry(input.key))) return null;
        const step = usualStep(start, scene);
        const isStill = input.type !== 'key' && !hasMoved(start, input);
        if (step && isStill && input.type === 'up') return { next: ready, step, tool: 'select' };
        if (step && isStill) return { next: state, draft: step.site, overlay: { cursor: 'crosshair' } };
        const begun = freeTool.on(start, scene);
        return begun && begun.next.on(input, scene);
      }
    };
    return state;
  }

  const ready: ToolState = {
    name: `${kind}: ready`,
    busy: false,
    on(input, scene): Outcome | null {
      if (input.type === 'down') return { next: pressing(input), overlay: { cursor: 'crosshair' } };
      if (input.type !== 'move') return null;
      const outcome = freeTool.on(input, scene);
      const step = usualStep(input, scene);
      return outcome && { ...outcome, next: ready, draft: step?.site ?? null };
    }
  };
  return ready;
}
