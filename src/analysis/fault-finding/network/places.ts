/**
 * Where a vehicle is driven to that shall lower the inductance as far as it can: over a sound circuit that is one place, with
 * a fault in it another. So it is tried where the whole circuit answers most, where each of its loops does by itself, and
 * where two that follow one another do.
 */
import type { Placement } from '#physics/field/filaments';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Loop, Site } from '#plan/schema';
import type { BodyStore, VehicleBody } from '../../electrical/bodies';
import type { SolvedCircuit } from '../../electrical/circuit-model';
import { passesOver } from '../../passing/responses';

export interface StandingVehicle {
  readonly id: string;
  readonly body: VehicleBody;
  /** The sound circuit's first. */
  readonly placements: readonly Placement[];
}

/** With more loops than this none are taken two by two: that would be too many places to look at. */
const MOST_IN_PAIRS = 4;
/** Places nearer to one another than this are one, metres. */
const SAME_PLACE = 0.1;

/** As if the other loops were not in it, to first order. */
const only = (solved: SolvedCircuit, kept: readonly number[]): SolvedCircuit => {
  const { input, steel, weights, inductance } = solved;
  const own = kept.map((i) => kept.map((j) => weights[i]![j]!));
  return {
    ...solved,
    input: { ...input, loops: kept.map((k) => input.loops[k]!) },
    weights: own,
    inductanceWith: (change) =>
      own.reduce(
        (sum, row, i) =>
          row.reduce((part, weight, j) => {
            const by = change(i, j);
            return part + weight * (typeof by === 'number' ? by : by.re);
          }, sum),
        inductance
      ),
    steel: steel && {
      pieces: steel.pieces.map((piece) => ({ ...piece, covers: kept.map((k) => piece.covers[k]!) })),
      dipoles: () => {
        const all = steel.dipoles();
        return kept.map((k) => all[k]!);
      }
    }
  };
};

const subsetsOf = (count: number): readonly (readonly number[])[] => {
  if (count === 1) return [];
  const each = Array.from({ length: count }, (_, k) => [k]);
  const pairs = Array.from({ length: count - 1 }, (_, k) => [k, k + 1]);
  return count > 2 && count <= MOST_IN_PAIRS ? [...each, ...pairs] : each;
};

/** Null for a vehicle that is unknown or passes none of the loops. */
export const standingVehicle = (
  site: Site,
  solved: SolvedCircuit,
  loops: readonly Loop[],
  id: string,
  bodies: BodyStore
): StandingVehicle | null => {
  const vehicle = vehicleOf(id, site);
  if (!vehicle) return null;
  const body = bodies.get(vehicle);
  const best = (circuit: SolvedCircuit, over: readonly Loop[]): Placement | null => {
    const passes = passesOver(vehicle, circuit, over, site, {
      bodyOf: () => body,
      remember: (_, make) => make()
    });
    const strongest = passes?.at(-1);
    return strongest ? { x: strongest.at[0], y: strongest.at[1], heading: strongest.heading } : null;
  };
  const whole = best(solved, loops);
  if (!whole) return null;
  const placements = [whole];
  for (const kept of subsetsOf(loops.length)) {
    const place = best(
      only(solved, kept),
      kept.map((k) => loops[k]!)
    );
    const isKnown = placements.some(({ x, y }) => place && Math.hypot(x - place.x, y - place.y) < SAME_PLACE);
    if (place && !isKnown) placements.push(place);
  }
  return { id, body, placements };
};
