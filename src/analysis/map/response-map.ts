/**
 * The response to one vehicle at every node of a grid over the plan. Kept by what it follows from, circuit by circuit: an
 * edit of one loop computes its circuit's share alone.
 */
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Site } from '#plan/schema';
import type { Means } from '../means';
import { RecentCache } from '../recent-cache';
import type { Steps } from '../steps';
import { shareInSteps } from './circuit-share';
import type { MapWish, ResponseMap } from './results';

/** Shares of circuits, of every vehicle together: one of 100 × 100 nodes has 80 kB. */
const MOST_SHARES = 120;

export const createMapper = ({ surveyor, bodies }: Means) => {
  const shares = new RecentCache<string, Float64Array>(MOST_SHARES);

  /** Null for a vehicle that is not there. Circuits that are not there, or cannot be solved, are left out. */
  return function* (site: Site, wish: MapWish): Steps<ResponseMap | null> {
    const vehicle = vehicleOf(wish.vehicle, site);
    if (!vehicle) return null;
    const body = bodies.get(vehicle);
    yield 0;
    const asked = [...surveyor.survey(site).circuits.values()].filter(
      ({ circuit }) => wish.circuits === null || wish.circuits.includes(circuit.id)
    );
    const { heading, box, columns, rows } = wish;
    const response = new Float64Array(columns * rows);
    const ratio = new Float64Array(columns * rows);
    for (const [k, { solved, key, circuit }] of asked.entries()) {
      const where = JSON.stringify([body.key, key, heading, box, columns, rows]);
      const known = shares.peek(where);
      const made = known ?? (yield* shareInSteps(solved, body, wish, (share) => (k + share) / asked.length));
      const values = shares.get(where, () => made);
      const threshold = circuit.channel?.tripThreshold ?? Infinity;
      for (let node = 0; node < values.length; node++) {
        response[node] = Math.max(response[node]!, values[node]!);
        ratio[node] = Math.max(ratio[node]!, values[node]! / threshold);
      }
    }
    return { ...wish, response, ratio };
  };
};
