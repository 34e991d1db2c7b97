/** Numbers of cuts in small circles beside them, clear of each other. Millimetres. */
import type { Cut } from '#analysis/takeoff/results';
import { add, between, distance, scale, subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { line, type Drawing } from '#scenes/drawing';
import type { Area } from '../layout/frame';
import { INK, LINE, SOFT, TYPE, WHITE } from '../layout/look';
import { written } from '../layout/writing';
import { clipped } from './clip';
import { widthOf } from '#scenes/paper-type';

const HAND = { size: TYPE.small } as const;
/** Where along the cut a number may stand, and how far off it. */
const SHARES = [0.3, 0.7, 0.5, 0.15, 0.85] as const;
const OFFS = [3.2, 5.6, 8] as const;

interface Spot {
  readonly foot: Point;
  readonly at: Point;
}

/** The unit vector across a cut that leads away from the middle. */
function outwards(from: Point, to: Point, middle: Point): Point {
  const along = subtract(to, from);
  const length = Math.hypot(...along) || 1;
  const across: Point = [-along[1] / length, along[0] / length];
  const away = subtract(between(from, to), middle);
  return across[0] * away[0] + across[1] * away[1] < 0 ? scale(across, -1) : across;
}

function spotsOf(
  cut: Cut,
  place: (point: Point) => Point,
  perMetre: number,
  frame: Area,
  middle: Point
): readonly Spot[] {
  if (cut.circle) {
    const centre = place(cut.circle.centre);
    const radius = cut.circle.radius * perMetre;
    return [45, 135, 225, 315].flatMap((degrees) =>
      OFFS.map((off) => {
        const ray: Point = [Math.cos((degrees * Math.PI) / 180), -Math.sin((degrees * Math.PI) / 180)];
        return { foot: add(centre, scale(ray, radius)), at: add(centre, scale(ray, radius + off)) };
      })
    );
  }
  const part = clipped(place(cut.from), place(cut.to), frame);
  if (!part) return [];
  const out = outwards(...part, middle);
  return [1, -1].flatMap((side) =>
    OFFS.flatMap((off) =>
      SHARES.map((share) => {
        const foot = between(...part, share);
        return { foot, at: add(foot, scale(out, side * off)) };
      })
    )
  );
}

const isWithin = ({ left, top, width, height }: Area, [x, y]: Point, margin: number): boolean =>
  x >= left + margin && x <= left + width - margin && y >= top + margin && y <= top + height - margin;

/** A number that finds no place is left out: the table has it. */
export function placeNumbers(
  cuts: readonly Cut[],
  place: (point: Point) => Point,
  perMetre: number,
  frame: Area,
  middle: Point
): Drawing[] {
  const taken: { readonly at: Point; readonly radius: number }[] = [];
  return cuts.flatMap((cut): Drawing[] => {
    const text = String(cut.order);
    const radius = Math.max(1.8, widthOf(text, HAND) / 2 + 0.6);
    const spot = spotsOf(cut, place, perMetre, frame, middle).find(
      ({ at }) =>
        isWithin(frame, at, radius) &&
        taken.every((other) => distance(other.at, at) >= other.radius + radius + 0.2)
    );
    if (!spot) return [];
    taken.push({ at: spot.at, radius });
    return [
      line([spot.foot, spot.at], { colour: SOFT, width: LINE.hair }),
      { kind: 'circle', at: spot.at, radius, fill: WHITE, stroke: { colour: INK, width: LINE.hair } },
      written(text, spot.at, { ...HAND, align: 'center' })
    ];
  });
}
