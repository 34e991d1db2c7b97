/**
 * The turns of the loops as drawn, one by one, and of the same loops with another number of turns or another wire. Made
 * when a fault first asks for them. A design that is off by a tolerance takes them from here in proportion: what a fault
 * makes of the circuit hardly hangs on it.
 */
import { mutualInductance } from '#physics/inductance/loop';
import { partOf, turnCouplings, turnInductances } from '#physics/inductance/turns';
import type { Winding } from '#physics/inductance/winding';
import type { Wire } from '#plan/catalogue/wires';
import type { Loop } from '#plan/schema';
import { centreOf, moveShape } from '#plan/shapes/index';
import { windingOf } from '../../electrical/winding-of';
import { RememberedOf } from './remembered';

/** So many more turns than drawn are looked at. */
export const MORE_TURNS = 3;

interface Turns {
  /** External, H, row by row; for as many turns as may be. */
  readonly inductances: Float64Array;
  readonly count: number;
}

export interface TurnStore {
  of(loop: Loop, wire: Wire): Turns;
  /** Between the turns of two loops, H; null where each turn of one couples alike with each of the other. */
  between(a: Loop, wireOfA: Wire, b: Loop, wireOfB: Wire): Turns | null;
}

/** Couplings that differ by less from turn to turn count as alike: of their size, and H. */
const ALIKE = 1e-5;
const FAINT = 1e-13;

export const createTurnStore = (): TurnStore => {
  const windings = new Map<string, Winding>();
  const inductances = new Map<string, Turns>();
  const couplings = new Map<string, Turns | null>();
  const ofLoops = new RememberedOf<Loop, RememberedOf<Wire, Turns>>();
  const keyOf = ({ shape, turns, slot }: Loop, wire: Wire): string =>
    JSON.stringify([shape, turns, slot.depth, wire.conductorDiameter, wire.insulatedDiameter]);
  /** A loop's own turns hang neither on its place nor on its depth. */
  const formOf = (loop: Loop, wire: Wire): string => {
    const [x, y] = centreOf(loop.shape);
    return keyOf({ ...loop, shape: moveShape(loop.shape, [-x, -y]), slot: { ...loop.slot, depth: 0 } }, wire);
  };
  const windingFor = (loop: Loop, wire: Wire): Winding =>
    kept(windings, keyOf(loop, wire), () =>
      windingOf(
        { ...loop, turns: loop.turns + MORE_TURNS },
        { conductor: wire.conductorDiameter, insulated: wire.insulatedDiameter }
      )
    );
  return {
    of: (loop, wire) =>
      ofLoops
        .get(loop, () => new RememberedOf<Wire, Turns>())
        .get(wire, () =>
          kept(inductances, formOf(loop, wire), () => ({
            inductances: turnInductances(windingFor(loop, wire)),
            count: loop.turns + MORE_TURNS
          }))
        ),
    between: (a, wireOfA, b, wireOfB) =>
      kept(couplings, `${keyOf(a, wireOfA)} ${keyOf(b, wireOfB)}`, () => {
        const [first, second] = [windingFor(a, wireOfA), windingFor(b, wireOfB)];
        const lowest = mutualInductance(partOf(first, 0, 1), partOf(second, 0, 1));
        const skew = mutualInductance(partOf(first, 0, 1), partOf(second, b.turns - 1, 1));
        if (Math.abs(skew - lowest) <= ALIKE * Math.abs(lowest) + FAINT) return null;
        return { inductances: turnCouplings(first, second), count: b.turns + MORE_TURNS };
      })
  };
};

const kept = <T>(map: Map<string, T>, key: string, make: () => T): T => {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
};
