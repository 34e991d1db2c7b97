/** The tape: stays on the plan until the next press or Escape; leaves nothing in the document. */
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { Scene } from '../scene';
import type { Overlay } from '../types';
import { joinedText, lengthText } from '../wording';
import type { ToolState } from './tool';
import { twoPointTool } from './two-points';

function tape({ site }: Scene, from: Point, to: Point, more = ''): { readonly overlay: Partial<Overlay> } {
  const apart = distance(from, to);
  const dx = Math.abs(to[0] - from[0]);
  const dy = Math.abs(to[1] - from[1]);
  const parts = dx > 1e-4 && dy > 1e-4 ? `${lengthText(site, dx)} across, ${lengthText(site, dy)} along` : '';
  const label = { at: to, text: joinedText(lengthText(site, apart), parts, more) };
  const guides = [{ from, to, label: lengthText(site, apart) }];
  return { overlay: { guides, label, cursor: 'crosshair' } };
}

/** Busy, so that Escape takes the tape away. */
const showing = (from: Point, to: Point): ToolState => ({
  name: 'measure: showing',
  busy: true,
  on(input, scene) {
    if (input.type === 'down') return measureTool.on(input, scene);
    return input.type === 'move' ? { next: showing(from, to), ...tape(scene, from, to) } : null;
  }
});

export const measureTool: ToolState = twoPointTool({
  name: 'measure',
  show: ({ from, to, snap }, scene) => tape(scene, from, to, snap.text),
  finish({ from, to }, scene) {
    if (distance(from, to) < 1e-6) return null;
    return { next: showing(from, to), ...tape(scene, from, to) };
  }
});
