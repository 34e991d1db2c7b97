/** Which circuits of a drawing can measure a speed: those that follow one another in a lane. Pure, fast. */
import type { Circuit, Lane, Loop, Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { extentOn } from '../passing/profile';
import { wayOf, type Way } from '../passing/way';
import type { LoopPair } from './results';

/** Farther apart than this a vehicle may well change lanes or speed between the two, metres. */
const FARTHEST = 30;
/** Nearer than this there is nothing to time, metres. */
const NEAREST = 0.5;

export interface CircuitExtent {
  readonly circuit: Circuit;
  readonly from_m: number;
  readonly to_m: number;
}

/** Where a circuit lies in a lane, all its loops whose middle is in it taken together; null where it has none there. */
const extentInLane = (
  site: Pick<Site, 'loops'>,
  circuit: Circuit,
  lane: Lane,
  way: Way
): CircuitExtent | null => {
  const ids = new Set(loopsIn(circuit));
  const extents = site.loops
    .filter(({ id }) => ids.has(id))
    .map(({ shape }: Loop) => extentOn(way, shape))
    .filter(
      ({ from, to, left, right }) =>
        Math.abs(left + right) / 2 <= lane.width / 2 && to >= 0 && from <= way.length
    );
  if (extents.length === 0) return null;
  return {
    circuit,
    from_m: Math.min(...extents.map(({ from }) => from)),
    to_m: Math.max(...extents.map(({ to }) => to))
  };
};

/** The nearest to one another first; only circuits on a channel, which have a threshold. */
export const loopPairs = (site: Site): readonly LoopPair[] =>
  site.lanes
    .flatMap((lane) => {
      const way = wayOf(site, { kind: 'lane', id: lane.id });
      if (!way) return [];
      const row = site.circuits
        .filter(({ channel }) => channel !== null)
        .flatMap((circuit) => extentInLane(site, circuit, lane, way) ?? [])
        .sort((a, b) => a.from_m - b.from_m);
      return row.slice(1).map((after, k) => ({
        lane: lane.id,
        first: row[k]!.circuit.id,
        second: after.circuit.id,
        spacing_m: after.from_m - row[k]!.from_m
      }));
    })
    .filter(({ spacing_m }) => spacing_m >= NEAREST && spacing_m <= FARTHEST)
    .sort((a, b) => a.spacing_m - b.spacing_m);

/** A lane in which both lie, the first before the second. */
export const laneOfPair = (
  site: Site,
  first: string,
  second: string
): {
  readonly lane: Lane;
  readonly way: Way;
  readonly extents: readonly [CircuitExtent, CircuitExtent];
} | null => {
  const circuits = [first, second].map((id) => site.circuits.find((circuit) => circuit.id === id));
  const [a, b] = circuits;
  if (!a || !b) return null;
  for (const lane of site.lanes) {
    const way = wayOf(site, { kind: 'lane', id: lane.id });
    if (!way) continue;
    const [before, after] = [extentInLane(site, a, lane, way), extentInLane(site, b, lane, way)];
    if (before && after && after.from_m - before.from_m >= NEAREST)
      return { lane, way, extents: [before, after] };
  }
  return null;
};
