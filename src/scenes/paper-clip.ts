/**
 * Drawings cut off at an upright box, by geometry: lines end there and areas are closed along its edges, so that whatever
 * puts them on paper or on a screen needs to know nothing of it.
 */
import type { Point } from '#plan/schema';
import { widthOf } from './paper-type';
import { twistedPair } from './twist';
import { shortened } from './drawing';
import type { CircleDrawing, Drawing, LineDrawing, RingsDrawing, Stroke, TextDrawing } from './drawing';

export interface ClipBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Of a circle that the box cuts, as corners. */
const CORNERS = 96;

/** The part of a straight line in the box, by Liang and Barsky (1984); null for one that passes by. */
export function clippedLine(from: Point, to: Point, box: ClipBox): readonly [Point, Point] | null {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const edges = [
    [-dx, from[0] - box.left],
    [dx, box.right - from[0]],
    [-dy, from[1] - box.top],
    [dy, box.bottom - from[1]]
  ] as const;
  let first = 0;
  let last = 1;
  for (const [towards, room] of edges) {
    if (towards === 0 && room < 0) return null;
    if (towards < 0) first = Math.max(first, room / towards);
    if (towards > 0) last = Math.min(last, room / towards);
  }
  if (first > last) return null;
  const at = (share: number): Point =>
    share === 0 ? from : share === 1 ? to : [from[0] + share * dx, from[1] + share * dy];
  return [at(first), at(last)];
}

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** The parts of a line of many points that lie in the box. */
export function clippedWay(points: readonly Point[], box: ClipBox): readonly (readonly Point[])[] {
  const found: Point[][] = [];
  for (let k = 1; k < points.length; k++) {
    const part = clippedLine(points[k - 1]!, points[k]!, box);
    if (!part) continue;
    const last = found.at(-1);
    if (last && same(last.at(-1)!, part[0])) last.push(part[1]);
    else found.push([...part]);
  }
  return found;
}

/** An area, by Sutherland and Hodgman (1974): what is left of it, fewer than three corners for nothing. */
export function clippedArea(points: readonly Point[], box: ClipBox): readonly Point[] {
  const sides: readonly (readonly [0 | 1, number, 1 | -1])[] = [
    [0, box.left, 1],
    [0, box.right, -1],
    [1, box.top, 1],
    [1, box.bottom, -1]
  ];
  return sides.reduce<readonly Point[]>((corners, [axis, limit, sign]) => {
    const isInside = (point: Point): boolean => sign * (point[axis] - limit) >= 0;
    return corners.flatMap((to, k): Point[] => {
      const from = corners[(k || corners.length) - 1]!;
      if (isInside(from) === isInside(to)) return isInside(to) ? [to] : [];
      const share = (limit - from[axis]) / (to[axis] - from[axis]);
      const cut: Point = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
      return isInside(to) ? [cut, to] : [cut];
    });
  }, points);
}

const isWhole = (points: readonly Point[], { left, top, right, bottom }: ClipBox): boolean =>
  points.every(([x, y]) => x >= left && x <= right && y >= top && y <= bottom);

const plainStroke = ({ colour, width, dash }: Stroke): Stroke => ({
  colour,
  width,
  ...(dash ? { dash } : {})
});

function clippedDrawing(drawing: LineDrawing, box: ClipBox): Drawing[] {
  const { points, closed = false, fill, stroke } = drawing;
  if (stroke?.twisted)
    return twistedPair(points).flatMap((wire) =>
      clippedWay(wire, box).map((part): Drawing => ({
        kind: 'line',
        points: part,
        stroke: plainStroke(stroke)
      }))
    );
  if (isWhole(points, box)) return [drawing];
  const corners = fill === undefined ? [] : clippedArea(points, box);
  const way = closed ? [...points, ...points.slice(0, 1)] : points;
  return [
    ...(fill !== undefined && corners.length > 2
      ? [{ kind: 'line', points: corners, closed: true, fill } as const]
      : []),
    ...(stroke ? clippedWay(way, box).map((part): Drawing => ({ kind: 'line', points: part, stroke })) : [])
  ];
}

function clippedRings({ rings, fill, stroke }: RingsDrawing, box: ClipBox): Drawing[] {
  const left = rings.map((ring) => clippedArea(ring, box)).filter((ring) => ring.length > 2);
  return [
    ...(fill !== undefined && left.length > 0 ? [{ kind: 'rings', rings: left, fill } as const] : []),
    ...(stroke
      ? rings.flatMap((ring) =>
          clippedWay([...ring, ...ring.slice(0, 1)], box).map((part): Drawing => ({
            kind: 'line',
            points: part,
            stroke
          }))
        )
      : [])
  ];
}

