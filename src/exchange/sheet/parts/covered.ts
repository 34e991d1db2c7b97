/** What is taken on the plan, and what a text would cover. Millimetres. */
import type { Cut } from '#analysis/takeoff/results';
import type { Point } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { clippedLine, type ClipBox } from '#scenes/paper-clip';
import { widthOf } from '#scenes/paper-type';

/** Round a text, to the edge of the plate behind it, as a share of the type's size. */
const PLATE = { beside: 0.3, above: 0.72 } as const;
/** Of a round cut, as straight ones. */
const CORNERS = 32;

/** The letters of a text; nothing for any other drawing. */
export function covered(drawing: Drawing): ClipBox[] {
  if (drawing.kind !== 'text') return [];
  const [x, y] = drawing.at;
  const width = widthOf(drawing.text, drawing);
  const left = { left: x, center: x - width / 2, right: x - width }[drawing.align];
  return [{ left, right: left + width, top: y - drawing.size / 2, bottom: y + drawing.size / 2 }];
}

/** With the plate behind them, which hides what lies there. */
const plateOf = (drawing: Drawing): ClipBox[] =>
  covered(drawing).map(({ left, right, top, bottom }) => {
    const size = bottom - top;
    const [beside, above] = [PLATE.beside * size, (PLATE.above - 0.5) * size];
    return { left: left - beside, right: right + beside, top: top - above, bottom: bottom + above };
  });

export const isOver = (one: ClipBox, other: ClipBox): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const cornersOf = ({ centre: [x, y], radius }: NonNullable<Cut['circle']>): readonly Point[] =>
  Array.from({ length: CORNERS + 1 }, (_, k): Point => {
    const angle = (2 * Math.PI * k) / CORNERS;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });

/** Whether a text with a plate would hide neither a cut nor what is written already. `place`: a point of the plan on paper. */
export function freeAmong(
  cuts: readonly Cut[],
  written: readonly Drawing[],
  place: (point: Point) => Point
): (drawing: Drawing) => boolean {
  const taken = written.flatMap(covered);
  const ways = cuts.map(({ circle, from, to }) => (circle ? cornersOf(circle) : [from, to]).map(place));
  return (drawing) =>
    plateOf(drawing).every(
      (own) =>
        !taken.some((other) => isOver(own, other)) &&
        !ways.some((way) => way.slice(1).some((to, k) => clippedLine(way[k]!, to, own) !== null))
    );
}
