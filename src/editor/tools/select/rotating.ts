import { t } from '#i18n/message';
import { saying } from '#i18n/saying';
import { rotateThings } from '#plan/edits/index';
import { bearing, normalAngle } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { angleSize } from '../../entry/placing';
import { opensEntry } from '../../entry/typing';
import { laneAt } from '../../geometry/lanes';
import { unlockedOf } from '../../locks';
import type { Scene } from '../../scene';
import { sayRefs } from '../../selection';
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

/** Turning by the rotation handle, always from the plan as it was when the gesture began; what is locked stays. */
export function rotating(start: ToolPointer, scene: Scene): ToolState {
  const { site, selection, snap } = scene;
  const refs = unlockedOf(site, selection);
  const pivot = pivotOf(site, refs) ?? start.at;
  const before = angleOf(site, refs);
  const single = refs.length === 1;

  function turned(input: ToolPointer) {
    const free = before + bearing(pivot, input.at) - bearing(pivot, start.at);
    const step = input.shift ? STEPS.coarse : input.alt ? STEPS.fine : STEPS.usual;
    const pulled = single && snap.objects && !input.alt && !input.shift ? alongLane(free, site, pivot) : null;
    const angle = input.typed.angle ?? pulled ?? Math.round(free / step) * step;
    const isPulled = pulled !== null && input.typed.angle === undefined;
    const text = joinedText(angleText(site, normalAngle(angle)), isPulled ? t('snap.lane') : '');
    return { draft: rotateThings(site, refs, angle - before, pivot), text, angle };
  }

  function shown(input: ToolPointer): Omit<Outcome, 'next'> {
    const { draft, text, angle } = turned(input);
    const guides = [{ from: pivot, to: input.at, label: '' }];
    const entry = { of: 'rotating', fields: [angleSize(normalAngle(angle))], takesPlace: false };
    return { draft, entry, overlay: { guides, label: { at: input.at, text }, cursor: 'grabbing' } };
  }

  const finished = (input: ToolPointer): Outcome => {
    const label = saying('step.rotateThings', { things: sayRefs(refs) });
    return { next: idle, step: { label, site: turned(input).draft } };
  };

  /** `last`: where the pointer was when it was last heard of. */
  function from(last: ToolPointer): ToolState {
    const state: ToolState = {
      name: 'rotating',
      busy: true,
      on(input): Outcome | null {
        if (input.type === 'move') return { next: from(input), ...shown(input) };
        if (input.type === 'up') return finished(input);
        if (input.type !== 'key') return null;
        if (input.key === 'Enter') return finished(last);
        return opensEntry(input.key) ? { next: state, ...shown(last) } : null;
      }
    };
    return state;
  }
  return from(start);
}
