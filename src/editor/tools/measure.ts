/**
 * The tape: from point to point, by dragging or click by click, with the sum and the directions. A double click or Enter
 * leaves it on the plan until the next press or Escape; nothing of it is in the document.
 */
import { t } from '#i18n/message';
import { bearing, distance } from '#plan/geometry/points';
import { turnAt } from '#plan/geometry/bends';
import type { Point } from '#plan/schema';
import { onRay } from '../geometry/rays';
import { hasMoved, REACH } from '../reach';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import type { Snap } from '../snapping/snap';
import type { Overlay } from '../types';
import { angleText, joinedText, lengthText } from '../wording';
import type { Outcome, ToolPointer, ToolState } from './tool';

const DIRECTION_STEP = 15;
/** Metres: nearer points have nothing between them. */
const SAME = 1e-6;

/** The last side, what it is across and along, its direction, the angle at its beginning, and the whole way. */
function words(site: Scene['site'], points: readonly Point[]): string {
  const [from, to] = points.slice(-2);
  if (!from || !to) return '';
  const [dx, dy] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
  const isSlanting = dx > 1e-4 && dy > 1e-4;
  const parts = isSlanting
    ? t('measure.parts', { across: lengthText(site, dx), along: lengthText(site, dy) })
    : '';
  const direction = isSlanting ? angleText(site, bearing(from, to)) : '';
  if (points.length === 2) return joinedText(lengthText(site, distance(from, to)), parts, direction);
  const inner = 180 - Math.abs((turnAt(points, points.length - 2) * 180) / Math.PI);
  const total = points.slice(1).reduce((sum, point, index) => sum + distance(points[index]!, point), 0);
  return joinedText(
    lengthText(site, distance(from, to)),
    t('measure.angle', { angle: angleText(site, inner) }),
    t('measure.total', { total: lengthText(site, total) })
  );
}

function tape({ site }: Scene, points: readonly Point[], snap: Snap | null): Partial<Overlay> {
  const sides = points.slice(1).map((to, index) => {
    const from = points[index]!;
    return { from, to, label: lengthText(site, distance(from, to)) };
  });
  const last = points.at(-1);
  const text = joinedText(words(site, points), snap?.text ?? '');
  return {
    guides: [...sides, ...(snap?.guides ?? [])],
    label: last && text !== '' ? { at: last, text } : null,
    cursor: 'crosshair'
  };
}

/** Shift keeps to directions of 15°. */
function aim(points: readonly Point[], input: ToolPointer, scene: Scene): { at: Point; snap: Snap | null } {
  const last = points.at(-1);
  if (input.shift && last) return { at: onRay(last, input.at, DIRECTION_STEP), snap: null };
  const snap = createSnapper(scene).point(input.at, input);
  return { at: snap.at, snap };
}

/** Busy, so that Escape takes the tape away. */
const showing = (points: readonly Point[]): ToolState => ({
  name: 'measure: showing',
  busy: true,
  on(input, scene) {
    if (input.type === 'down') return measureTool.on(input, scene);
    return input.type === 'move' ? { next: showing(points), overlay: tape(scene, points, null) } : null;
  }
});

const left = (points: readonly Point[], scene: Scene): Outcome =>
  points.length < 2 ? { next: measureTool } : { next: showing(points), overlay: tape(scene, points, null) };

function stretching(points: readonly Point[], held: ToolPointer | null): ToolState {
  const state: ToolState = {
    name: 'measure: stretching',
    busy: true,
    on(input, scene): Outcome | null {
      if (input.type === 'double') return left(points, scene);
      if (input.type === 'key') {
        if (input.key === 'Enter') return left(points, scene);
        if (input.key !== 'Backspace') return null;
        const fewer = points.slice(0, -1);
        const next = fewer.length === 0 ? measureTool : stretching(fewer, null);
        return { next, overlay: tape(scene, fewer, null) };
      }
      const { at, snap } = aim(points, input, scene);
      const last = points.at(-1)!;
      const overlay = tape(scene, distance(last, at) < SAME ? points : [...points, at], snap);
      if (input.type === 'move') return { next: state, overlay };
      // A drag is one distance; a click begins a way of several.
      if (input.type === 'up')
        return held && hasMoved(held, input)
          ? left([...points, at], scene)
          : { next: stretching(points, null), overlay };
      // The second press of a double click is no new point.
      const again = distance(last, at) * scene.viewport.scale < REACH[input.pointer] / 2;
      return { next: stretching(again ? points : [...points, at], null), overlay };
    }
  };
  return state;
}

export const measureTool: ToolState = {
  name: 'measure: ready',
  busy: false,
  on(input, scene): Outcome | null {
    if (input.type !== 'move' && input.type !== 'down') return null;
    const { at, snap } = aim([], input, scene);
    const next = input.type === 'down' ? stretching([at], input) : measureTool;
    return { next, overlay: tape(scene, [at], snap) };
  }
};
