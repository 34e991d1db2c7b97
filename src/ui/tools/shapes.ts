/** Plan view of each loop as its saw cuts, in a box of 24 by 24: the icons of the drawing tools. */
import type { ShapeKind } from '#plan/schema';

export const SHAPE_ICONS: Readonly<Record<ShapeKind, readonly string[]>> = {
  rectangle: ['M8 4h8l3 3v10l-3 3H8l-3-3V7z'],
  quadrupole: ['M5 4h14v16H5z', 'M12 4v16'],
  diagonal: ['M5 5h14v14H5z', 'M5 19L19 5'],
  circle: ['M12 4a8 8 0 1 1 0 16a8 8 0 1 1 0-16z'],
  polygon: ['M6 5l11 2l3 8l-8 5l-8-6z']
};

export const isShapeTool = (tool: string): tool is ShapeKind => tool in SHAPE_ICONS;
