/** The line that stations and offsets are measured from, as it lies on the plan, with a stroke at every round station. */
import type { CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import { add, between, distance, scale as scaled, subtract } from '#plan/geometry/points';
import { directionAt, pointAt, stationed } from '#plan/geometry/stations';
import type { DisplayUnits, Point } from '#plan/schema';
import { line, type Drawing, type LineDrawing } from '#scenes/drawing';
import { scaleText } from '#scenes/furniture';
import { gridStep } from '#units/plan-steps';
import type { Area } from '../layout/frame';
import { INK, LINE, TYPE, WHITE } from '../layout/look';
import { written } from '../layout/writing';
import { clean } from '../text/clean';
import { widthOf } from '#scenes/paper-type';
import { shortened } from '../text/wrap';
import { clipped } from './clip';
import { covered, isOver } from './covered';

/** Millimetres between two strokes, at least; half the length of a stroke. */
const APART = 12;
const STROKE = 1.4;
/** From the line to the middle of what is written beside it. */
const BESIDE = 4.2;
/** Along the line, how far from its stroke a station may be written, the best first. */
const ASIDE = [0, 2.5, -2.5] as const;
/** More strokes than this nobody measures by. */
const MOST_STROKES = 400;
const NAME = { size: TYPE.small, bold: true } as const;

export interface OnPaper {
  readonly area: Area;
  readonly scale: number;
  /** Millimetres of a point of the plan. */
  readonly place: (point: Point) => Point;
  readonly units: DisplayUnits;
  /** Whether a text would hide nothing that is drawn or written already. */
  readonly isFree: (drawing: Drawing) => boolean;
}

const holds = (area: Area, [x, y]: Point, margin: number): boolean =>
  x >= area.left + margin &&
  x <= area.left + area.width - margin &&
  y >= area.top + margin &&
  y <= area.top + area.height - margin;

const isAnyOver = (some: readonly Drawing[], one: Drawing): boolean =>
  covered(one).some((own) => some.flatMap(covered).some((other) => isOver(own, other)));

const plated = (text: string, at: Point, hand: Parameters<typeof written>[2]): Drawing => ({
  ...written(text, at, hand),
  ...{ plate: WHITE }
});

export function baselineDrawings({ baseline }: CuttingPlan, paper: OnPaper): Drawing[] {
  const way = baseline && stationed(baseline.points);
  if (!way) return [];
  const { area, scale, place, units, isFree } = paper;
  const stroke = { colour: INK, width: LINE.normal, dash: [5, 1.2, 0.8, 1.2] };
  const points = way.points.map(place);
  const lines = points.slice(1).flatMap((to, k) => {
    const part = clipped(points[k]!, to, area);
    return part ? [line(part, stroke)] : [];
  });
  if (lines.length === 0) return [];
  const name = nameDrawing(t('sheet.baseline', { name: clean(baseline.name) }), lines, paper);
  const step = gridStep((APART * scale) / 1000, units);
  const count = Math.min(MOST_STROKES, Math.floor(way.length / step + 1e-9));
  const strokes = Array.from({ length: count + 1 }, (_, k) => k * step).flatMap((station): Drawing[] => {
    const at = place(pointAt(way, station));
    if (!holds(area, at, 4)) return [];
    const [x, y] = directionAt(way, station);
    const end = (side: number): Point => [at[0] + side * STROKE * y, at[1] + side * STROKE * x];
    const text = station === 0 ? t('sheet.start') : scaleText(station, units);
    // the stroke is there in any case: a text that would hide a cut says less than the cut
    const said = ASIDE.flatMap((ahead) =>
      [1, -1].map((side): Point => [
        at[0] + side * BESIDE * y + ahead * x,
        at[1] + side * BESIDE * x - ahead * y
      ])
    )
      .filter((beside) => holds(area, beside, 6))
      .map((beside) => plated(text, beside, { size: TYPE.small, align: 'center' }))
      .find((each) => isFree(each) && !isAnyOver(name, each));
    return [line([end(-1), end(1)], { colour: INK, width: LINE.normal }), ...(said ? [said] : [])];
  });
  return [...lines, ...strokes, ...name];
}

const within = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));

/** Along a part of the line, where its name may stand beside it. */
const SHARES = [0.1, 0.3, 0.5, 0.7, 0.9] as const;

/**
 * Where the name may stand, the best first: before the start of what is seen of the line, as far inside as it takes; beyond
 * its end; beside it. `half`: half of the name's width.
 */
function namePlaces(lines: readonly LineDrawing[], half: number, area: Area): readonly Point[] {
  const inside = ([x, y]: Point): Point => [
    within(x, area.left + half, area.left + area.width - half),
    within(y, area.top + 3, area.top + area.height - 3)
  ];
  const parts = lines.map(({ points }) => points as readonly [Point, Point]);
  const beyond = (end: Point, before: Point): Point => {
    const [x, y] = scaled(subtract(end, before), 1 / (distance(end, before) || 1));
    return inside([end[0] + x * (half + 2), end[1] + y * 4]);
  };
  const beside = parts.flatMap(([from, to]) => {
    const [x, y] = scaled(subtract(to, from), 1 / (distance(from, to) || 1));
    const off = Math.abs(y) * (half + 2) + Math.abs(x) * BESIDE;
    return SHARES.flatMap((share) =>
      [1, -1].map((side) => inside(add(between(from, to, share), [-side * y * off, side * x * off])))
    );
  });
  const [start, end] = [parts[0]!, parts.at(-1)!];
  return [beyond(start[0], start[1]), beyond(end[1], end[0]), ...beside];
}

/** Left out where it would hide something wherever it stood: the table of cuts says it too. */
function nameDrawing(name: string, lines: readonly LineDrawing[], { area, isFree }: OnPaper): Drawing[] {
  const text = shortened(name, Math.min(70, area.width - 8), NAME);
  const half = widthOf(text, NAME) / 2 + 1;
  const named = namePlaces(lines, half, area)
    .map((at) => plated(text, at, { ...NAME, align: 'center' }))
    .find(isFree);
  return named ? [named] : [];
}
