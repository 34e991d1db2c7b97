/** Loops as saw cuts to scale, tinted by their circuit's answer, with hints of how they are wound. */
import { between, distance, subtract } from '#plan/geometry/points';
import { tailPath } from '#plan/lead-out';
import type { Point, Site } from '#plan/schema';
import { outlineOf, pathOf } from '#plan/shapes/index';
import type { Cell, Edge } from '#plan/shapes/path';
import { boxAround } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, line, type Drawing, type Stroke } from './drawing';
import { drawnBox, isInSight, onScreen, type Call } from './frame';
import { leadInDrawings, tailDrawings } from './lead-out';
import type { Theme } from './theme';

/** A slot is drawn at least so many pixels wide. */
const LEAST_SLOT = 1.5;
/** How much wider a slot looks that holds the wires of two runs. */
const SHARED = 2.4;
/** Answers below this share of the threshold leave no tint. */
const FAINT = 0.02;
/** Pixels: loops smaller than this carry no arrows. */
const SMALLEST_WITH_ARROWS = 44;
const ARROW = 6;

/** The loops whose sense of winding is turned by their circuit. */
const reversedLoops = (site: Site): ReadonlySet<string> =>
  new Set(
    site.circuits
      .flatMap(({ strings }) => strings.flat().filter(({ reversed }) => reversed))
      .map(({ loop }) => loop)
  );

/** The tint grows with the answer up to the threshold; a call looks different, not only stronger. */
export function tintOf(call: Call | undefined, theme: Theme): string | null {
  if (!call || call.ratio < FAINT) return null;
  if (call.ratio >= 1) return theme.callFill;
  return withStrength(theme.responseFill, call.ratio);
}

/** The colour with its opacity, the last number, times the strength. */
const withStrength = (colour: string, strength: number): string =>
  colour.replace(/[\d.]+(?=\)$)/, (opacity) => (Number(opacity) * strength).toFixed(3));

function shared(points: Point[], slot: Stroke, theme: Theme): Drawing[] {
  return [
    line(points, { ...slot, width: slot.width * SHARED }),
    line(points, { colour: theme.slotCore, width: Math.max(0.75, slot.width * (SHARED - 2)) })
  ];
}

/** Corners of each stretch of the cell between its shared slots; one closed round where nothing is shared. */
function stretches(edges: readonly Edge[]): { readonly corners: Point[]; readonly closed: boolean }[] {
  const start = edges.findIndex((edge) => edge.shared);
  if (start < 0) return [{ corners: edges.map((edge) => edge.from), closed: true }];
  const found: { corners: Point[]; closed: boolean }[] = [];
  for (const [index, edge] of [...edges.slice(start), ...edges.slice(0, start)].entries()) {
    if (edge.shared) continue;
    const last = found.at(-1);
    const continues = last !== undefined && !edges[(start + index - 1) % edges.length]!.shared;
    if (continues) last.corners.push(edge.to);
    else found.push({ corners: [edge.from, edge.to], closed: false });
  }
  return found;
}

function cuts(cells: readonly Cell[], slot: Stroke, view: Viewport, theme: Theme): Drawing[] {
  const seen = new Set<string>();
  return cells.flatMap((cell): Drawing[] => {
    if (cell.kind === 'circle') {
      const at = planToScreen(view, cell.centre);
      return [{ kind: 'circle', at, radius: cell.radius * view.scale, stroke: slot }];
    }
    const own = stretches(cell.edges).map(({ corners, closed }): Drawing => ({
      kind: 'line',
      points: onScreen(view, corners),
      closed,
      stroke: slot
    }));
    const common = cell.edges.flatMap(({ from, to, shared: isShared }) => {
      const key = [String(from), String(to)].sort().join(' ');
      if (!isShared || seen.has(key)) return [];
      seen.add(key);
      return shared(onScreen(view, [from, to]), slot, theme);
    });
    return [...own, ...common];
  });
}

/** A small arrowhead on the line, in the direction of the current. */
function arrow(at: Point, direction: Point, colour: string): Drawing {
  const length = Math.hypot(direction[0], direction[1]);
  const [x, y] = [direction[0] / length, direction[1] / length];
  const tip: Point = [at[0] + x * ARROW, at[1] + y * ARROW];
  const wing = (side: number): Point => [
    at[0] - x * ARROW * 0.6 - y * side * ARROW * 0.7,
    at[1] - y * ARROW * 0.6 + x * side * ARROW * 0.7
  ];
  return area([tip, wing(1), wing(-1)], colour);
}

const longest = (edges: readonly Edge[]): Edge | undefined =>
  edges
    .filter((edge) => !edge.shared)
    .reduce<Edge | undefined>(
      (best, edge) => (best && distance(best.from, best.to) >= distance(edge.from, edge.to) ? best : edge),
      undefined
    );

/** One arrow a cell: the two of a figure of eight turn against each other. */
function winding(cell: Cell, reversed: boolean, view: Viewport, theme: Theme): Drawing[] {
  const sign = reversed ? -1 : 1;
  if (cell.kind === 'circle') {
    const [x, y] = planToScreen(view, cell.centre);
    return [arrow([x + cell.radius * view.scale, y], [0, -sign], theme.sawCut)];
  }
  const edge = longest(cell.edges);
  if (!edge) return [];
  const from = planToScreen(view, edge.from);
  const [dx, dy] = subtract(planToScreen(view, edge.to), from);
  return [arrow(planToScreen(view, between(edge.from, edge.to)), [dx * sign, dy * sign], theme.sawCut)];
}

/** Pixels: the shorter side of the extent. */
function sizeOf(outline: readonly Point[], view: Viewport): number {
  const box = boxAround(outline);
  return box ? Math.min(box.right - box.left, box.top - box.bottom) * view.scale : 0;
}

export function loopsScene(
  site: Site,
  calls: ReadonlyMap<string, Call>,
  view: Viewport,
  theme: Theme
): Drawing[] {
  const sight = drawnBox(view);
  const reversed = reversedLoops(site);
  const boxes = site.marks.filter(({ kind }) => kind === 'pull-box').map(({ points }) => points[0]!);
  const visible = site.loops
    .map((loop) => ({ loop, outline: outlineOf(loop.shape), cells: pathOf(loop.shape).cells }))
    .filter(({ loop, outline }) => isInSight([...outline, ...(tailPath(site, loop) ?? [])], sight));
  const tints = visible.flatMap(({ loop, outline }) => {
    const fill = tintOf(calls.get(loop.id), theme);
    return fill === null ? [] : [area(onScreen(view, outline), fill)];
  });
  const lines = visible.flatMap(({ loop, outline, cells }) => {
    const slot = { colour: theme.sawCut, width: Math.max(LEAST_SLOT, loop.slot.width * view.scale) };
    const hasArrows = sizeOf(outline, view) >= SMALLEST_WITH_ARROWS;
    return [
      ...tailDrawings(site, loop, boxes, view, theme),
      ...cuts(cells, slot, view, theme),
      ...(hasArrows ? cells.flatMap((cell) => winding(cell, reversed.has(loop.id), view, theme)) : [])
    ];
  });
  return [...tints, ...leadInDrawings(site, view, theme), ...lines];
}
