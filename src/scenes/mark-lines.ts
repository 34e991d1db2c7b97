/** Marks that are lines and areas on the road: each told by its shape, not by a colour. */
import type { Mark, Point } from '#plan/schema';
import { parallelTo } from '#editor/geometry/lanes';
import { markLine } from '#editor/geometry/marks';
import type { Viewport } from '#editor/types';
import { area, line, type Drawing } from './drawing';
import { onScreen } from './frame';
import type { Theme } from './theme';
import { hatching } from './hatching';

/** Metres of paint across a stop line; at least so many pixels. */
const STOP_LINE = 0.3;
const LEAST_WIDTH = 3;
/** A kerbstone: metres, and at least and at most so many pixels, with its two dark edges. */
const KERB = { width: 0.15, least: 5, most: 14, edge: 1.4 } as const;
const JOINT_DASH = [12, 4, 2, 4] as const;
const CONDUIT_DASH = [8, 5] as const;
/** Metres, and at least so many pixels, between the strokes over a cover. */
const HATCH = { apart: 0.2, least: 6 } as const;
const DIAGONAL: Point = [Math.SQRT1_2, Math.SQRT1_2];

export function stopLine({ points }: Mark, view: Viewport, theme: Theme): Drawing[] {
  const width = Math.max(STOP_LINE, LEAST_WIDTH / view.scale);
  const outline = [...parallelTo(points, width / 2), ...parallelTo(points, -width / 2).reverse()];
  return [area(onScreen(view, outline), theme.paint, { colour: theme.roadLine, width: 1 })];
}

/** Dark, light, dark: a stone seen from above. */
export function kerb(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  const points = onScreen(view, markLine(mark));
  const width = Math.min(KERB.most, Math.max(KERB.least, KERB.width * view.scale));
  return [
    line(points, { colour: theme.roadLine, width }),
    line(points, { colour: theme.paper, width: width - 2 * KERB.edge })
  ];
}

/** No road any more: the sheet shows through, with a kerb round it. */
export const island = (mark: Mark, view: Viewport, theme: Theme): Drawing[] => [
  area(onScreen(view, mark.points), theme.paper),
  ...kerb(mark, view, theme)
];

/** A frame with a hatched lid. */
export function cover(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  const stroke = { colour: theme.roadLine, width: 1 };
  const apart = Math.max(HATCH.apart, HATCH.least / view.scale);
  return [
    area(onScreen(view, mark.points), theme.paper),
    ...hatching(mark.points, DIAGONAL, apart).map(({ from, to }) => line(onScreen(view, [from, to]), stroke)),
    line(onScreen(view, markLine(mark)), { ...stroke, width: 2.5 })
  ];
}

export const joint = (mark: Mark, view: Viewport, theme: Theme): Drawing[] => [
  line(onScreen(view, mark.points), { colour: theme.roadLine, width: 1.5, dash: JOINT_DASH })
];

/** A pipe in the ground: two thin broken lines. */
export function conduit(mark: Mark, view: Viewport, theme: Theme): Drawing[] {
  const aside = 2 / view.scale;
  const stroke = { colour: theme.tail, width: 1.2, dash: CONDUIT_DASH };
  return [aside, -aside].map((offset) => line(onScreen(view, parallelTo(mark.points, offset)), stroke));
}
