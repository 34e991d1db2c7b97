/** Puts drawings on a canvas. One shape a layer does all of it: thousands of nodes would cost more than their lines. */
import type { Point } from '#plan/schema';
import type {
  CircleDrawing,
  Drawing,
  ImageDrawing,
  LineDrawing,
  RingsDrawing,
  Stroke,
  TextDrawing
} from '#scenes/drawing';
import { twistedPair } from '#scenes/twist';

type Methods =
  | 'beginPath'
  | 'moveTo'
  | 'lineTo'
  | 'closePath'
  | 'arc'
  | 'rect'
  | 'setLineDash'
  | 'measureText'
  | 'fillText'
  | 'save'
  | 'restore'
  | 'translate'
  | 'rotate'
  | 'drawImage';
type Properties =
  | 'fillStyle'
  | 'strokeStyle'
  | 'lineWidth'
  | 'lineJoin'
  | 'lineCap'
  | 'font'
  | 'textAlign'
  | 'textBaseline'
  | 'globalAlpha';

/** As much of a drawing context as is used. */
export type Context = Pick<CanvasRenderingContext2D, Methods | Properties> & { fill(): void; stroke(): void };

const FONT = 'system-ui, -apple-system, "Segoe UI", Roboto, "Liberation Sans", sans-serif';
const PLATE_PADDING = 4;

function finish(context: Context, fill: string | undefined, stroke: Stroke | undefined): void {
  if (fill !== undefined) {
    context.fillStyle = fill;
    context.fill();
  }
  if (!stroke) return;
  context.strokeStyle = stroke.colour;
  context.lineWidth = stroke.width;
  context.setLineDash([...(stroke.dash ?? [])]);
  context.stroke();
}

function trace(context: Context, points: readonly Point[]): void {
  points.forEach(([x, y], index) => {
    if (index === 0) context.moveTo(x, y);
    else context.lineTo(x, y);
  });
}

function paintLine(context: Context, { points, closed, fill, stroke }: LineDrawing): void {
  context.beginPath();
  if (stroke?.twisted) for (const wire of twistedPair(points)) trace(context, wire);
  else trace(context, points);
  if (closed) context.closePath();
  finish(context, fill, stroke);
}

function paintRings(context: Context, { rings, fill, stroke }: RingsDrawing): void {
  context.beginPath();
  for (const ring of rings) {
    trace(context, ring);
    context.closePath();
  }
  finish(context, fill, stroke);
}

function paintCircle(context: Context, { at, radius, fill, stroke }: CircleDrawing): void {
  context.beginPath();
  context.arc(at[0], at[1], radius, 0, 2 * Math.PI);
  finish(context, fill, stroke);
}

function paintText(context: Context, { at, text, colour, size, bold, align, plate }: TextDrawing): void {
  context.font = `${bold ? 600 : 400} ${size}px ${FONT}`;
  context.textAlign = align;
  context.textBaseline = 'middle';
  if (plate !== undefined) {
    const width = context.measureText(text).width;
    const left = align === 'left' ? at[0] : align === 'right' ? at[0] - width : at[0] - width / 2;
    context.beginPath();
    context.rect(left - PLATE_PADDING, at[1] - size * 0.72, width + 2 * PLATE_PADDING, size * 1.44);
    context.fillStyle = plate;
    context.fill();
  }
  context.fillStyle = colour;
  context.fillText(text, at[0], at[1]);
}

function paintImage(context: Context, drawing: ImageDrawing): void {
  const { image, at, width, height, rotation, opacity } = drawing;
  context.save();
  context.globalAlpha = opacity;
  context.translate(at[0], at[1]);
  context.rotate((-rotation * Math.PI) / 180);
  context.drawImage(image, -width / 2, -height / 2, width, height);
  context.restore();
}

export function paint(context: Context, drawings: readonly Drawing[]): void {
  context.lineJoin = 'miter';
  context.lineCap = 'butt';
  for (const drawing of drawings) {
    if (drawing.kind === 'line') paintLine(context, drawing);
    else if (drawing.kind === 'circle') paintCircle(context, drawing);
    else if (drawing.kind === 'rings') paintRings(context, drawing);
    else if (drawing.kind === 'image') paintImage(context, drawing);
    else paintText(context, drawing);
  }
}
