/** A small picture of lines, as large as its canvas has room. */
import type { Point } from '#plan/schema';
import { thinned } from '#scenes/underlay-lines';

export interface PreviewLine {
  readonly points: readonly Point[];
  readonly isClosed: boolean;
  /** What comes in, among what is there. */
  readonly isNew: boolean;
}

const MARGIN = 10;

function boxOf(lines: readonly PreviewLine[]) {
  const box = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
  for (const { points } of lines)
    for (const [x, y] of points) {
      box.left = Math.min(box.left, x);
      box.right = Math.max(box.right, x);
      box.bottom = Math.min(box.bottom, y);
      box.top = Math.max(box.top, y);
    }
  return box;
}

/** In the colours that the canvas has by its styles: `color` for what is new, `outline-color` for what is there. */
export function drawPreview(canvas: HTMLCanvasElement, lines: readonly PreviewLine[]): void {
  const context = canvas.getContext('2d');
  const { clientWidth, clientHeight } = canvas;
  if (!context || clientWidth === 0) return;
  const ratio = devicePixelRatio || 1;
  canvas.width = Math.round(clientWidth * ratio);
  canvas.height = Math.round(clientHeight * ratio);
  const { left, right, bottom, top } = boxOf(lines);
  if (!(left <= right)) return;
  const room = [clientWidth - 2 * MARGIN, clientHeight - 2 * MARGIN] as const;
  const scale = Math.min(room[0] / Math.max(right - left, 1e-9), room[1] / Math.max(top - bottom, 1e-9));
  const style = getComputedStyle(canvas);
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  const place = ([x, y]: Point): Point => [
    clientWidth / 2 + (x - (left + right) / 2) * scale,
    clientHeight / 2 - (y - (bottom + top) / 2) * scale
  ];
  for (const isNew of [false, true]) {
    context.strokeStyle = isNew ? style.color : style.outlineColor;
    context.lineWidth = isNew ? 1.25 : 1;
    for (const line of lines) {
      if (line.isNew !== isNew) continue;
      context.beginPath();
      thinned(line.points.map(place)).forEach(([x, y], index) => {
        if (index === 0) context.moveTo(x, y);
        else context.lineTo(x, y);
      });
      if (line.isClosed) context.closePath();
      context.stroke();
    }
  }
}
