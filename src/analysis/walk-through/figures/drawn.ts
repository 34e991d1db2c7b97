/** What the drawing and the document say by themselves. */
import { distance } from '#plan/geometry/points';
import { segmentDistance, type Segment } from '#plan/geometry/segments';
import type { Loop, Point, Quantity, Reading, Site, TestPoint } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { circuitOfReading, dayOf, placeOfReading } from '../../fault-finding/visits';
import type { LastReading } from './figures';

const sides = (points: readonly Point[], isClosed: boolean): readonly Segment[] =>
  points.flatMap((from, k) => {
    const to = points[k + 1] ?? (isClosed ? points[0] : undefined);
    return to && distance(from, to) > 0 ? [{ from, to }] : [];
  });

/** Metres from the nearest of the loops to the nearest gate; null where none is drawn. */
export function gateDistance({ marks }: Pick<Site, 'marks'>, loops: readonly Loop[]): number | null {
  const gates = marks.filter(({ kind }) => kind === 'gate').flatMap(({ points }) => sides(points, false));
  const edges = loops.flatMap(({ shape }) => sides(outlineOf(shape), true));
  const gaps = gates.flatMap((gate) => edges.map((edge) => segmentDistance(gate, edge)));
  return gaps.length > 0 ? Math.min(...gaps) : null;
}

const isOver = ({ overRange = [] }: Reading, quantity: Quantity): boolean => overRange.includes(quantity);

/** The newest one of the circuit there; of equally old ones the last in the list. */
export function lastRead(
  site: Pick<Site, 'readings' | 'circuits'>,
  circuit: string,
  testPoint: TestPoint,
  quantity: Quantity
): LastReading | null {
  let newest: Reading | null = null;
  for (const each of site.readings) {
    if (circuitOfReading(site, each) !== circuit) continue;
    if (placeOfReading(site, each).testPoint !== testPoint) continue;
    if (each[quantity] === undefined && !isOver(each, quantity)) continue;
    if (!newest || (each.at ?? '') >= (newest.at ?? '')) newest = each;
  }
  if (!newest) return null;
  return {
    value: isOver(newest, quantity) ? null : (newest[quantity] ?? null),
    day: dayOf(newest) ?? ''
  };
}

/** With which the circuit was read last, where that is known. */
export function instrumentsLastUsed(
  site: Pick<Site, 'readings' | 'circuits'>,
  circuit: string
): readonly string[] {
  let newest: Reading | null = null;
  for (const each of site.readings) {
    if (!each.instruments?.length || circuitOfReading(site, each) !== circuit) continue;
    if (!newest || (each.at ?? '') >= (newest.at ?? '')) newest = each;
  }
  return newest?.instruments ?? [];
}
