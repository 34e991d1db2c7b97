/**
 * Tools that collect points click by click. Enter or a double click ends, a click on the first point closes where the
 * figure can be closed, Backspace takes the last point back; shift keeps to directions of 15°. Length and angle of the
 * next piece can be typed: Enter then puts its point.
 */
import { t } from '#i18n/message';
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { NOTHING_TYPED } from '../dimension-entry';
import { hasTyped, stretchSizes, stretchTo } from '../entry/placing';
import { opensEntry } from '../entry/typing';
import { onRay } from '../geometry/rays';
import { REACH } from '../reach';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import { NO_SNAP, type Snap } from '../snapping/snap';
import type { Overlay } from '../types';
import { joinedText, lengthText } from '../wording';
import type { Outcome, ToolPointer, ToolState } from './tool';

export interface ChainTool {
  readonly name: string;
  readonly least: number;
  readonly most: number;
  readonly closes: boolean;
  /** The document with the figure in it, or why that figure cannot be. */
  draw(points: readonly Point[], scene: Scene): Omit<Outcome, 'next'> | string;
}

const DIRECTION_STEP = 15;

interface Aim {
  readonly at: Point;
  readonly snap: Snap;
  readonly closing: boolean;
}

function aim(tool: ChainTool, points: readonly Point[], input: ToolPointer, scene: Scene): Aim {
  const first = points[0];
  const last = points.at(-1);
  const isTyped = hasTyped(input.typed);
  const near = REACH[input.pointer] / scene.viewport.scale;
  if (tool.closes && first && !isTyped && points.length >= tool.least && distance(first, input.at) <= near)
    return { at: first, closing: true, snap: { ...NO_SNAP, text: t('snap.close') } };
  if (input.shift && last) {
    const at = onRay(last, input.at, DIRECTION_STEP);
    return { at: stretchTo(last, at, input.typed), closing: false, snap: NO_SNAP };
  }
  const snap = createSnapper(scene).point(input.at, input);
  if (!last || !isTyped) return { at: snap.at, snap, closing: false };
  return { at: stretchTo(last, snap.at, input.typed), snap: NO_SNAP, closing: false };
}

export function chainTool(tool: ChainTool): ToolState {
  const ready = collecting([], null);

  function shown(points: readonly Point[], target: Aim | null, scene: Scene): Omit<Outcome, 'next'> {
    const last = points.at(-1);
    const isNew = target && !target.closing && target.at !== last;
    const all = isNew ? [...points, target.at] : points;
    const drawn = all.length >= tool.least ? tool.draw(all, scene) : null;
    const refusal = typeof drawn === 'string' ? drawn : '';
    const lines = all
      .slice(1)
      .map((to, index): Overlay['guides'][number] => ({ from: all[index]!, to, label: '' }));
    const guides = [...lines, ...(target?.snap.guides ?? [])];
    const side = last && target ? lengthText(scene.site, distance(last, target.at)) : '';
    const text = joinedText(side, refusal, target?.snap.text ?? '');
    const overlay: Partial<Overlay> = {
      guides,
      label: target && text !== '' ? { at: target.at, text } : null,
      cursor: 'crosshair'
    };
    const draft = drawn && typeof drawn !== 'string' ? (drawn.step?.site ?? null) : null;
    if (!last) return { draft, overlay };
    const fields = stretchSizes(last, target?.at ?? last);
    return { draft, overlay, entry: { of: `${tool.name} ${points.length}`, fields, takesPlace: true } };
  }

  /** Without enough points, or with an impossible figure, the collecting goes on. */
  function finished(points: readonly Point[], last: ToolPointer | null, scene: Scene): Outcome {
    const drawn = points.length >= tool.least ? tool.draw(points, scene) : t('entry.tooFew');
    if (typeof drawn !== 'string') return { next: ready, ...drawn };
    const end = points.at(-1);
    const label = end ? { at: end, text: drawn } : null;
    const rest = shown(points, null, scene);
    return { next: collecting(points, last), ...rest, overlay: { ...rest.overlay, label } };
  }

  function pressed(points: readonly Point[], input: ToolPointer, scene: Scene): Outcome {
    const target = aim(tool, points, input, scene);
    if (target.closing) return finished(points, input, scene);
    const last = points.at(-1);
    // The second press of a double click is no new point.
    const near = hasTyped(input.typed) ? 0 : REACH[input.pointer] / 2;
    const again = last && distance(last, target.at) * scene.viewport.scale < near;
    const next = again || points.length >= tool.most ? points : [...points, target.at];
    // What was typed was for this piece.
    const rested = { ...input, typed: NOTHING_TYPED };
    return { next: collecting(next, rested), ...shown(next, again ? null : target, scene) };
  }

  /** `last`: where the pointer was when it was last heard of. */
  function collecting(points: readonly Point[], last: ToolPointer | null): ToolState {
    function keyed(key: string, scene: Scene): Outcome | null {
      if (key === 'Enter')
        return last && hasTyped(last.typed) ? pressed(points, last, scene) : finished(points, last, scene);
      if (key === 'Backspace') {
        const fewer = points.slice(0, -1);
        return { next: collecting(fewer, last), ...shown(fewer, null, scene) };
      }
      if (!opensEntry(key)) return null;
      return { next: state, ...shown(points, last && aim(tool, points, last, scene), scene) };
    }

    const state: ToolState = {
      name: `${tool.name}: ${points.length === 0 ? 'ready' : 'collecting'}`,
      busy: points.length > 0,
      on(input, scene): Outcome | null {
        if (input.type === 'down') return pressed(points, input, scene);
        if (input.type === 'move') {
          const target = aim(tool, points, input, scene);
          return { next: collecting(points, input), ...shown(points, target, scene) };
        }
        if (points.length === 0) return null;
        if (input.type === 'double') return finished(points, last, scene);
        return input.type === 'key' ? keyed(input.key, scene) : null;
      }
    };
    return state;
  }

  return ready;
}
