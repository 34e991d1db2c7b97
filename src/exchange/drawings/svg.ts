/**
 * Drawings as SVG text: real sizes, texts as texts, nothing of it is ever taken for markup. Only elements and attributes of
 * SVG 1.1 that every viewer knows; no styles, no scripts, nothing that is fetched.
 */
import type { Point } from '#plan/schema';
import type { CircleDrawing, Drawing, LineDrawing, RingsDrawing, Stroke, TextDrawing } from '#scenes/drawing';
import { widthOf } from '#scenes/paper-type';
import { twistedPair } from '#scenes/twist';
import { tintOf } from '../pdf/colour';
import { escaped } from '../xlsx/xml';
import { plainNumber } from './xml-numbers';

export interface Canvas {
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  readonly title: string;
}

/** Drawings that belong together, under a name of plain letters by which a viewer shows or hides them. */
export interface Layer {
  readonly kind: 'layer';
  readonly name: string;
  readonly drawings: readonly Drawing[];
}

/** The typeface of the sheets, then what looks most like it. */
const FAMILY = 'DejaVu Sans, Verdana, Liberation Sans, Arial, sans-serif';
/** From the middle of a line of text down to its baseline, as a share of the type's size: half the height of capitals. */
const MIDDLE_TO_BASELINE = 0.35;
/** Round a text, to the edge of the plate behind it, as a share of the type's size. */
const PLATE = { beside: 0.3, above: 0.72 } as const;
const ANCHORS = { left: 'start', center: 'middle', right: 'end' } as const;
/** What turns, joins or hides the signs beside it, and breaks that a single line cannot have. */
const UNSEEN = /[\p{Cf}\p{Co}\p{Cn}]/gu;
const LONGEST_TEXT = 1000;

const n = plainNumber;

type Attributes = Readonly<Record<string, string | undefined>>;

const element = (name: string, attributes: Attributes, content = ''): string => {
  const written = Object.entries(attributes)
    .flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${escaped(value)}"`]))
    .join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
};

function paint(kind: 'fill' | 'stroke', colour: string | undefined): Attributes {
  if (colour === undefined) return kind === 'fill' ? { fill: 'none' } : {};
  const tint = tintOf(colour);
  return { [kind]: tint.colour, ...(tint.opacity < 1 ? { [`${kind}-opacity`]: n(tint.opacity) } : {}) };
}

const painted = (fill: string | undefined, stroke: Stroke | undefined): Attributes => ({
  ...paint('fill', fill),
  ...paint('stroke', stroke?.colour),
  ...(stroke ? { 'stroke-width': n(stroke.width), 'stroke-dasharray': stroke.dash?.map(n).join(' ') } : {})
});

const way = (points: readonly Point[], closed: boolean): string =>
  points.map(([x, y], k) => `${k === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('') + (closed ? 'Z' : '');

function lineElement({ points, closed = false, fill, stroke }: LineDrawing): string {
  if (points.length < 2) return '';
  const ways = stroke?.twisted ? twistedPair(points) : [points];
  return element('path', { d: ways.map((each) => way(each, closed)).join(''), ...painted(fill, stroke) });
}

function ringsElement({ rings, fill, stroke }: RingsDrawing): string {
  const drawn = rings.filter((ring) => ring.length > 1);
  if (drawn.length === 0) return '';
  return element('path', { d: drawn.map((ring) => way(ring, true)).join(''), ...painted(fill, stroke) });
}

function circleElement({ at, radius, fill, stroke }: CircleDrawing): string {
  if (radius <= 0) return '';
  return element('circle', { cx: n(at[0]), cy: n(at[1]), r: n(radius), ...painted(fill, stroke) });
}

function textElement({ at: [x, y], text, size, bold, align, colour, plate }: TextDrawing): string {
  const shown = text.slice(0, LONGEST_TEXT).replace(/[\s\p{Cc}]+/gu, ' ').replace(UNSEEN, ''); // prettier-ignore
  if (shown.trim() === '') return '';
  const attributes = {
    x: n(x),
    y: n(y + MIDDLE_TO_BASELINE * size),
    'font-size': n(size),
    'font-weight': bold ? 'bold' : undefined,
    'text-anchor': align === 'left' ? undefined : ANCHORS[align],
    ...paint('fill', colour)
  };
  const written = element('text', attributes, escaped(shown));
  if (plate === undefined) return written;
  const width = widthOf(shown, { size, bold: bold ?? false });
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
  const behind = {
    x: n(left - PLATE.beside * size),
    y: n(y - PLATE.above * size),
    width: n(width + 2 * PLATE.beside * size),
    height: n(2 * PLATE.above * size),
    ...paint('fill', plate)
  };
  return element('rect', behind) + written;
}

function drawn(drawing: Drawing | Layer): string {
  switch (drawing.kind) {
    case 'line':
      return lineElement(drawing);
    case 'rings':
      return ringsElement(drawing);
    case 'circle':
      return circleElement(drawing);
    case 'text':
      return textElement(drawing);
    // a picture that is decoded has no file any more that could be put in
    case 'image':
      return '';
    case 'layer': {
      const inside = listed(drawing.drawings);
      return inside === '' ? '' : element('g', { id: drawing.name }, `\n${inside}\n`);
    }
  }
}

const listed = (drawings: readonly (Drawing | Layer)[]): string =>
  drawings.map(drawn).filter(Boolean).join('\n');

/**
 * Drawings in millimetres, y downwards; pictures are left out. Throws RangeError for a colour that is none and for lengths
 * that are no numbers.
 */
export function svgOf(drawings: readonly (Drawing | Layer)[], { width, height, title }: Canvas): string {
  const root = {
    xmlns: 'http://www.w3.org/2000/svg',
    width: `${n(width)}mm`,
    height: `${n(height)}mm`,
    viewBox: `0 0 ${n(width)} ${n(height)}`,
    'font-family': FAMILY
  };
  const name = title.slice(0, LONGEST_TEXT).replace(/[\s\p{Cc}]+/gu, ' ').replace(UNSEEN, '').trim(); // prettier-ignore
  const head = name === '' ? '' : `\n${element('title', {}, escaped(name))}`;
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element('svg', root, `${head}\n${listed(drawings)}\n`)}\n`;
}
