/** Dragging a point of a drawn tail or lead-in; one that is dragged onto its neighbour is taken out of the way. */
import { saying } from '#i18n/saying';
import { insertWayPoint, moveWayPoint, removeWayPoint, wayPath, type Way } from '#plan/edits/index';
import { distance } from '#plan/geometry/points';
import { pathLength } from '#plan/lead-out';
import type { Point, Site } from '#plan/schema';
import type { PlanHandle } from '../../handles';
import { REACH } from '../../reach';
import type { Scene } from '../../scene';
import { createSnapper } from '../../snapping/snapper';
import { wayOfHandle } from '../../ways';
import { joinedText, lengthText } from '../../wording';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { idle } from './idle';

export function routing(start: ToolPointer, handle: PlanHandle, scene: Scene): ToolState {
  const { site, selection } = scene;
  const [ref] = selection;
  const found = ref && wayOfHandle(site, ref.id, handle.id);
  const snapper = createSnapper(scene, selection);
  const grip: Point = [handle.at[0] - start.at[0], handle.at[1] - start.at[1]];

  /** Ends of the stretches that the point is on. */
  function neighbours(way: Way, index: number): readonly Point[] {
    const path = wayPath(site, way) ?? [];
    const after = handle.kind === 'via' ? index + 2 : index + 1;
    return [path[index], path[after]].filter((point) => point !== undefined);
  }

  function dragged(way: Way, index: number, to: Point, input: ToolPointer): Site {
    const reach = REACH[input.pointer] / scene.viewport.scale;
    const isTaken = neighbours(way, index).some((point) => distance(point, to) <= reach);
    if (handle.kind === 'between') return isTaken ? site : insertWayPoint(site, way, index, to);
    return isTaken ? removeWayPoint(site, way, index) : moveWayPoint(site, way, index, to);
  }

  const state: ToolState = {
    name: 'routing',
    busy: true,
    on(input): Outcome | null {
      if (input.type !== 'move' && input.type !== 'up') return null;
      if (!found) return { next: idle };
      const { way, index } = found;
      const snap = snapper.point([input.at[0] + grip[0], input.at[1] + grip[1]], input);
      const draft = dragged(way, index, snap.at, input);
      if (input.type === 'up')
        return { next: idle, step: { label: saying(`step.reroute.${way.kind}`), site: draft } };
      const path = wayPath(draft, way);
      const text = joinedText(path ? lengthText(site, pathLength(path)) : '', snap.text);
      const overlay = { guides: snap.guides, label: { at: input.at, text }, cursor: handle.cursor };
      return { next: state, draft, overlay };
    }
  };
  return state;
}
