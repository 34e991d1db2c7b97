/** Every turn of every loop as straight pieces of wire at their own heights, and what they induce in one another. */
import { externalInductance, mutualInductance } from '#physics/inductance/loop';
import type { Run, Winding } from '#physics/inductance/winding';
import type { BuiltLoop } from './built';

/** Wires lie one above the other from the bottom of the slot; in a shared slot those of two cells alternate. */
const heightOf = (loop: BuiltLoop, turn: number, cell: number, isShared: boolean): number =>
  -loop.depth + loop.wire.insulated * ((isShared ? 2 * turn + cell : turn) + 0.5);

const piecesOf = (loop: BuiltLoop, turn: number): Run[] =>
  loop.cells.flatMap(({ corners, shared }, cell) =>
    corners.map((from, k): Run => {
      const to = corners[(k + 1) % corners.length]!;
      const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
      const length = Math.hypot(dx, dy);
      return {
        kind: 'straight',
        ...{ x: from[0], y: from[1], ux: dx / length, uy: dy / length, length },
        heights: [heightOf(loop, turn, cell, shared[k]!)]
      };
    })
  );

/** A single turn as a winding of its own. */
export const turnOf = (loop: BuiltLoop, turn: number): Winding => {
  const runs = piecesOf(loop, turn);
  return {
    runs,
    wireRadius: loop.wire.conductor / 2,
    pitch: loop.wire.insulated,
    columns: [],
    wireLength: runs.reduce((sum, run) => sum + (run.kind === 'straight' ? run.length : 0), 0)
  };
};

export const turnLength = (loop: BuiltLoop): number => turnOf(loop, 0).wireLength;

/** How far down two turns lie from one another in each kind of slot: all that their mutual inductance hangs on. */
const stepsBetween = (a: BuiltLoop, i: number, b: BuiltLoop, j: number): string =>
  a === b ? String(Math.abs(i - j)) : `${heightOf(a, i, 0, false) - heightOf(b, j, 0, false)}`;

/** H, of the field outside the copper, between turn i of one loop and turn j of another or the same one. */
export const turnInductances = (a: BuiltLoop, b: BuiltLoop): number[][] => {
  const known = new Map<string, number>();
  const isPlain = [a, b].every(({ cells }) => cells.length === 1);
  const made = (i: number, j: number): number =>
    a === b && i === j ? externalInductance(turnOf(a, i)) : mutualInductance(turnOf(a, i), turnOf(b, j));
  return Array.from({ length: a.turns }, (_, i) =>
    Array.from({ length: b.turns }, (__, j) => {
      // in loops of two cells the middle wires lie differently for every pair of turns; one loop's own turns lie alike
      if (!isPlain && !(a === b && i === j)) return a === b && j < i ? NaN : made(i, j);
      const key = stepsBetween(a, i, b, j);
      const value = known.get(key) ?? made(i, j);
      known.set(key, value);
      return value;
    })
  ).map((row, i, all) => row.map((value, j) => (Number.isNaN(value) ? all[j]![i]! : value)));
};

/** Slots with the wires that lie in each, named by turn: what proximity effect hangs on. */
export interface Column {
  readonly length: number;
  /** From the bottom upwards: the turn that each wire belongs to. */
  readonly turns: readonly number[];
}

export const columnsOf = (loop: BuiltLoop): Column[] =>
  loop.cells.flatMap(({ corners, shared }, cell) =>
    corners.flatMap((from, k) => {
      const to = corners[(k + 1) % corners.length]!;
      const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
      const each = Array.from({ length: loop.turns }, (_, turn) => turn);
      if (!shared[k]) return [{ length, turns: each }];
      return cell === 0 ? [{ length, turns: each.flatMap((turn) => [turn, turn]) }] : [];
    })
  );
