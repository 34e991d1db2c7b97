import type { DisplayUnits, Point } from '#plan/schema';
import { gridStep } from '#units/plan-steps';
import type { Viewport } from '#editor/types';
import { planToScreen, visibleBox } from '#editor/viewport';
import { line, type Drawing } from './drawing';
import type { Theme } from './theme';

/** Pixels that two fine lines keep apart at least. */
const CLOSEST = 14;
/** A coarse step is at least so many fine ones. */
const LEAST_PARTS = 3;
/** Zoomed out to where no step keeps the lines apart, there is no grid. */
const DENSEST = 8;

export interface GridSteps {
  /** Metres. */
  readonly fine: number;
  readonly coarse: number;
}

export function gridSteps(scale: number, units: DisplayUnits): GridSteps {
  const fine = gridStep(CLOSEST / scale, units);
  return { fine, coarse: gridStep(fine * LEAST_PARTS, units) };
}

/** Crisp on one pixel: lines of one pixel run through the pixels' middles. */
const crisp = (value: number): number => Math.round(value - 0.5) + 0.5;

const isMultiple = (value: number, step: number): boolean =>
  Math.abs(value / step - Math.round(value / step)) < 1e-6;

function* multiples(from: number, to: number, step: number): Generator<number> {
  for (let count = Math.ceil(from / step); count * step <= to; count++) yield count * step;
}

/** Two levels of lines at steps that are round in the units shown. */
export function gridScene(view: Viewport, units: DisplayUnits, theme: Theme): Drawing[] {
  const { fine, coarse } = gridSteps(view.scale, units);
  if (fine * view.scale < DENSEST) return [];
  const { left, right, bottom, top } = visibleBox(view);
  const drawn = (along: number, from: Point, to: Point): Drawing =>
    line([from, to], { colour: isMultiple(along, coarse) ? theme.gridCoarse : theme.gridFine, width: 1 });
  return [
    ...[...multiples(left, right, fine)].map((x) => {
      const at = crisp(planToScreen(view, [x, 0])[0]);
      return drawn(x, [at, 0], [at, view.height]);
    }),
    ...[...multiples(bottom, top, fine)].map((y) => {
      const at = crisp(planToScreen(view, [0, y])[1]);
      return drawn(y, [0, at], [view.width, at]);
    })
  ];
}
