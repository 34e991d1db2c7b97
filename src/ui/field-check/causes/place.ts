/** Where along a lead-in's drawn way a fault lies. */
import type { FaultDistance } from '#analysis/fault-finding/results';
import type { Place } from '#analysis/takeoff/results';
import { pointAt, stationed } from '#plan/geometry/stations';
import { leadInPath } from '#plan/lead-out';
import type { Circuit, Site } from '#plan/schema';

/**
 * The likely stretch and its middle; none where the way is not drawn there. Distances count from the cabinet; the drawn way
 * is that of the first cable and ends at the cabinet unless further cables follow. Slack is spread evenly along it.
 */
export function placesOf(
  site: Pick<Site, 'marks'>,
  circuit: Circuit,
  { distance_m, low, high }: Pick<FaultDistance, 'distance_m' | 'low' | 'high'>
): readonly Place[] {
  const path = leadInPath(site, circuit);
  const line = path && stationed(path);
  const { length, further = [] } = circuit.leadIn;
  if (!line || length <= 0) return [];
  const undrawn = further.reduce((sum, each) => sum + each.length, 0);
  const stationOf = (distance: number): number => line.length * (1 - (distance - undrawn) / length);
  const station = stationOf(distance_m);
  if (station < -1e-9 || station > line.length + 1e-9) return [];
  const [from, to] = [Math.max(0, stationOf(high)), Math.min(line.length, stationOf(low))];
  const between = line.points.filter((_, k) => line.stations[k]! > from && line.stations[k]! < to);
  const stretch = [pointAt(line, from), ...between, pointAt(line, to)];
  return [
    ...(to - from > 1e-6 ? [{ kind: 'line', points: stretch } as const] : []),
    { kind: 'point', at: pointAt(line, station) }
  ];
}
