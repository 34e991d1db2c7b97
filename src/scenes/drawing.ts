/**
 * What a layer shows, as plain data in screen pixels: scenes make it, `paint` puts it on a canvas, and tests read it
 * without either.
 */
import type { Point } from '#plan/schema';

export interface Stroke {
  readonly colour: string;
  /** Pixels; never scaled with the zoom. */
  readonly width: number;
  readonly dash?: readonly number[];
  /** Two wires laid round one another instead of one line. */
  readonly twisted?: boolean;
}

export interface LineDrawing {
  readonly kind: 'line';
  readonly points: readonly Point[];
  readonly closed?: boolean;
  readonly fill?: string;
  readonly stroke?: Stroke;
}

export interface CircleDrawing {
  readonly kind: 'circle';
  readonly at: Point;
  readonly radius: number;
  readonly fill?: string;
  readonly stroke?: Stroke;
}

export interface TextDrawing {
  readonly kind: 'text';
  readonly at: Point;
  readonly text: string;
  readonly colour: string;
  /** Pixels. */
  readonly size: number;
  readonly bold?: boolean;
  readonly align: 'left' | 'center' | 'right';
  /** Colour of a plate behind the text. */
  readonly plate?: string;
}

/** Closed outlines drawn as one area: what runs the other way round inside another is a hole. */
export interface RingsDrawing {
  readonly kind: 'rings';
  readonly rings: readonly (readonly Point[])[];
  readonly fill?: string;
  readonly stroke?: Stroke;
}

export interface ImageDrawing {
  readonly kind: 'image';
  readonly image: ImageBitmap;
  /** Its middle. */
  readonly at: Point;
  readonly width: number;
  readonly height: number;
  /** Degrees counter-clockwise. */
  readonly rotation: number;
  readonly opacity: number;
}

export type Drawing = LineDrawing | CircleDrawing | TextDrawing | RingsDrawing | ImageDrawing;

export const line = (points: readonly Point[], stroke: Stroke): LineDrawing => ({
  kind: 'line',
  points,
  stroke
});

export const area = (points: readonly Point[], fill: string, stroke?: Stroke): LineDrawing => ({
  kind: 'line',
  points,
  closed: true,
  fill,
  ...(stroke ? { stroke } : {})
});

/** Corners of an upright rectangle round a point. */
export const boxAt = ([x, y]: Point, halfWidth: number, halfHeight = halfWidth): Point[] => [
  [x - halfWidth, y - halfHeight],
  [x + halfWidth, y - halfHeight],
  [x + halfWidth, y + halfHeight],
  [x - halfWidth, y + halfHeight]
];

/** About how wide a text comes out; good enough to decide where it fits. */
export const textWidth = (text: string, size: number): number => text.length * size * 0.56;

/** Whole, or its beginning with a sign that more was there. */
export const shortened = (text: string, most: number): string => {
  const characters = Array.from(text);
  return characters.length <= most
    ? text
    : `${characters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
};

/** The same drawings with larger or smaller texts; what is laid out round a text must know the scale itself. */
export const withTextsScaled = (drawings: readonly Drawing[], scale: number): readonly Drawing[] =>
  scale === 1
    ? drawings
    : drawings.map((drawing) =>
        drawing.kind === 'text' ? { ...drawing, size: drawing.size * scale } : drawing
      );
