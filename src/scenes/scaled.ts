/** The same drawings larger or smaller, with their lines and texts. */
import type { Point } from '#plan/schema';
import type { Drawing, Stroke } from './drawing';

function strokeTimes(stroke: Stroke, factor: number): Stroke {
  return {
    ...stroke,
    width: stroke.width * factor,
    ...(stroke.dash ? { dash: stroke.dash.map((length) => length * factor) } : {})
  };
}

export function scaled(drawing: Drawing, factor: number): Drawing {
  const at = ([x, y]: Point): Point => [x * factor, y * factor];
  if (drawing.kind === 'text') return { ...drawing, at: at(drawing.at), size: drawing.size * factor };
  if (drawing.kind === 'image')
    return {
      ...drawing,
      at: at(drawing.at),
      width: drawing.width * factor,
      height: drawing.height * factor
    };
  const stroke = drawing.stroke ? { stroke: strokeTimes(drawing.stroke, factor) } : {};
  if (drawing.kind === 'circle')
    return { ...drawing, at: at(drawing.at), radius: drawing.radius * factor, ...stroke };
  if (drawing.kind === 'rings')
    return { ...drawing, rings: drawing.rings.map((ring) => ring.map(at)), ...stroke };
  return { ...drawing, points: drawing.points.map(at), ...stroke };
}
