/** Steel in the pavement: a mat as its bars, to scale where they can be told apart; a plate as a tone. Both say what they are. */
import { t } from '#i18n/message';
import { rotate } from '#plan/geometry/points';
import { centroid, contains, sidesOf } from '#plan/geometry/polygons';
import { segmentIntersection } from '#plan/geometry/segments';
import type { DisplayUnits, Point, Steel } from '#plan/schema';
import { format } from '#units/format';
import { boxAround } from '#editor/geometry/box';
import { isInSight, drawnBox, onScreen } from './frame';
import type { Viewport } from '#editor/types';
import { visibleBox, planToScreen } from '#editor/viewport';
import { area, line, textWidth, type Drawing } from './drawing';
import type { Theme } from './theme';

/** Pixels: bars nearer to each other than this run together; then only each so many-th is drawn. */
const CLOSEST_BARS = 7;
const LEAST_BAR = 1;
const ROUNDING = 1e-6;
const TEXT_SIZE = 11;
const MARGIN = 6;

type Mat = Extract<Steel, { kind: 'mat' }>;

/** "Mat, 150 mm, 100 mm deep". */
function steelText(steel: Steel, units: DisplayUnits): string {
  const say = (metres: number): string => format(metres, 'smallLength', units).text;
  const depth = t(steel.depth < 0 ? 'depth.above' : 'depth.below', { depth: say(Math.abs(steel.depth)) });
  return steel.kind === 'mat'
    ? t('canvas.mat', { pitch: say(steel.pitch), depth })
    : t('canvas.plate', { depth });
}

/** Degrees: bars run along the first side and across, as the model has them. */
function directionOf([from, to]: readonly Point[]): number {
  return (Math.atan2(to![1] - from![1], to![0] - from![0]) * 180) / Math.PI;
}

/** Pieces of the upright line at `x` that lie inside the outline. */
function piecesAt(outline: readonly Point[], x: number, low: number, high: number): [Point, Point][] {
  const across = { from: [x, low - 1] as Point, to: [x, high + 1] as Point };
  const cuts = sidesOf(outline)
    .flatMap((side) => segmentIntersection(across, side)?.[1] ?? [])
    .sort((a, b) => a - b);
  const pieces: [Point, Point][] = [];
  for (let index = 0; index + 1 < cuts.length; index++) {
    const [from, to] = [cuts[index]!, cuts[index + 1]!];
    if (to - from > 1e-9 && contains(outline, [x, (from + to) / 2])) pieces.push([[x, from], [x, to]]); // prettier-ignore
  }
  return pieces;
}

/** Bars of one direction; those out of sight are left out, for a mat may be as long as a road. */
function barsAlong(mat: Mat, degrees: number, view: Viewport, theme: Theme): Drawing[] {
  const turned = mat.outline.map((point) => rotate(point, 90 - degrees));
  const box = boxAround(turned)!;
  const { left, right, bottom, top } = visibleBox(view);
  const sight = boxAround(
    ([[left, bottom], [right, bottom], [right, top], [left, top]] as Point[]).map((point) => rotate(point, 90 - degrees)) // prettier-ignore
  )!;
  const every = Math.max(1, Math.ceil(CLOSEST_BARS / (mat.pitch * view.scale)));
  const step = mat.pitch * every;
  const count = Math.floor((box.right - box.left) / step + ROUNDING);
  const first = (box.left + box.right - count * step) / 2;
  const width = Math.max(LEAST_BAR, 2 * mat.barRadius * view.scale);
  const drawings: Drawing[] = [];
  const begin = Math.max(0, Math.ceil((sight.left - first) / step));
  const end = Math.min(count, Math.floor((sight.right - first) / step));
  for (let bar = begin; bar <= end; bar++) {
    // On the rim itself a bar would be neither in nor out.
    const x = Math.min(box.right - ROUNDING, Math.max(box.left + ROUNDING, first + bar * step));
    for (const piece of piecesAt(turned, x, box.bottom, box.top)) {
      const points = piece.map((point) => rotate(point, degrees - 90));
      drawings.push(line(onScreen(view, points), { colour: theme.steelBars, width }));
    }
  }
  return drawings;
}

/** At the lower end of the outline, where a loop's own label seldom is. */
function label(steel: Steel, view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] {
  const text = steelText(steel, units);
  const box = boxAround(onScreen(view, steel.outline))!;
  if (box.right - box.left < textWidth(text, TEXT_SIZE) / 2) return [];
  const [x] = planToScreen(view, centroid(steel.outline));
  const at: Point = [x, box.top + MARGIN + TEXT_SIZE / 2];
  return [
    { kind: 'text', at, text, colour: theme.steel, size: TEXT_SIZE, align: 'center', plate: theme.plate }
  ];
}

export function steelScene(
  steel: readonly Steel[],
  view: Viewport,
  units: DisplayUnits,
  theme: Theme
): Drawing[] {
  const sight = drawnBox(view);
  return steel
    .filter(({ outline }) => isInSight(outline, sight))
    .flatMap((each) => {
      const outline = onScreen(view, each.outline);
      const rim = { colour: theme.steel, width: 1.5 };
      if (each.kind === 'plate')
        return [area(outline, theme.plateFill, rim), ...label(each, view, units, theme)];
      const along = directionOf(each.outline);
      return [
        ...barsAlong(each, along, view, theme),
        ...barsAlong(each, along + 90, view, theme),
        { kind: 'line', points: outline, closed: true, stroke: { ...rim, dash: [7, 3] } },
        ...label(each, view, units, theme)
      ];
    });
}
