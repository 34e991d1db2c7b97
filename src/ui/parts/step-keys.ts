/** Arrows, Home and End on a line that is moved along a chart, as on any slider. Pure. */

export interface Reach {
  readonly from: number;
  readonly to: number;
  /** What one key press goes, and with shift. */
  readonly fine: number;
  readonly coarse: number;
}

/** Where a key takes the line that stands at `place`, never beyond either end; null for every other key. */
export function placeAfterKey(
  { key, shiftKey }: Pick<KeyboardEvent, 'key' | 'shiftKey'>,
  place: number,
  { from, to, fine, coarse }: Reach
): number | null {
  const step = shiftKey ? coarse : fine;
  switch (key) {
    case 'ArrowLeft':
    case 'ArrowDown':
      return Math.min(to, Math.max(from, place - step));
    case 'ArrowRight':
    case 'ArrowUp':
      return Math.min(to, Math.max(from, place + step));
    case 'Home':
      return from;
    case 'End':
      return to;
    default:
      return null;
  }
}
