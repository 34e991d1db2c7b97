/**
 * Two points of a picture whose distance is known on the road: press and drag, or click and click again. They then wait
 * for the distance, which the page asks for; an end can be dragged meanwhile. Nothing snaps: only the picture counts.
 */
import { t } from '#i18n/message';
import { distance } from '#plan/geometry/points';
import type { Point, Site, Underlay } from '#plan/schema';
import { isOnPicture, isToScale, leastSpan, pixelUnder } from '#plan/underlays';
import { hasMoved, REACH } from '../reach';
import type { Scene } from '../scene';
import type { Ref } from '../types';
import { lengthText } from '../wording';
import type { Outcome, ToolPointer, ToolState } from './tool';

/** The picture that is selected, else the one that came last. */
export function pictureToScale(site: Site, selection: readonly Ref[]): Underlay | null {
  const [only] = selection;
  const chosen =
    selection.length === 1 && only?.kind === 'underlay'
      ? site.underlays.find(({ id }) => id === only.id)
      : undefined;
  return chosen ?? site.underlays.at(-1) ?? null;
}

const isOn = ({ site, selection }: Scene, at: Point): boolean => {
  const underlay = pictureToScale(site, selection);
  return underlay !== null && isOnPicture(underlay, pixelUnder(underlay, at));
};

function farEnough({ site, selection }: Scene, from: Point, to: Point): boolean {
  const underlay = pictureToScale(site, selection);
  if (!underlay) return false;
  return distance(pixelUnder(underlay, from), pixelUnder(underlay, to)) >= leastSpan(underlay);
}

function said(scene: Scene, at: Point): Outcome['overlay'] {
  const { site, selection } = scene;
  if (!pictureToScale(site, selection))
    return { label: { at, text: t('underlay.none') }, cursor: 'crosshair' };
  if (isOn(scene, at)) return { cursor: 'crosshair' };
  return { label: { at, text: t('underlay.outside') }, cursor: 'not-allowed' };
}

function line(scene: Scene, from: Point, to: Point): Outcome['overlay'] {
  const underlay = pictureToScale(scene.site, scene.selection);
  const label = underlay && isToScale(underlay) ? lengthText(scene.site, distance(from, to)) : '';
  return { ...said(scene, to), guides: [{ from, to, label }] };
}

export const calibrateTool: ToolState = {
  name: 'calibrate: ready',
  busy: false,
  on(input, scene): Outcome | null {
    if (input.type !== 'move' && input.type !== 'down') return null;
    const isStart = input.type === 'down' && isOn(scene, input.at);
    return {
      next: isStart ? stretching(input.at, input, true) : calibrateTool,
      overlay: said(scene, input.at)!
    };
  }
};

/** `isSecond`: the press that gives the second point, which counts where it is released. */
function stretching(from: Point, start: ToolPointer, isHeld: boolean, isSecond = false): ToolState {
  const state: ToolState = {
    name: 'calibrate: stretching',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type === 'key' || input.type === 'double') return null;
      const to = input.at;
      const overlay = line(scene, from, to)!;
      if (input.type === 'down') return { next: stretching(from, input, true, true), overlay };
      if (input.type !== 'up' || !isHeld) return { next: state, overlay };
      const free = stretching(from, start, false);
      if (!isSecond && !hasMoved(start, input)) return { next: free, overlay };
      if (!isOn(scene, to) || !farEnough(scene, from, to)) return { next: free, overlay };
      return waiting(from, to, scene);
    }
  };
  return state;
}

/** Busy, so that Escape takes the two points back. */
function waiting(from: Point, to: Point, scene: Scene): Outcome {
  const span = { from, to };
  const shown = (next: ToolState, now: Scene): Outcome => ({
    next,
    span,
    overlay: { ...line(now, from, to), label: null, cursor: 'crosshair' }
  });
  const state: ToolState = {
    name: 'calibrate: waiting',
    busy: true,
    on(input, now): Outcome | null {
      if (input.type === 'move') return shown(state, now);
      if (input.type !== 'down') return null;
      const reach = REACH[input.pointer] / now.viewport.scale;
      if (distance(from, input.at) <= reach) return shown(dragging(to, from, input), now);
      if (distance(to, input.at) <= reach) return shown(dragging(from, to, input), now);
      return calibrateTool.on(input, now);
    }
  };
  return shown(state, scene);
}

/** One end of the two, with the other where it is. */
function dragging(fixed: Point, loose: Point, start: ToolPointer): ToolState {
  const state: ToolState = {
    name: 'calibrate: dragging',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type !== 'move' && input.type !== 'up') return null;
      const at: Point = [loose[0] + input.at[0] - start.at[0], loose[1] + input.at[1] - start.at[1]];
      const isSound = isOn(scene, at) && farEnough(scene, fixed, at);
      if (input.type === 'up') return waiting(fixed, isSound ? at : loose, scene);
      return {
        next: state,
        span: { from: fixed, to: isSound ? at : loose },
        overlay: line(scene, fixed, at)!
      };
    }
  };
  return state;
}