function clippedCircle(drawing: CircleDrawing, box: ClipBox): Drawing[] {
  const { at, radius, fill, stroke } = drawing;
  const [x, y] = at;
  const square: readonly Point[] = [
    [x - radius, y - radius],
    [x + radius, y + radius]
  ];
  if (isWhole(square, box)) return [drawing];
  const points = Array.from({ length: CORNERS }, (_, k): Point => {
    const angle = (2 * Math.PI * k) / CORNERS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
  return clippedDrawing(
    { kind: 'line', points, closed: true, ...(fill ? { fill } : {}), ...(stroke ? { stroke } : {}) },
    box
  );
}

/** Shortened to what there is room for. */
function fitted(drawing: TextDrawing, room: number): string {
  const { text } = drawing;
  let most = text.length;
  while (most > 1 && widthOf(shortened(text, most), drawing) > room) most = Math.floor(most * 0.9);
  return shortened(text, most);
}

/** How the lines that a text stands among are moved in from the edges: together. */
interface Together {
  /** Of the widest of them. */
  readonly width: number;
  /** How far up. */
  readonly up: number;
}

const ALONE: Together = { width: 0, up: 0 };

/** Shortened to what the box holds, moved in from the edge; left out where it stands outside. */
function clippedText(drawing: TextDrawing, box: ClipBox, { width, up }: Together): Drawing[] {
  const { size, align } = drawing;
  const at: Point = [drawing.at[0], drawing.at[1] - up];
  const half = size / 2;
  const room = box.right - box.left;
  const isOutside = at[0] < box.left || at[0] > box.right || at[1] < box.top || at[1] > box.bottom;
  if (isOutside) return [];
  const taken = Math.min(width, room);
  const before = align === 'left' ? 0 : align === 'right' ? taken : taken / 2;
  const within = (value: number, least: number, most: number) => Math.max(least, Math.min(most, value));
  const x = within(at[0], box.left + before, box.right - taken + before);
  return [
    {
      ...drawing,
      text: fitted(drawing, room),
      at: [x, within(at[1], box.top + half, box.bottom - half)]
    }
  ];
}

/** From one line of a text to the next, as a share of its size, at most: further down another text begins. */
const NEXT_LINE = 2.2;

/** What the last of the lines needs, as far as the first one can go; nothing where the text begins outside. */
function wayUp(lines: readonly TextDrawing[], box: ClipBox): number {
  const [first, last] = [lines[0]!, lines.at(-1)!];
  if (first.at[1] < box.top || first.at[1] > box.bottom) return 0;
  const over = last.at[1] + last.size / 2 - box.bottom;
  return Math.max(0, Math.min(over, first.at[1] - first.size / 2 - box.top));
}

/** Lines of one text, one below the other from the same edge, move together. */
function movedTogether(drawings: readonly Drawing[], box: ClipBox): ReadonlyMap<Drawing, Together> {
  const moved = new Map<Drawing, Together>();
  let lines: TextDrawing[] = [];
  const end = () => {
    const width = Math.max(0, ...lines.map((each) => widthOf(each.text, each)));
    const up = lines.length > 1 ? wayUp(lines, box) : 0;
    for (const each of lines) moved.set(each, { width, up });
    lines = [];
  };
  for (const drawing of drawings) {
    const last = lines.at(-1);
    const goesOn =
      drawing.kind === 'text' && last?.align === drawing.align && last.at[0] === drawing.at[0] &&
      last.at[1] < drawing.at[1] && drawing.at[1] - last.at[1] <= NEXT_LINE * Math.max(last.size, drawing.size); // prettier-ignore
    if (!goesOn) end();
    if (drawing.kind === 'text') lines.push(drawing);
  }
  end();
  return moved;
}

/** Texts are moved in from the edge, and shortened to what the box holds; pictures are left out. */
export function clipped(drawings: readonly Drawing[], box: ClipBox): Drawing[] {
  const moved = movedTogether(drawings, box);
  return drawings.flatMap((drawing): Drawing[] => {
    if (drawing.kind === 'line') return clippedDrawing(drawing, box);
    if (drawing.kind === 'rings') return clippedRings(drawing, box);
    if (drawing.kind === 'circle') return clippedCircle(drawing, box);
    if (drawing.kind === 'image') return [];
    return clippedText(drawing, box, moved.get(drawing) ?? ALONE);
  });
}
