/** Gaps between things in a row: equal ones, or one that is given. Their order along the row stays. */
import type { Extent } from './item';

const middleOf = ({ from, to }: Extent): number => from + to;
const sizeOf = ({ from, to }: Extent): number => to - from;

/** Indexes in the order of the row. */
const inOrder = (extents: readonly Extent[]): number[] =>
  extents.map((_, index) => index).sort((a, b) => middleOf(extents[a]!) - middleOf(extents[b]!));

/**
 * The shift of each, metres, that makes the gaps of the row equal. The outer two stay, and so does whatever is fixed: then
 * the gaps are equal from one that stays to the next.
 */
export function equalGaps(extents: readonly Extent[]): number[] {
  const shifts = extents.map(() => 0);
  const order = inOrder(extents);
  const stays = order.flatMap((index, place) =>
    place === 0 || place === order.length - 1 || extents[index]!.isFixed ? [place] : []
  );
  for (const [step, last] of stays.entries()) {
    const first = stays[step - 1];
    if (first === undefined || last - first < 2) continue;
    const row = order.slice(first, last + 1).map((index) => extents[index]!);
    const inner = row.slice(1, -1).reduce((sum, extent) => sum + sizeOf(extent), 0);
    const gap = (row.at(-1)!.from - row[0]!.to - inner) / (row.length - 1);
    let end = row[0]!.to;
    for (const index of order.slice(first + 1, last)) {
      shifts[index] = end + gap - extents[index]!.from;
      end += gap + sizeOf(extents[index]!);
    }
  }
  return shifts;
}

/**
 * The shift of each, metres, that leaves exactly this gap from each to the next. What is fixed stays, and the others line
 * up on both sides of it; without any the first of the row stays.
 */
export function exactGaps(extents: readonly Extent[], gap: number): number[] {
  const shifts = extents.map(() => 0);
  const order = inOrder(extents);
  const firstFixed = order.findIndex((index) => extents[index]!.isFixed);
  const start = Math.max(0, firstFixed);
  let end = extents[order[start] ?? 0]?.to ?? 0;
  for (const index of order.slice(start + 1)) {
    const extent = extents[index]!;
    if (!extent.isFixed) shifts[index] = end + gap - extent.from;
    end = extent.to + shifts[index]!;
  }
  let begin = extents[order[start] ?? 0]?.from ?? 0;
  for (const index of order.slice(0, start).reverse()) {
    shifts[index] = begin - gap - extents[index]!.to;
    begin = extents[index]!.from + shifts[index];
  }
  return shifts;
}
