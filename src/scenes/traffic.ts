/** Traffic at a moment: the vehicles, the signals at their stop lines, and what the outputs say about the loops. */
import { add, scale, subtract } from '#plan/geometry/points';
import type { Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { circuitWith } from '#plan/wiring';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, boxAt, line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen, type Call, type Moment, type OutputState } from './frame';
import type { Theme } from './theme';
import { vehiclesScene } from './vehicles';

/** What loops answer to vehicles that stand on the plan is out of sight while traffic is shown. */
export const NO_CALLS: ReadonlyMap<string, Call> = new Map();

type Signal = Moment['signals'][number];

/** Pixels. */
const LAMP = 9;
const LINE = { red: 5, green: 3 } as const;
/** The lamp stands so far beyond the lane's right edge, pixels. */
const ASIDE = 16;

/** [0, 0] for a line without length. */
function unit(a: Point): Point {
  const size = Math.hypot(a[0], a[1]);
  return size === 0 ? [0, 0] : [a[0] / size, a[1] / size];
}

/**
 * Red is a whole line across the lane and a square with a bar in it, green a dashed line and a disc with an arrow ahead:
 * the two differ without their colours.
 */
function signalDrawings({ from, to, isGreen }: Signal, view: Viewport, theme: Theme): Drawing[] {
  const [left, right] = [planToScreen(view, from), planToScreen(view, to)];
  const across = unit(subtract(right, left));
  const ahead: Point = [across[1], -across[0]];
  const at = add(right, scale(across, ASIDE));
  const colour = isGreen ? theme.call : theme.problem;
  const stroke = { colour, width: isGreen ? LINE.green : LINE.red };
  const point = (forward: number, aside: number): Point =>
    add(at, add(scale(ahead, forward * LAMP), scale(across, aside * LAMP)));
  const outline = { colour, width: 2 };
  if (!isGreen)
    return [
      line([left, right], stroke),
      area(boxAt(at, LAMP), theme.paper, outline),
      line([point(0, -0.6), point(0, 0.6)], { colour, width: 4 })
    ];
  return [
    line([left, right], { ...stroke, dash: [7, 5] }),
    { kind: 'circle', at, radius: LAMP, fill: theme.paper, stroke: outline },
    area([point(0.7, 0), point(-0.4, 0.55), point(-0.4, -0.55)], colour)
  ];
}

export function trafficScene(moment: Moment, site: Site, view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  return [
    ...moment.signals
      .filter(({ from, to }) => isInSight([from, to], sight))
      .flatMap((signal) => signalDrawings(signal, view, theme)),
    ...vehiclesScene({ ...site, probes: moment.vehicles }, view, theme)
  ];
}

/**
 * Loops as their outputs have them: a call is filled and has a strong whole outline, a response that makes no call yet
 * (or no longer) a dashed one.
 */
export function outputsScene(
  outputs: ReadonlyMap<string, OutputState>,
  site: Site,
  view: Viewport,
  theme: Theme
): Drawing[] {
  const sight = drawnBox(view);
  return site.loops.flatMap((loop): Drawing[] => {
    const state = outputs.get(circuitWith(site, loop.id)?.id ?? '') ?? 'off';
    const outline = outlineOf(loop.shape);
    if (state === 'off' || !isInSight(outline, sight)) return [];
    const points = onScreen(view, outline);
    return state === 'on'
      ? [area(points, theme.callFill, { colour: theme.call, width: 5 })]
      : [area(points, theme.responseFill, { colour: theme.accent, width: 3, dash: [5, 4] })];
  });
}
