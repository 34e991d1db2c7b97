/** Where drawings of a sheet are, millimetres. */
import type { Drawing, TextDrawing } from '#scenes/drawing';
import { widthOf } from '#scenes/paper-type';

export interface Extent {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const around = (points: readonly (readonly [number, number])[]): Extent => ({
  left: Math.min(...points.map(([x]) => x)),
  right: Math.max(...points.map(([x]) => x)),
  top: Math.min(...points.map(([, y]) => y)),
  bottom: Math.max(...points.map(([, y]) => y))
});

/** Of the letters: from a little below the line to the height of a capital. */
export function textExtent({ at: [x, y], text, size, bold, align }: TextDrawing): Extent {
  const width = widthOf(text, { size, bold: bold ?? false });
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - size * 0.5, bottom: y + size * 0.5 };
}

export function extentOf(drawing: Drawing): Extent {
  switch (drawing.kind) {
    case 'text':
      return textExtent(drawing);
    case 'line':
      return around(drawing.points);
    case 'rings':
      return around(drawing.rings.flat());
    case 'circle': {
      const [x, y] = drawing.at;
      const { radius } = drawing;
      return { left: x - radius, right: x + radius, top: y - radius, bottom: y + radius };
    }
    case 'image': {
      const [x, y] = drawing.at;
      const reach = Math.hypot(drawing.width, drawing.height) / 2;
      return { left: x - reach, right: x + reach, top: y - reach, bottom: y + reach };
    }
  }
}

export const overlap = (a: Extent, b: Extent, tolerance = 0.05): boolean =>
  a.left < b.right - tolerance &&
  b.left < a.right - tolerance &&
  a.top < b.bottom - tolerance &&
  b.top < a.bottom - tolerance;
