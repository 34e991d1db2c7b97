/** A twisted pair seen from above, pixels: two wires that cross at every half turn. */
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';

/** Of a whole turn, along the pair; longer where a long pair would take more half turns than are worth painting. */
const TURN = 16;
const MOST_HALF_TURNS = 400;
/** From the middle of the pair to a wire. */
const ASIDE = 2;

/** The two wires along a way of any number of points; both begin and end in its ends. */
export function twistedPair(way: readonly Point[]): readonly [readonly Point[], readonly Point[]] {
  const lengths = way.slice(1).map((to, index) => distance(way[index]!, to));
  const whole = lengths.reduce((sum, each) => sum + each, 0);
  const half = Math.max(TURN / 2, whole / MOST_HALF_TURNS);
  const wires: [Point[], Point[]] = [way.slice(0, 1), way.slice(0, 1)];
  let side = 1;
  let next = half / 2;
  let passed = 0;
  lengths.forEach((length, index) => {
    const [a, b] = [way[index]!, way[index + 1]!];
    for (; length > 0 && next < passed + length; next += half, side = -side) {
      const [along, x, y] = [(next - passed) / length, b[0] - a[0], b[1] - a[1]];
      const aside = (sign: number): Point => [
        a[0] + along * x - (sign * ASIDE * y) / length,
        a[1] + along * y + (sign * ASIDE * x) / length
      ];
      wires[0].push(aside(side));
      wires[1].push(aside(-side));
    }
    passed += length;
  });
  const end = way.at(-1);
  if (end && way.length > 1) for (const wire of wires) wire.push(end);
  return wires;
}
