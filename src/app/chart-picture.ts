/**
 * A chart of the page as a picture that stands by itself: SVG 1.1 with every look written out, without styles, scripts or
 * references to anything else, light whatever the page is.
 */
const SVG = 'http://www.w3.org/2000/svg';

/** What a look is made of, as SVG knows it by attributes. */
const LOOKS = [
  'fill',
  'fill-opacity',
  'fill-rule',
  'stroke',
  'stroke-width',
  'stroke-opacity',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'opacity',
  'paint-order',
  'clip-path',
  'marker-start',
  'marker-end',
  'image-rendering',
  'font-size',
  'font-weight',
  'font-style',
  'text-anchor',
  'dominant-baseline'
] as const;
/** Looks of texts alone. */
const OF_TEXT = /^(?:font-|text-|dominant-)/;

/** What most viewers take to hold where nothing is said. */
const USUAL: Readonly<Partial<Record<(typeof LOOKS)[number], string>>> = {
  'fill-opacity': '1',
  'fill-rule': 'nonzero',
  'stroke-width': '1px',
  'stroke-opacity': '1',
  'stroke-linecap': 'butt',
  'stroke-linejoin': 'miter',
  'stroke-dasharray': 'none',
  opacity: '1',
  'paint-order': 'normal',
  'clip-path': 'none',
  'marker-start': 'none',
  'marker-end': 'none',
  'image-rendering': 'auto',
  'font-style': 'normal',
  'text-anchor': 'start',
  'dominant-baseline': 'auto'
};
/** Attributes that mean something outside the page. */
// prettier-ignore
const KEPT = new Set([
  'id', 'x', 'y', 'x1', 'y1', 'x2', 'y2', 'dx', 'dy', 'cx', 'cy', 'r', 'rx', 'ry', 'width', 'height',
  'd', 'points', 'transform', 'viewBox', 'preserveAspectRatio', 'offset', 'gradientUnits',
  'gradientTransform', 'patternUnits', 'patternTransform', 'clipPathUnits', 'markerWidth',
  'markerHeight', 'markerUnits', 'refX', 'refY', 'orient', 'textLength', 'lengthAdjust'
]);
/** Never part of a picture, whatever stands in it. */
const DROPPED = new Set(['script', 'style', 'foreignObject', 'animate', 'set', 'animateTransform']);
/** Marked in a chart: what only helps a hand on the screen, such as the line under a pointer. */
const SCREEN_ONLY = 'data-screen-only';
const TYPEFACES = 'system-ui, "DejaVu Sans", Arial, sans-serif';

export interface ChartPicture {
  readonly text: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
}

const byte = (share: number): string =>
  Math.round(Math.min(1, Math.max(0, share)) * 255)
    .toString(16)
    .padStart(2, '0');

/** A colour as the page computed it, in the form that every viewer knows, and how opaque it is. */
export function plainColour(computed: string): { readonly colour: string; readonly opacity: number } {
  const found = /^(?:rgba?|color)\((srgb\s+)?([^)]*)\)$/.exec(computed);
  if (!found) return { colour: computed, opacity: 1 };
  const [red = 0, green = 0, blue = 0, alpha = 1] = found[2]!
    .split(/[\s,/]+/)
    .filter((part) => part !== '')
    .map(Number);
  const whole = found[1] === undefined ? 255 : 1;
  return { colour: `#${[red, green, blue].map((part) => byte(part / whole)).join('')}`, opacity: alpha };
}

/** `url("https://…#hatch")` as `url(#hatch)`; what stands elsewhere is nothing. */
const ownReference = (value: string): string => {
  const name = /url\(["']?[^"')]*#([^"')]+)["']?\)/.exec(value)?.[1];
  return name === undefined ? 'none' : `url(#${name})`;
};

function writeColour(to: Element, name: 'fill' | 'stroke', computed: string): void {
  if (computed.startsWith('url(')) {
    to.setAttribute(name, ownReference(computed));
    return;
  }
  const { colour, opacity } = plainColour(computed);
  to.setAttribute(name, colour);
  if (opacity < 1) {
    const own = Number(to.getAttribute(`${name}-opacity`) ?? '1');
    to.setAttribute(`${name}-opacity`, String(Number((own * opacity).toFixed(3))));
  }
}

