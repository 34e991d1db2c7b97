/**
 * Tools that collect points click by click. Enter or a double click ends, a click on the first point closes where the
 * figure can be closed, Backspace takes the last point back; shift keeps to directions of 15°.
 */
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { onRay } from '../geometry/rays';
import { REACH } from '../reach';
import type { Scene } from '../scene';
import { createSnapper } from '../snapping/snapper';
import type { Snap } from '../snapping/snap';
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
  const near = REACH[input.pointer] / scene.viewport.scale;
  const none: Snap = { by: [0, 0], guides: [], text: '' };
  if (tool.closes && first && points.length >= tool.least && distance(first, input.at) <= near)
    return { at: first, closing: true, snap: { ...none, text: 'close' } };
  const last = points.at(-1);
  if (input.shift && last) return { at: onRay(last, input.at, DIRECTION_STEP), closing: false, snap: none };
  const snap = createSnapper(scene).point(input.at, input);
  return { at: snap.at, snap, closing: false };
}

export function chainTool(tool: ChainTool): ToolState {
  const ready = collecting([]);

  function shown(points: readonly Point[], target: Aim | null, scene: Scene): Omit<Outcome, 'next'> {
    const all = target && !target.closing ? [...points, target.at] : points;
    const drawn = all.length >= tool.least ? tool.draw(all, scene) : null;
    const refusal = typeof drawn === 'string' ? drawn : '';
    const last = points.at(-1);
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
    return { draft, overlay };
  }

  /** Without enough points, or with an impossible figure, the collecting goes on. */
  function finished(points: readonly Point[], scene: Scene): Outcome {
    const drawn = points.length >= tool.least ? tool.draw(points, scene) : 'too few points';
    if (typeof drawn !== 'string') return { next: ready, ...drawn };
    const last = points.at(-1);
    const label = last ? { at: last, text: drawn } : null;
    const rest = shown(points, null, scene);
    return { next: collecting(points), ...rest, overlay: { ...rest.overlay, label } };
  }

  function pressed(points: readonly Point[], input: ToolPointer, scene: Scene): Outcome {
    const target = aim(tool, points, input, scene);
    if (target.closing) return finished(points, scene);
    const last = points.at(-1);
    // The second press of a double click is no new point.
    const again = last && distance(last, target.at) * scene.viewport.scale < REACH[input.pointer] / 2;
    const next = again || points.length >= tool.most ? points : [...points, target.at];
    return { next: collecting(next), ...shown(next, target, scene) };
  }

  function collecting(points: readonly Point[]): ToolState {
    const state: ToolState = {
      name: `${tool.name}: ${points.length === 0 ? 'ready' : 'collecting'}`,
      busy: points.length > 0,
      on(input, scene): Outcome | null {
        if (input.type === 'down') return pressed(points, input, scene);
        if (input.type === 'move')
          return { next: state, ...shown(points, aim(tool, points, input, scene), scene) };
        if (points.length === 0) return null;
        if (input.type === 'double' || (input.type === 'key' && input.key === 'Enter'))
          return finished(points, scene);
        if (input.type !== 'key' || input.key !== 'Backspace') return null;
        const fewer = points.slice(0, -1);
        return { next: collecting(fewer), ...shown(fewer, null, scene) };
      }
    };
    return state;
  }

  return ready;
}
