/** Where a coil that is dragged over the diagram can be dropped. */
import type { WiringPlace } from '#plan/edits/index';
import type { Circuit } from '#plan/schema';
import type { Place, Schematic } from '#scenes/schematic';

export interface Drop {
  readonly place: WiringPlace;
  /** The line that shows it; the nearest one to the pointer is meant. */
  readonly from: Place;
  readonly to: Place;
}

const INSET = 6;

/** Between the coils of each string, beside each string, and out of the circuit. */
export function dropsOf({ coils, columns, rails, out }: Schematic, circuit: Circuit): Drop[] {
  const inSeries = circuit.strings.flatMap((string, row) => {
    const [left, right] = [columns[row]! + INSET, columns[row + 1]! - INSET];
    const own = coils.filter((coil) => coil.string === row);
    return Array.from({ length: string.length + 1 }, (_, index): Drop => {
      const above = own[index - 1];
      const y = above ? above.y + above.height : own[0]!.y;
      const place: WiringPlace = above
        ? { kind: 'after', loop: above.loop }
        : { kind: 'before', loop: own[0]!.loop };
      return { place, from: { x: left, y }, to: { x: right, y } };
    });
  });
  const beside = columns.map((edge, at): Drop => {
    const x = at === circuit.strings.length ? edge - 2 : edge;
    return {
      place: { kind: 'string', circuit: circuit.id, at },
      from: { x, y: rails.top + 2 * INSET },
      to: { x, y: rails.bottom - 2 * INSET }
    };
  });
  const middle = out ? out.y + out.height / 2 : 0;
  const away: Drop[] = out
    ? [{ place: { kind: 'circuit' }, from: { x: out.x, y: middle }, to: { x: out.x + out.width, y: middle } }]
    : [];
  return [...inSeries, ...beside, ...away];
}

function distanceTo({ from, to }: Drop, { x, y }: Place): number {
  const nearX = Math.min(Math.max(x, Math.min(from.x, to.x)), Math.max(from.x, to.x));
  const nearY = Math.min(Math.max(y, Math.min(from.y, to.y)), Math.max(from.y, to.y));
  return Math.hypot(x - nearX, y - nearY);
}

export const nearestDrop = (drops: readonly Drop[], at: Place): Drop | null =>
  drops.reduce<Drop | null>(
    (best, drop) => (best && distanceTo(best, at) <= distanceTo(drop, at) ? best : drop),
    null
  );
