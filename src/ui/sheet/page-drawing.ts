/**
 * A page of the sheet as a picture of vectors, for the screen and for the browser's print. Every text becomes a text node
 * and every number an attribute: nothing in a site can become markup.
 */
import type { Page } from '#exchange/sheet/page';
import type { Point } from '#plan/schema';
import type { CircleDrawing, Drawing, LineDrawing, RingsDrawing, Stroke, TextDrawing } from '#scenes/drawing';
import { widthOf } from '#scenes/paper-type';
import { twistedPair } from '#scenes/twist';
import { SHEET_FONT } from './faces';

const SVG = 'http://www.w3.org/2000/svg';
/** From the middle of a line of text down to its baseline, as a share of the type's size: half the height of capitals. */
const MIDDLE_TO_BASELINE = 0.35;
/** Round a text, to the edge of the plate behind it, as a share of the type's size. */
const PLATE = { beside: 0.3, above: 0.72 } as const;
const ANCHORS = { left: 'start', center: 'middle', right: 'end' } as const;

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Micrometres are finer than any printer. */
const rounded = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 1000) / 1000) : value;

function element<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Attributes
): SVGElementTagNameMap[K] {
  const made = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes))
    if (value !== undefined) made.setAttribute(key, rounded(value));
  return made;
}

const way = (points: readonly Point[], closed: boolean): string =>
  points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${rounded(x)} ${rounded(y)}`).join('') +
  (closed ? 'Z' : '');

const paints = (fill: string | undefined, stroke: Stroke | undefined): Attributes => ({
  fill: fill ?? 'none',
  stroke: stroke?.colour,
  'stroke-width': stroke?.width,
  'stroke-dasharray': stroke?.dash?.length ? stroke.dash.map(rounded).join(' ') : undefined
});

function lineElement({ points, closed = false, fill, stroke }: LineDrawing): SVGElement {
  const ways = stroke?.twisted ? twistedPair(points) : [points];
  return element('path', { d: ways.map((each) => way(each, closed)).join(''), ...paints(fill, stroke) });
}

const ringsElement = ({ rings, fill, stroke }: RingsDrawing): SVGElement =>
  element('path', { d: rings.map((ring) => way(ring, true)).join(''), ...paints(fill, stroke) });

const circleElement = ({ at: [cx, cy], radius, fill, stroke }: CircleDrawing): SVGElement =>
  element('circle', { cx, cy, r: radius, ...paints(fill, stroke) });

function textElements(drawing: TextDrawing): SVGElement[] {
  const { at, text, size, bold, align, colour, plate } = drawing;
  const [x, y] = at;
  const written = element('text', {
    x,
    y: y + MIDDLE_TO_BASELINE * size,
    fill: colour,
    'font-size': size,
    'font-weight': bold ? 700 : undefined,
    'text-anchor': align === 'left' ? undefined : ANCHORS[align]
  });
  written.textContent = text;
  if (plate === undefined) return [written];
  const width = widthOf(text, { size, bold: bold ?? false });
  const left = align === 'left' ? x : align === 'right' ? x - width : x - width / 2;
  const behind = element('rect', {
    x: left - PLATE.beside * size,
    y: y - PLATE.above * size,
    width: width + 2 * PLATE.beside * size,
    height: 2 * PLATE.above * size,
    fill: plate
  });
  return [behind, written];
}

function elements(drawing: Drawing): SVGElement[] {
  switch (drawing.kind) {
    case 'line':
      return [lineElement(drawing)];
    case 'rings':
      return [ringsElement(drawing)];
    case 'circle':
      return [circleElement(drawing)];
    case 'text':
      return textElements(drawing);
    // what lies under the plan is not on paper
    case 'image':
      return [];
  }
}

/** `name`: in words, for whoever cannot see it. */
export function pageElement(page: Page, name: string): SVGSVGElement {
  const { width, height } = page;
  const picture = element('svg', {
    viewBox: `0 0 ${width} ${height}`,
    role: 'img',
    'font-family': SHEET_FONT,
    // letters as far apart as the typeface says, at every size: lines were broken by these widths
    'text-rendering': 'geometricPrecision',
    'stroke-miterlimit': 10,
    'aria-label': name
  });
  picture.append(
    element('rect', { width, height, fill: '#ffffff' }),
    ...page.drawings.flatMap((each) => elements(each))
  );
  return picture;
}
