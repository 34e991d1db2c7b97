/** Which plane a picture shows: a section through the loop, or the plan at a height. Metres, degrees. */
import type { FieldPlane } from '#analysis/field-picture/results';
import { add, distance, dot, rotate, scale } from '#plan/geometry/points';
import type { Loop, Point } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround } from '#editor/geometry/box';
import type { LineKind } from './choices.svelte';
import { movedBy, type Ends } from './ends';

export type SectionPlane = Extract<FieldPlane, { kind: 'section' }>;
export type PlanPlane = Extract<FieldPlane, { kind: 'plan' }>;

export interface LineWish {
  readonly line: LineKind;
  readonly angle: number;
  readonly offset: number;
  readonly ends: Ends | null;
  readonly tape: readonly [Point, Point] | null;
}

/** How far a picture reaches beyond the loop, as a share of its size, and at least and at most. */
const BEYOND = { share: 0.75, least: 1.2, most: 3 } as const;
/** How high a section is, as a share of its length, and at least and at most. */
const HEIGHT = { share: 0.45, least: 1.4, most: 4 } as const;
/** How much of that lies under the road at least, and under the slots. */
const UNDER = { share: 0.13, least: 0.16, slot: 0.1 } as const;
/** A line between points nearer than this has no direction. */
const SHORTEST = 0.05;

const clamp = (value: number, { least, most }: { readonly least: number; readonly most: number }): number =>
  Math.min(most, Math.max(least, value));

/** Direction of the line: across looks ahead, along looks to the left. */
const directionOf = ({ line, angle }: LineWish, heading: number): number =>
  line === 'across' ? heading - 90 : line === 'along' ? heading : angle;

/** `heading`: of the traffic at the loop; `middle`: of the loop. */
export function sectionThrough(
  loops: readonly Loop[],
  middle: Point,
  heading: number,
  wish: LineWish
): SectionPlane {
  const [from, to] = lineThrough(loops, middle, heading, wish);
  const height = clamp(HEIGHT.share * distance(from, to), HEIGHT);
  const deepest = Math.max(0, ...loops.map(({ slot }) => slot.depth));
  const low_m = -Math.max(UNDER.share * height, UNDER.least, deepest + UNDER.slot);
  return { kind: 'section', from, to, low_m, high_m: low_m + height };
}

function lineThrough(
  loops: readonly Loop[],
  middle: Point,
  heading: number,
  wish: LineWish
): readonly [Point, Point] {
  const { ends, tape } = wish;
  if (wish.line === 'ends' && ends) return movedBy(ends, middle);
  if (wish.line === 'tape' && tape && distance(...tape) > SHORTEST) return tape;
  const degrees = directionOf(wish, heading);
  const ahead = rotate([1, 0], degrees);
  const start = add(middle, scale(rotate([0, 1], degrees), wish.offset));
  const places = loops.flatMap(({ shape }) =>
    outlineOf(shape).map((point) => dot([point[0] - start[0], point[1] - start[1]], ahead))
  );
  const [first, last] = [Math.min(0, ...places), Math.max(0, ...places)];
  const beyond = clamp(BEYOND.share * (last - first), BEYOND);
  return [add(start, scale(ahead, first - beyond)), add(start, scale(ahead, last + beyond))];
}

/** Null without loops. */
export function planOver(loops: readonly Loop[], z_m: number): PlanPlane | null {
  const box = boxAround(loops.flatMap(({ shape }) => outlineOf(shape)));
  if (!box) return null;
  const beyond = clamp(BEYOND.share * Math.max(box.right - box.left, box.top - box.bottom), BEYOND);
  return {
    kind: 'plan',
    z_m,
    from: [box.left - beyond, box.bottom - beyond],
    to: [box.right + beyond, box.top + beyond]
  };
}

/** So many nodes in all, as far apart along as upwards. */
export function netOf(
  width: number,
  height: number,
  nodes: number
): { readonly columns: number; readonly rows: number } {
  const stretch = Math.sqrt(width / height);
  const count = (factor: number): number => Math.max(6, Math.round(Math.sqrt(nodes) * factor));
  return { columns: count(stretch), rows: count(1 / stretch) };
}
