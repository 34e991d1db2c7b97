/**
 * Lines of another drawing beneath the plan. A few of them are drawn as they are; thousands would take longer than a frame
 * has, and are shown by a tile that somebody drew of them beforehand.
 */
import { planToScreen, screenToPlan } from '#editor/viewport';
import type { Viewport } from '#editor/types';
import type { Lines, Point, Underlay } from '#plan/schema';
import { pixelOnPlan, pixelUnder } from '#plan/underlays';
import { line, type Drawing } from './drawing';
import type { Theme } from './theme';

/** A part of a drawing, in its own unit from its upper left corner. */
export interface Part {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface LineTile {
  readonly image: ImageBitmap;
  readonly part: Part;
  /** Pixels of the tile for one unit of the drawing. */
  readonly fineness: number;
}

/** From the coarse one of the whole to the fine one of what is looked at. */
export type LineTiles = ReadonlyMap<Lines, readonly LineTile[]>;

/** Points that are drawn in one frame as they are. */
const AS_THEY_ARE = 8_000;
/** Pixels between two points that are both seen. */
const APART = 0.6;
const WIDTH = 1;
/** How much coarser than the screen a tile may be and still count as fine. */
const FINE = 0.9;

/** Left, top, right and bottom of every path. */
const BOXES = new WeakMap<Lines, Float64Array>();

function boxesOf(lines: Lines): Float64Array {
  const known = BOXES.get(lines);
  if (known) return known;
  const boxes = new Float64Array(lines.paths.length * 4);
  lines.paths.forEach((path, index) => {
    let [left, top] = path[0]!;
    let [right, bottom] = [left, top];
    for (const [x, y] of path) {
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
    boxes.set([left, top, right, bottom], index * 4);
  });
  BOXES.set(lines, boxes);
  return boxes;
}

/** Paths that may have a point in the part. */
export function pathsIn(lines: Lines, { left, top, width, height }: Part): readonly (readonly Point[])[] {
  const boxes = boxesOf(lines);
  return lines.paths.filter(
    (_, index) =>
      boxes[index * 4]! <= left + width &&
      boxes[index * 4 + 2]! >= left &&
      boxes[index * 4 + 1]! <= top + height &&
      boxes[index * 4 + 3]! >= top
  );
}

/** What of the drawing is in sight, a little more where it lies turned; null for nothing. */
export function partInSight(underlay: Underlay, view: Viewport): Part | null {
  const { lines } = underlay;
  if (!lines) return null;
  const corners = ([[0, 0], [view.width, 0], [view.width, view.height], [0, view.height]] as const) // prettier-ignore
    .map((corner) => pixelUnder(underlay, screenToPlan(view, corner)));
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const left = Math.max(0, Math.min(...xs));
  const top = Math.max(0, Math.min(...ys));
  const width = Math.min(lines.width, Math.max(...xs)) - left;
  const height = Math.min(lines.height, Math.max(...ys)) - top;
  return width >= 0 && height >= 0 ? { left, top, width, height } : null;
}

/** The path without points that nobody could tell from the one before. */
export function thinned(points: readonly Point[], apart = APART): Point[] {
  const kept: Point[] = [];
  let last: Point | undefined;
  points.forEach((point, index) => {
    const isEnd = index === points.length - 1;
    if (last && !isEnd && Math.abs(point[0] - last[0]) < apart && Math.abs(point[1] - last[1]) < apart)
      return;
    kept.push(point);
    last = point;
  });
  return kept;
}

const pointsOf = (paths: readonly (readonly Point[])[]): number =>
  paths.reduce((sum, path) => sum + path.length, 0);

/** Whether so much of it is in sight that it wants tiles. */
export function wantsTiles(underlay: Underlay, view: Viewport): boolean {
  const part = partInSight(underlay, view);
  return part !== null && pointsOf(pathsIn(underlay.lines!, part)) > AS_THEY_ARE;
}

/** A colour that lets so much of what is beneath it through; one that is let through already stays as it is. */
export function withOpacity(colour: string, opacity: number): string {
  const hex = /^#([0-9a-f]{6})$/i.exec(colour)?.[1];
  if (hex !== undefined)
    return `#${hex}${Math.round(opacity * 255)
      .toString(16)
      .padStart(2, '0')}`;
  const parts = /^rgb\(([^/)]+)\)$/.exec(colour)?.[1];
  return parts === undefined ? colour : `rgba(${parts}, ${opacity})`;
}

const holds = (outer: Part, inner: Part): boolean =>
  outer.left <= inner.left &&
  outer.top <= inner.top &&
  outer.left + outer.width >= inner.left + inner.width &&
  outer.top + outer.height >= inner.top + inner.height;

/** The one that is fine enough for the screen and shows all that is in sight, else the coarse one. */
export function tileFor(
  tiles: readonly LineTile[],
  sight: Part,
  pixelsPerUnit: number
): LineTile | undefined {
  const fine = tiles.find(
    ({ part, fineness }) =>
      holds(part, sight) && fineness >= pixelsPerUnit * FINE && fineness <= pixelsPerUnit * 3
  );
  return fine ?? tiles[0];
}

function tileDrawing(underlay: Underlay, { image, part }: LineTile, view: Viewport): Drawing {
  const scale = underlay.metresPerPixel * view.scale;
  const middle: Point = [part.left + part.width / 2, part.top + part.height / 2];
  return {
    kind: 'image',
    image,
    at: planToScreen(view, pixelOnPlan(underlay, middle)),
    width: part.width * scale,
    height: part.height * scale,
    rotation: underlay.rotation,
    opacity: underlay.opacity
  };
}

/** The paths as they are, on the screen. */
function pathDrawings(
  underlay: Underlay,
  paths: readonly (readonly Point[])[],
  view: Viewport,
  theme: Theme
): Drawing[] {
  const stroke = { colour: withOpacity(theme.inkSoft, underlay.opacity), width: WIDTH };
  const origin = planToScreen(view, pixelOnPlan(underlay, [0, 0]));
  const scale = underlay.metresPerPixel * view.scale;
  const angle = (underlay.rotation * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle) * scale, Math.sin(angle) * scale];
  // both run downwards: a turn counter-clockwise on the plan is one on the screen, too
  const place = ([x, y]: Point): Point => [origin[0] + x * cos + y * sin, origin[1] - x * sin + y * cos];
  return paths.map((path) => line(thinned(path.map(place)), stroke));
}

/** `tiles`: none where somebody else than a screen looks, who gets every line. */
export function linesDrawings(
  underlay: Underlay,
  view: Viewport,
  theme: Theme,
  tiles: LineTiles | undefined
): Drawing[] {
  const part = partInSight(underlay, view);
  if (!part) return [];
  const paths = pathsIn(underlay.lines!, part);
  if (!tiles || pointsOf(paths) <= AS_THEY_ARE) return pathDrawings(underlay, paths, view, theme);
  const tile = tileFor(tiles.get(underlay.lines!) ?? [], part, underlay.metresPerPixel * view.scale);
  return tile ? [tileDrawing(underlay, tile, view)] : [];
}