function writeLook(to: Element, look: CSSStyleDeclaration): void {
  const isText = to.localName === 'text' || to.localName === 'tspan';
  for (const name of LOOKS) {
    if (!isText && OF_TEXT.test(name)) continue;
    const value = look.getPropertyValue(name);
    if (name === 'fill' || name === 'stroke' || value === '' || value === USUAL[name]) continue;
    to.setAttribute(name, value.startsWith('url(') ? ownReference(value) : value.replaceAll('px', ''));
  }
  writeColour(to, 'fill', look.fill);
  if (look.stroke !== 'none') writeColour(to, 'stroke', look.stroke);
}

function copied(from: Element): Element | null {
  const name = from.localName;
  if (from.namespaceURI !== SVG || DROPPED.has(name) || from.hasAttribute(SCREEN_ONLY)) return null;
  const look = getComputedStyle(from);
  if (look.display === 'none' || look.visibility === 'hidden') return null;
  const to = document.createElementNS(SVG, name === 'a' ? 'g' : name);
  for (const { name: key, value } of from.attributes) if (KEPT.has(key)) to.setAttribute(key, value);
  const target = from.getAttribute('href') ?? '';
  if ((name === 'use' && target.startsWith('#')) || (name === 'image' && target.startsWith('data:image/png')))
    to.setAttribute('href', target);
  if (name === 'stop') {
    const { colour, opacity } = plainColour(look.getPropertyValue('stop-color'));
    to.setAttribute('stop-color', colour);
    if (opacity < 1) to.setAttribute('stop-opacity', String(opacity));
  } else if (name !== 'title' && name !== 'desc' && name !== 'defs') writeLook(to, look);
  for (const child of from.childNodes) {
    if (child instanceof Element) {
      const kept = copied(child);
      if (kept) to.append(kept);
    } else if (child instanceof Text && /\S/.test(child.data)) to.append(child.data);
  }
  return to;
}

/** The picture in its light look, read off without the page being drawn in between. */
function inLight<T>(svg: SVGSVGElement, read: () => T): T {
  const { colorScheme, backgroundColor } = svg.style;
  svg.style.colorScheme = 'light';
  svg.style.backgroundColor = 'var(--surface, white)';
  try {
    return read();
  } finally {
    svg.style.colorScheme = colorScheme;
    svg.style.backgroundColor = backgroundColor;
    if (svg.getAttribute('style') === '') svg.removeAttribute('style');
  }
}

/** A box is kept in single precision. */
const neat = (length: number): number => Number(length.toFixed(3));

/** `title`: what the picture shows, for those who read it with a screen reader. Throws for a picture without a size. */
export function chartPicture(svg: SVGSVGElement, title: string): ChartPicture {
  const shown = svg.getBoundingClientRect();
  const box = svg.viewBox.baseVal;
  const hasBox = svg.hasAttribute('viewBox') && box.width > 0 && box.height > 0;
  const [x, y] = hasBox ? [neat(box.x), neat(box.y)] : [0, 0];
  const [width, height] = hasBox ? [neat(box.width), neat(box.height)] : [shown.width, shown.height];
  if (!(width > 0 && height > 0)) throw new Error('the picture is not shown');
  return inLight(svg, () => {
    const picture = copied(svg);
    if (!picture) throw new Error('the picture is not shown');
    const paper = document.createElementNS(SVG, 'rect');
    const sizes = { x, y, width, height };
    for (const [key, value] of Object.entries(sizes)) paper.setAttribute(key, String(value));
    paper.setAttribute('fill', plainColour(getComputedStyle(svg).backgroundColor).colour);
    const name = document.createElementNS(SVG, 'title');
    name.append(title);
    picture.prepend(name, paper);
    picture.setAttribute('viewBox', `${x} ${y} ${width} ${height}`);
    picture.setAttribute('width', String(shown.width || width));
    picture.setAttribute('height', String(shown.height || height));
    picture.setAttribute('font-family', TYPEFACES);
    // without a declaration it is UTF-8
    const text = `${new XMLSerializer().serializeToString(picture)}\n`;
    return { text, width: shown.width || width, height: shown.height || height };
  });
}
