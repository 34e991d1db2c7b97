/** Where everything of a field's picture goes, in pixels: both axes have one scale. Pure. */
import { scaleLinear } from 'd3-scale';
import type { FieldPicture } from '#analysis/field-picture/results';
import type { Point } from '#plan/schema';
import type { PlaneEdges } from './frame';

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Pixels per metre. */
  readonly scale: number;
  readonly isLegendBeside: boolean;
  readonly legend: { readonly x: number; readonly y: number; readonly width: number };
  /** Of the signs, in a legend that stands below and has no room for them beside its steps. */
  readonly signColumns: 1 | 2;
}

/** Pixels at the usual size of texts. */
const MARGIN = { left: 44, right: 12, top: 18, bottom: 26 } as const;
const LEGEND = { beside: 168, gap: 16, low: 66, high: 60, sign: 16 } as const;
/** From here on the legend stands beside the picture, whatever that takes from it. */
const WIDE = 780;
/** A sign and its words. */
const SIGN = 150;
const MOST_SIGNS = 4;
/** From here on a legend below has its signs beside its steps. */
export const SIGNS_BESIDE = 500;

export interface Room {
  readonly width: number;
  /** The most that the picture itself may be high. */
  readonly height: number;
  /** How large texts are, 1 as usual. */
  readonly text: number;
  readonly legendRows: number;
}

export function layoutOf(edges: PlaneEdges, { width, height, text, legendRows }: Room): Layout {
  const left = MARGIN.left * text;
  const top = MARGIN.top * text;
  const beside = (LEGEND.beside + LEGEND.gap) * text;
  const [across, upwards] = [edges.right - edges.left, edges.top - edges.bottom];
  const whole = width - left - MARGIN.right;
  const isLegendBeside = width >= WIDE * text || whole - (height / upwards) * across >= beside;
  const room = Math.max(40, whole - (isLegendBeside ? beside : 0));
  const scale = Math.min(room / across, height / upwards);
  const right = left + scale * across;
  const bottom = top + scale * upwards;
  const foot = bottom + MARGIN.bottom * text;
  const legend = isLegendBeside
    ? { x: right + LEGEND.gap * text, y: top, width: LEGEND.beside * text }
    : { x: left, y: foot + 6, width: Math.max(80, whole) };
  const signColumns = whole >= 2 * SIGN * text ? 2 : 1;
  const high = LEGEND.high + (LEGEND.sign * MOST_SIGNS) / signColumns;
  const below = (width >= SIGNS_BESIDE * text ? LEGEND.low : high) * text;
  const total = isLegendBeside ? Math.max(foot, top + legendRows * 16 * text) : foot + below;
  return { width, height: total, left, right, top, bottom, scale, isLegendBeside, legend, signColumns };
}

export interface Places {
  readonly x: (u: number) => number;
  readonly y: (v: number) => number;
}

export const placesIn = (edges: PlaneEdges, { left, bottom, scale }: Layout): Places => ({
  x: (u) => left + (u - edges.left) * scale,
  y: (v) => bottom - (v - edges.bottom) * scale
});

/** Round places in a unit of so many metres, `pixels` apart at least. */
export function ticksOf(
  from: number,
  to: number,
  metres: number,
  scale: number,
  pixels: number
): readonly number[] {
  const count = Math.max(2, Math.floor(((to - from) * scale) / pixels));
  return scaleLinear([from / metres, to / metres], [0, 1])
    .ticks(count)
    .map((tick) => tick * metres);
}

/** Tenths of a pixel. */
export const pathOf = (points: readonly Point[], { x, y }: Places, isClosed = false): string =>
  points.map(([u, v], k) => `${k === 0 ? 'M' : 'L'}${x(u).toFixed(1)} ${y(v).toFixed(1)}`).join('') +
  (isClosed ? 'Z' : '');

export const ringsPath = (rings: readonly (readonly Point[])[], places: Places): string =>
  rings.map((ring) => pathOf(ring, places, true)).join('');

export interface Arrow {
  readonly at: Point;
  /** Radians on the screen, clockwise from the right. */
  readonly turn: number;
}

/** Pixels: the first arrowhead of a line, and how far apart they are. */
const FIRST_ARROW = 50;
const NEXT_ARROW = 150;
/** Shorter lines run round a wire's sign, which says the same. */
const SHORT = 75;

/** Heads along a line of pixels; a short line has one in its middle. */
export function arrowsAlong(points: readonly Point[]): readonly Arrow[] {
  const steps = points.slice(1).map((to, k) => Math.hypot(to[0] - points[k]![0], to[1] - points[k]![1]));
  const whole = steps.reduce((sum, step) => sum + step, 0);
  if (whole < SHORT) return [];
  const arrows: Arrow[] = [];
  let next = whole < 2 * FIRST_ARROW ? whole / 2 : FIRST_ARROW;
  let gone = 0;
  steps.forEach((step, k) => {
    while (step > 0 && next <= gone + step) {
      const [from, to] = [points[k]!, points[k + 1]!];
      const share = (next - gone) / step;
      arrows.push({
        at: [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])],
        turn: Math.atan2(to[1] - from[1], to[0] - from[0])
      });
      next += NEXT_ARROW;
    }
    gone += step;
  });
  return arrows;
}

/** A head with its tip ahead of the place. */
export function arrowHead({ at: [x, y], turn }: Arrow, size: number): string {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const at = (ahead: number, beside: number): string =>
    `${(x + ahead * c - beside * s).toFixed(1)} ${(y + ahead * s + beside * c).toFixed(1)}`;
  return `M${at(size, 0)}L${at(-0.7 * size, 0.7 * size)}L${at(-0.7 * size, -0.7 * size)}Z`;
}

export interface WireSign {
  readonly u: number;
  readonly v: number;
  /** Of all of them together; positive towards the viewer. */
  readonly current: number;
  readonly count: number;
}

/** Wires that would run together on the screen are one sign; `apart` in metres. */
export function wireSigns(wires: FieldPicture['wires'], apart: number): readonly WireSign[] {
  const groups: { u: number; v: number; current: number; count: number }[] = [];
  for (const { u, v, current } of wires) {
    const near = groups.find(
      (group) =>
        Math.sign(group.current) === Math.sign(current) &&
        Math.hypot(group.u / group.count - u, group.v / group.count - v) < apart
    );
    if (near) {
      near.u += u;
      near.v += v;
      near.current += current;
      near.count += 1;
    } else groups.push({ u, v, current, count: 1 });
  }
  return groups.map(({ u, v, current, count }) => ({ u: u / count, v: v / count, current, count }));
}
