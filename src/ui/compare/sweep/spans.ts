/** The values that a number runs through. Pure. */
import type { VariableRange } from '#plan/variables/variable';
import type { Span } from './choices.svelte';

/** How a span is used: along the axis, as curves, as the sides of a map. */
export const USES = {
  axis: { usual: 41, least: 2, most: 121 },
  family: { usual: 4, least: 2, most: 6 },
  across: { usual: 21, least: 2, most: 41 },
  up: { usual: 11, least: 2, most: 31 }
} as const;
export type Use = keyof typeof USES;

/** Digits that a value has: enough for a tenth of a millimetre in a hundred metres, few enough to be read. */
const DIGITS = 7;
/** As far as a family of curves goes to both sides: a share of the present value, and of whole numbers so many. */
const FAMILY_SHARE = 0.5;
const WHOLE_REACH = 2;

const neat = (value: number): number => Number(value.toPrecision(DIGITS));

/** What is chosen within what can be; what was not chosen is usual. */
export function spanOf(
  { least, most, step, isWhole }: VariableRange,
  chosen: Partial<Span>,
  use: Use,
  present: number | null
): Span {
  const inside = (value: number) => Math.min(most, Math.max(least, value));
  const own =
    present === null || present === 0 ? FAMILY_SHARE * (most - least) : FAMILY_SHARE * Math.abs(present);
  const reach = isWhole ? WHOLE_REACH : Math.max(step, Math.round(own / step) * step);
  const isNear = use === 'family' && present !== null;
  const from = inside(chosen.from ?? (isNear ? present - reach : least));
  const to = inside(chosen.to ?? (isNear ? present + reach : most));
  const [low, high] = from < to ? [from, to] : [least, most];
  const { usual, least: fewest, most: limit } = USES[use];
  const points = Math.min(
    limit,
    Math.max(fewest, Math.round(chosen.points ?? (isWhole ? high - low + 1 : usual)))
  );
  return { from: neat(low), to: neat(high), points };
}

/** Rising, its ends among them; whole numbers where there are only those. */
export function valuesOf({ isWhole }: VariableRange, { from, to, points }: Span): readonly number[] {
  const [low, high] = isWhole ? [Math.ceil(from), Math.floor(to)] : [from, to];
  const count = isWhole ? Math.min(points, high - low + 1) : points;
  if (count < 2) return [low];
  const values = Array.from({ length: count }, (_, k) => {
    if (k === 0) return low;
    if (k === count - 1) return high;
    const value = low + ((high - low) * k) / (count - 1);
    return isWhole ? Math.round(value) : neat(value);
  });
  return [...new Set(values)];
}
