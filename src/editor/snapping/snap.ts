/**
 * Where a moving box or point comes to rest. A lone point goes to a corner within reach, else to a centre; then the nearest
 * line counts, for each axis by itself; the grid comes last.
 */
import { distance, subtract } from '#plan/geometry/points';
import { nearestOnSegment } from '#plan/geometry/segments';
import type { Point } from '#plan/schema';
import { boxCentre, movedBox, type Box } from '../geometry/box';
import { spanOf, type Axis } from './axis';
import { edgeOffers } from './edges';
import { gapOffers } from './gaps';
import { bestOffer, type Guide, type Offer } from './offer';
import type { PointTarget, Targets } from './targets';

export interface Snap {
  /** How far to move what is in hand. */
  readonly by: Point;
  readonly guides: readonly Guide[];
  /** What it snapped to; empty for the grid and for nothing. */
  readonly text: string;
}

export interface SnapOptions {
  /** Metres. */
  readonly tolerance: number;
  /** Metres between the grid's lines, or null for none. */
  readonly grid: number | null;
  /** Axes along which snapping makes sense. */
  readonly axes: readonly [boolean, boolean];
  /** Writes a length in the units that the document shows. */
  readonly length: (metres: number) => string;
}

export const NO_SNAP: Snap = { by: [0, 0], guides: [], text: '' };

/** From the value to the nearest multiple of the step. */
export const toStep = (value: number, step: number): number => Math.round(value / step) * step - value;

const isPoint = (box: Box): boolean => box.right - box.left < 1e-9 && box.top - box.bottom < 1e-9;

function nearestPoint(at: Point, targets: readonly PointTarget[], tolerance: number): Snap | null {
  let best: PointTarget | null = null;
  let reach = tolerance;
  for (const target of targets) {
    const away = distance(at, target.at);
    if (away > reach) continue;
    reach = away;
    best = target;
  }
  return best && { by: subtract(best.at, at), guides: [], text: best.what() };
}

function toPoint(at: Point, { points }: Targets, options: SnapOptions): Snap | null {
  if (!options.axes[0] || !options.axes[1]) return null;
  const of = (match: PointTarget['match']): Snap | null =>
    nearestPoint(at, points.filter((target) => target.match === match), options.tolerance); // prettier-ignore
  return of('corner') ?? of('centre');
}

/** Onto a slanting line; a box goes there with its centre, and only to the middles of lanes. */
function toLine(box: Box, targets: Targets, options: SnapOptions): Snap | null {
  if (!options.axes[0] || !options.axes[1]) return null;
  const at = boxCentre(box);
  let best: Snap | null = null;
  let reach = options.tolerance;
  for (const { segment, match, what } of targets.lines) {
    if (match === 'edge' && !isPoint(box)) continue;
    const nearest = nearestOnSegment(at, segment);
    const away = distance(at, nearest);
    if (away > reach) continue;
    reach = away;
    best = { by: subtract(nearest, at), guides: [{ ...segment, label: '' }], text: what() };
  }
  return best;
}

function alongAxis(box: Box, axis: Axis, targets: Targets, options: SnapOptions): Offer | null {
  if (!options.axes[axis]) return null;
  const edges = bestOffer(edgeOffers(box, axis, targets.axes[axis]), options.tolerance);
  return edges ?? bestOffer(gapOffers(box, axis, targets.boxes), options.tolerance);
}

export function snapBox(box: Box, targets: Targets, options: SnapOptions): Snap {
  const point = isPoint(box) ? toPoint([box.left, box.bottom], targets, options) : null;
  if (point) return point;
  const offers = [alongAxis(box, 0, targets, options), alongAxis(box, 1, targets, options)] as const;
  if (!offers[0] && !offers[1]) {
    const line = toLine(box, targets, options);
    if (line) return line;
  }
  const step = (axis: Axis): number => {
    const offer = offers[axis];
    if (offer) return offer.by;
    return options.grid !== null && options.axes[axis] ? toStep(spanOf(box, axis).low, options.grid) : 0;
  };
  const by: Point = [step(0), step(1)];
  const moved = movedBox(box, by);
  const found = offers.filter((offer) => offer !== null);
  return {
    by,
    guides: found.flatMap((offer) => offer.guides(moved, options.length)),
    text: [...new Set(found.map((offer) => offer.what()))].join(', ')
  };
}
