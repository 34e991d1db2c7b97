import { rotateThings } from '#plan/edits/index';
import { bearing, normalAngle } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { laneAt } from '../../geometry/lanes';
import type { Scene } from '../../scene';
import { describeRefs } from '../../selection';
import { loopOf, pivotOf, probeOf } from '../../things';
import type { Ref } from '../../types';
import { angleText, joinedText } from '../../wording';
import type { Outcome, ToolPointer, ToolState } from '../tool';
import { idle } from './idle';

/** Degrees: with shift, without, with alt. */
const STEPS = { coarse: 15, usual: 1, fine: 0.1 } as const;
/** Degrees within which the lane's direction attracts. */
const LANE_PULL = 3;

/** The angle that the selection shows in the details; a group starts from nought. */
function angleOf(site: Site, refs: readonly Ref[]): number {
  const [ref] = refs;
  if (refs.length !== 1 || !ref) return 0;
  if (ref.kind === 'probe') return probeOf(site, ref.id)?.heading ?? 0;
  const shape = ref.kind === 'loop' ? loopOf(site, ref.id)?.shape : undefined;
  return shape && 'rotation' in shape ? shape.rotation : 0;
}

/** The nearest angle that lies along or across the lane, if it is near. */
function alongLane(angle: number, site: Site, pivot: Point): number | null {
  const found = laneAt(site.lanes, pivot);
  if (!found) return null;
  const lane = bearing([0, 0], found.station.ahead);
  const nearest = lane + Math.round((angle - lane) / 90) * 90;
  return Math.abs(nearest - angle) <= LANE_PULL ? nearest : null;
}

/** Turning by the rotation handle, always from the plan as it was when the gesture began. */
export function rotating(start: ToolPointer, scene: Scene): ToolState {
  const { site, selection: refs, snap } = scene;
  const pivot = pivotOf(site, refs) ?? start.at;
  const before = angleOf(site, refs);
  const single = refs.length === 1;

  function turned(input: ToolPointer) {
    const free = before + bearing(pivot, input.at) - bearing(pivot, start.at);
    const step = input.shift ? STEPS.coarse : input.alt ? STEPS.fine : STEPS.usual;
    const pulled = single && snap.objects && !input.alt && !input.shift ? alongLane(free, site, pivot) : null;
    const angle = pulled ?? Math.round(free / step) * step;
    const text = joinedText(angleText(site, normalAngle(angle)), pulled === null ? '' : 'lane');
    return { draft: rotateThings(site, refs, angle - before, pivot), text };
  }

  const state: ToolState = {
    name: 'rotating',
    busy: true,
    on(input): Outcome | null {
      if (input.type !== 'move' && input.type !== 'up') return null;
      const { draft, text } = turned(input);
      if (input.type === 'up')
        return { next: idle, step: { label: `Rotate ${describeRefs(refs)}`, site: draft } };
      const guides = [{ from: pivot, to: input.at, label: '' }];
      return { next: state, draft, overlay: { guides, label: { at: input.at, text }, cursor: 'grabbing' } };
    }
  };
  return state;
}
