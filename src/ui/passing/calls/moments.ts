/** Traffic at a time, for the plan: a function of the simulation and the time alone. */
import type { CallsPicture, Trajectory } from '#analysis/calls/results';
import { isGreen } from '#analysis/traffic/halts';
import { placeOn, wayOf, type Way } from '#analysis/passing/way';
import { pointAt } from '#plan/geometry/stations';
import type { Moment, OutputState } from '#scenes/frame';
import { vehicleOf } from '#plan/catalogue/vehicles';
import { distance } from '#plan/geometry/points';
import type { Lane, Point, Probe, Site } from '#plan/schema';
import { detectionsOf, holdsAt, lastUpTo } from './stretches';

/** Metres along the lane; null before the vehicle comes and after it has gone. */
export function placeAt({ times, places }: Trajectory, time: number): number | null {
  const last = times.length - 1;
  if (last < 0 || time < times[0]! || time > times[last]!) return null;
  const before = lastUpTo(times.length, (index) => times[index]!, time);
  if (before >= last) return places[last]!;
  const span = times[before + 1]! - times[before]!;
  const share = span > 0 ? (time - times[before]!) / span : 0;
  return places[before]! + share * (places[before + 1]! - places[before]!);
}

/** The stop line of a signal, from the lane's left edge to its right. */
function lineAcross(way: Way, { width }: Lane, line_m: number): { readonly from: Point; readonly to: Point } {
  const [before, after] = [pointAt(way, line_m - 0.1), pointAt(way, line_m + 0.1)];
  const size = distance(before, after);
  const [dx, dy] = [(after[0] - before[0]) / size, (after[1] - before[1]) / size];
  const [x, y] = pointAt(way, line_m);
  const half = width / 2;
  return { from: [x - dy * half, y + dx * half], to: [x + dy * half, y - dx * half] };
}

/**
 * The moments of a simulation of that site. While no output changes, the map of outputs is the same object, so that the
 * loops need not be drawn again.
 */
export function createMoments(site: Site, picture: CallsPicture): (time: number) => Moment {
  const ways = new Map(
    site.lanes.flatMap(({ id }) => {
      const way = wayOf(site, { kind: 'lane', id });
      return way ? [[id, way] as const] : [];
    })
  );
  const lengths = new Map<string, number>();
  const lengthOf = (vehicle: string): number => {
    const known = lengths.get(vehicle);
    if (known !== undefined) return known;
    const length = vehicleOf(vehicle, site)?.bodyLength ?? 0;
    lengths.set(vehicle, length);
    return length;
  };

  const byStart = picture.vehicles
    .filter(({ lane, times }) => ways.has(lane) && times.length > 0)
    .sort((a, b) => a.times[0]! - b.times[0]!);
  const longest = Math.max(0, ...byStart.map(({ times }) => times[times.length - 1]! - times[0]!));

  const channels = picture.channels.map(({ summary, calls, events }) => ({
    circuit: summary.circuit,
    calls,
    detections: detectionsOf({ events }, picture.duration_s)
  }));
  const signals = (site.traffic?.streams ?? []).flatMap(({ lane: id, signal }) => {
    const lane = site.lanes.find((each) => each.id === id);
    const way = ways.get(id);
    return signal && lane && way ? [{ signal, ...lineAcross(way, lane, signal.line_m) }] : [];
  });

  function vehiclesAt(time: number): Probe[] {
    const last = lastUpTo(byStart.length, (index) => byStart[index]!.times[0]!, time);
    const probes: Probe[] = [];
    for (let index = last; index >= 0; index--) {
      const trajectory = byStart[index]!;
      if (trajectory.times[0]! < time - longest) break;
      const along = placeAt(trajectory, time);
      if (along === null) continue;
      const { vehicle, lane, offset_m } = trajectory;
      const { x, y, heading } = placeOn(ways.get(lane)!, along, offset_m, lengthOf(vehicle));
      probes.push({ vehicle, at: [x, y], heading });
    }
    return probes;
  }

  let outputs: ReadonlyMap<string, OutputState> = new Map();
  function outputsAt(time: number): ReadonlyMap<string, OutputState> {
    const next = channels.map(({ circuit, calls, detections }): [string, OutputState] => [
      circuit,
      holdsAt(calls, time) ? 'on' : holdsAt(detections, time) ? 'detecting' : 'off'
    ]);
    const isSame =
      next.length === outputs.size && next.every(([circuit, state]) => outputs.get(circuit) === state);
    if (!isSame) outputs = new Map(next);
    return outputs;
  }

  return (time) => ({
    vehicles: vehiclesAt(time),
    outputs: outputsAt(time),
    signals: signals.map(({ signal, from, to }) => ({ from, to, isGreen: isGreen(signal, time) }))
  });
}
