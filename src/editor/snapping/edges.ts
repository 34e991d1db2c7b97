/** Straight with the edge or the middle of something else. */
import { boxCentre, type Box } from '../geometry/box';
import { middleOf, pointOn, spanOf, type Axis, type Span } from './axis';
import type { Guide, Offer } from './offer';
import type { AxisTarget } from './targets';

const RANK = { centre: 1, edge: 2 } as const;

/** The line that both lie on, and the clear distance between them where there is any. */
function guidesFor(target: AxisTarget, axis: Axis, moved: Box, length: (metres: number) => string): Guide[] {
  const other: Axis = axis === 0 ? 1 : 0;
  const own = spanOf(moved, other);
  const theirs = spanOf(target.box, other);
  const low = Math.min(own.low, theirs.low);
  const high = Math.max(own.high, theirs.high);
  const line: Guide = {
    from: pointOn(axis, target.value, low),
    to: pointOn(axis, target.value, high),
    label: ''
  };
  const [first, second] = own.low < theirs.low ? [own, theirs] : [theirs, own];
  const gap = second.low - first.high;
  if (gap <= 1e-6) return [line];
  const beside = boxCentre(moved)[axis];
  const from = pointOn(axis, beside, first.high);
  const to = pointOn(axis, beside, second.low);
  return [line, { from, to, label: length(gap) }];
}

function valuesOf(span: Span, match: AxisTarget['match']): readonly number[] {
  if (span.high - span.low < 1e-9) return [span.low];
  return match === 'centre' ? [middleOf(span)] : [span.low, span.high];
}

export function* edgeOffers(box: Box, axis: Axis, targets: readonly AxisTarget[]): Generator<Offer> {
  const span = spanOf(box, axis);
  for (const target of targets)
    for (const value of valuesOf(span, target.match))
      yield {
        by: target.value - value,
        rank: RANK[target.match],
        what: target.what,
        guides: (moved, length) => guidesFor(target, axis, moved, length)
      };
}
