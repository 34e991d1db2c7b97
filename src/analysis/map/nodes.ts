import type { MapWish } from './results';

/** A node's place on the plan, metres. */
export const nodeAt = (
  { box, columns, rows }: MapWish,
  column: number,
  row: number
): readonly [number, number] => [
  box.left + ((box.right - box.left) * column) / Math.max(1, columns - 1),
  box.bottom + ((box.top - box.bottom) * row) / Math.max(1, rows - 1)
];
