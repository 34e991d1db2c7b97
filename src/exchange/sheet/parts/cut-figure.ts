/** The cuts of one loop at a round scale: each with its number in the order of sawing, where it starts and where it leads. */
import type { CoreHole, Cut } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import { add, between, distance, scale, subtract } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { area, line, type Drawing } from '#scenes/drawing';
import type { Figure } from '../layout/grid';
import type { Area } from '../layout/frame';
import { INK, LINE, SOFT, TYPE, WHITE } from '../layout/look';
import { written, writtenWithin } from '../layout/writing';
import { clipped } from './clip';
import { placeNumbers } from './cut-numbers';

const SIZE = { width: 56, height: 60 } as const;
const TITLE = 5.5;
/** Free round the cuts, for their numbers. */
const AROUND = 9;
const SCALES = [10, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 300, 500, 1000, 2000, 5000, 10_000] as const;
const CUT = { colour: INK, width: LINE.strong };
const THIN = { colour: SOFT, width: LINE.hair };

interface Box {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

function boxOf(cuts: readonly Cut[]): Box {
  const own = cuts.filter(({ kind }) => kind !== 'home run');
  const points = (own.length > 0 ? own : cuts).flatMap(({ from, to, circle }): Point[] =>
    circle
      ? [
          [circle.centre[0] - circle.radius, circle.centre[1] - circle.radius],
          [circle.centre[0] + circle.radius, circle.centre[1] + circle.radius]
        ]
      : [from, to]
  );
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
}

function scaleFor({ left, right, bottom, top }: Box): number {
  const room = { width: SIZE.width - 2 * AROUND, height: SIZE.height - TITLE - 2 * AROUND };
  return (
    SCALES.find(
      (each) => ((right - left) * 1000) / each <= room.width && ((top - bottom) * 1000) / each <= room.height
    ) ?? SCALES.at(-1)!
  );
}

function arrowhead(tip: Point, ahead: Point): Drawing {
  const [x, y] = ahead;
  const back = (side: number): Point => [
    tip[0] - 1.8 * x - side * 0.7 * y,
    tip[1] - 1.8 * y + side * 0.7 * x
  ];
  return area([tip, back(1), back(-1)], INK);
}

function straight(cut: Cut, place: (point: Point) => Point, frame: Area): Drawing[] {
  const [from, to] = [place(cut.from), place(cut.to)];
  const part = clipped(from, to, frame);
  const length = distance(from, to);
  if (!part || length === 0) return [];
  const ahead = scale(subtract(to, from), 1 / length);
  const perMetre = length / Math.max(cut.length, 1e-9);
  const past = (end: Point, metres: number): Drawing[] => {
    const over = metres === 0 ? null : clipped(end, add(end, scale(ahead, metres * perMetre)), frame);
    return over ? [line(over, THIN)] : [];
  };
  const seen = distance(...part);
  return [
    line(part, CUT),
    ...past(from, -cut.overcut.from),
    ...past(to, cut.overcut.to),
    ...(seen > 3 ? [arrowhead(add(between(...part), scale(ahead, 0.9)), ahead)] : []),
    { kind: 'circle', at: part[0], radius: 0.5, fill: INK }
  ];
}

function round(cut: Cut, place: (point: Point) => Point, perMetre: number): Drawing[] {
  const { centre, radius } = cut.circle!;
  return [
    { kind: 'circle', at: place(centre), radius: radius * perMetre, stroke: CUT },
    { kind: 'circle', at: place(cut.from), radius: 0.5, fill: INK }
  ];
}

const isSeen = (frame: Area, cut: Cut, place: (point: Point) => Point): boolean =>
  cut.circle !== null || clipped(place(cut.from), place(cut.to), frame) !== null;

/** `cuts`: of one loop, its home run and what it shares included. */
export function cutFigure(name: string, cuts: readonly Cut[], holes: readonly CoreHole[]): Figure {
  const box = boxOf(cuts);
  const scaleOf = scaleFor(box);
  const perMetre = 1000 / scaleOf;
  return {
    ...SIZE,
    draw: (left, top) => {
      const frame: Area = { left, top: top + TITLE, width: SIZE.width, height: SIZE.height - TITLE };
      const middle: Point = [left + SIZE.width / 2, top + TITLE + (SIZE.height - TITLE) / 2];
      const place = ([x, y]: Point): Point => [
        middle[0] + (x - (box.left + box.right) / 2) * perMetre,
        middle[1] - (y - (box.bottom + box.top) / 2) * perMetre
      ];
      const seen = cuts.filter((cut) => isSeen(frame, cut, place));
      const room = SIZE.width - 16;
      return [
        ...writtenWithin(name, [left, top + 2], room, { size: TYPE.text, bold: true }),
        written(t('sheet.scaleOf', { scale: `1:${scaleOf}` }), [left + SIZE.width, top + 2], {
          size: TYPE.small,
          colour: SOFT,
          align: 'right'
        }),
        ...seen.flatMap((cut) => (cut.circle ? round(cut, place, perMetre) : straight(cut, place, frame))),
        ...holes.map(({ at, diameter }): Drawing => ({
          kind: 'circle',
          at: place(at),
          radius: Math.max(0.5, (diameter / 2) * perMetre),
          fill: WHITE,
          stroke: CUT
        })),
        ...placeNumbers(seen, place, perMetre, frame, middle)
      ];
    }
  };
}
