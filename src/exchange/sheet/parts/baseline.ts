/** The line that stations and offsets are measured from, as it lies on the plan, with a stroke at every round station. */
import type { CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import { distance } from '#plan/geometry/points';
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

/** Millimetres between two strokes, at least; half the length of a stroke. */
const APART = 12;
const STROKE = 1.4;
/** More strokes than this nobody measures by. */
const MOST_STROKES = 400;
const NAME = { size: TYPE.small, bold: true } as const;

export interface OnPaper {
  readonly area: Area;
  readonly scale: number;
  /** Millimetres of a point of the plan. */
  readonly place: (point: Point) => Point;
  readonly units: DisplayUnits;
}

const holds = (area: Area, [x, y]: Point, margin: number): boolean =>
  x >= area.left + margin &&
  x <= area.left + area.width - margin &&
  y >= area.top + margin &&
  y <= area.top + area.height - margin;

const plated = (text: string, at: Point, hand: Parameters<typeof written>[2]): Drawing => ({
  ...written(text, at, hand),
  ...{ plate: WHITE }
});

export function baselineDrawings({ baseline }: CuttingPlan, paper: OnPaper): Drawing[] {
  const way = baseline && stationed(baseline.points);
  if (!way) return [];
  const { area, scale, place, units } = paper;
  const stroke = { colour: INK, width: LINE.normal, dash: [5, 1.2, 0.8, 1.2] };
  const points = way.points.map(place);
  const lines = points.slice(1).flatMap((to, k) => {
    const part = clipped(points[k]!, to, area);
    return part ? [line(part, stroke)] : [];
  });
  if (lines.length === 0) return [];
  const step = gridStep((APART * scale) / 1000, units);
  const count = Math.min(MOST_STROKES, Math.floor(way.length / step + 1e-9));
  const strokes = Array.from({ length: count + 1 }, (_, k) => k * step).flatMap((station): Drawing[] => {
    const at = place(pointAt(way, station));
    if (!holds(area, at, 4)) return [];
    const [x, y] = directionAt(way, station);
    const end = (side: number): Point => [at[0] + side * STROKE * y, at[1] + side * STROKE * x];
    const text = station === 0 ? t('sheet.start') : scaleText(station, units);
    const beside: Point = [at[0] + 4.2 * y, at[1] + 4.2 * x];
    return [
      line([end(-1), end(1)], { colour: INK, width: LINE.normal }),
      ...(holds(area, beside, 6) ? [plated(text, beside, { size: TYPE.small, align: 'center' })] : [])
    ];
  });
  return [
    ...lines,
    ...strokes,
    ...nameDrawing(t('sheet.baseline', { name: clean(baseline.name) }), lines, area)
  ];
}

/** Before the start of what is seen of the line, as far inside as it takes. */
function nameDrawing(name: string, lines: readonly LineDrawing[], area: Area): Drawing[] {
  const text = shortened(name, Math.min(70, area.width - 8), NAME);
  const half = widthOf(text, NAME) / 2 + 1;
  const [start, next] = lines[0]!.points as readonly [Point, Point];
  const length = distance(start, next) || 1;
  const back: Point = [(start[0] - next[0]) / length, (start[1] - next[1]) / length];
  const within = (value: number, low: number, high: number) => Math.max(low, Math.min(high, value));
  const at: Point = [
    within(start[0] + back[0] * (half + 2), area.left + half, area.left + area.width - half),
    within(start[1] + back[1] * 4, area.top + 3, area.top + area.height - 3)
  ];
  return [plated(text, at, { ...NAME, align: 'center' })];
}
