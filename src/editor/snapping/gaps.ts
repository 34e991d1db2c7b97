/** As far from the neighbour as the neighbour is from the next one, or halfway between two. */
import { t } from '#i18n/message';
import type { Box } from '../geometry/box';
import { middleOf, overlap, pointOn, spanOf, type Axis, type Span } from './axis';
import type { Guide, Offer } from './offer';

const RANK = 3;
const SMALLEST_GAP = 0.05;

export function* gapOffers(box: Box, axis: Axis, others: readonly Box[]): Generator<Offer> {
  const across: Axis = axis === 0 ? 1 : 0;
  const own = spanOf(box, axis);
  if (own.high - own.low < 1e-9) return;
  const row = others
    .filter((other) => overlap(spanOf(other, across), spanOf(box, across)))
    .map((other) => spanOf(other, axis))
    .sort((a, b) => a.low - b.low);
  for (const [index, second] of row.slice(1).entries()) {
    const first = row[index]!;
    const gap = second.low - first.high;
    if (gap < SMALLEST_GAP) continue;
    const known: Span = { low: first.high, high: second.low };
    yield offer(axis, across, second.high + gap - own.low, known, (moved) => ({
      low: second.high,
      high: moved.low
    }));
    yield offer(axis, across, first.low - gap - own.high, known, (moved) => ({
      low: moved.high,
      high: first.low
    }));
    const room = gap - (own.high - own.low);
    if (room > 2 * SMALLEST_GAP)
      yield offer(
        axis,
        across,
        middleOf(known) - middleOf(own),
        { low: first.high, high: first.high + room / 2 },
        (moved) => ({ low: moved.high, high: second.low })
      );
  }
}

function offer(axis: Axis, across: Axis, by: number, known: Span, made: (moved: Span) => Span): Offer {
  return {
    by,
    rank: RANK,
    what: () => t('snap.gaps'),
    guides(moved, length) {
      const level = middleOf(spanOf(moved, across));
      return [known, made(spanOf(moved, axis))].map(({ low, high }): Guide => ({
        from: pointOn(axis, low, level),
        to: pointOn(axis, high, level),
        label: length(high - low)
      }));
    }
  };
}
