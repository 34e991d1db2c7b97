/**
 * From a drawn loop to columns of wires. Turn i of a cell lies at −depth + D·(i + ½), D the insulated diameter: one
 * column from the bottom of the slot. A slot shared by two cells holds 2N wires, interleaved: turn i of the first cell at
 * position 2i, of the second at 2i + 1.
 */
import { totalLength } from '#physics/inductance/runs';
import { runLength, type Run, type Winding } from '#physics/inductance/winding';
import type { Loop } from '#plan/schema';
import { pathOf } from '#plan/shapes/index';
import type { Cell } from '#plan/shapes/path';

export interface WireSize {
  /** Diameters, metres. */
  readonly conductor: number;
  readonly insulated: number;
}

const runsOf = (
  cell: Cell,
  cellIndex: number,
  heightsAt: (stride: number, first: number) => number[]
): Run[] => {
  if (cell.kind === 'circle') {
    const [x, y] = cell.centre;
    return [{ kind: 'round', x, y, radius: cell.radius, heights: heightsAt(1, 0) }];
  }
  return cell.edges.map(({ from, to, shared }) => {
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return {
      kind: 'straight',
      x: from[0],
      y: from[1],
      ux: (to[0] - from[0]) / length,
      uy: (to[1] - from[1]) / length,
      length,
      heights: shared ? heightsAt(2, cellIndex) : heightsAt(1, 0)
    };
  });
};

/** A corner cut of next to nothing leaves edges that have no length, and so no direction. */
const withoutEmptyEdges = (cell: Cell): Cell =>
  cell.kind === 'circle'
    ? cell
    : { ...cell, edges: cell.edges.filter(({ from, to }) => from[0] !== to[0] || from[1] !== to[1]) };

export const windingOf = ({ shape, turns, slot }: Loop, wire: WireSize): Winding => {
  const heightsAt = (stride: number, first: number): number[] =>
    Array.from({ length: turns }, (_, i) => -slot.depth + wire.insulated * (first + stride * i + 0.5));
  const cells = pathOf(shape).cells.map(withoutEmptyEdges);
  const runs = cells.flatMap((cell, index) => runsOf(cell, index, heightsAt));
  const shared = (cell: Cell, k: number): boolean => cell.kind === 'polygon' && cell.edges[k]!.shared;
  const columns = cells.flatMap((cell, index) =>
    runsOf(cell, index, heightsAt)
      .map((run, k) => ({
        length: runLength(run),
        wires: shared(cell, k) ? 2 * turns : turns,
        first: index === 0 || !shared(cell, k)
      }))
      .filter((column) => column.first)
      .map(({ length, wires }) => ({ length, wires }))
  );
  return {
    runs,
    wireRadius: wire.conductor / 2,
    pitch: wire.insulated,
    columns,
    wireLength: totalLength(runs)
  };
};

/** Wires stacked in the fullest slot of the loop. */
export const deepestColumn = (winding: Winding): number =>
  winding.columns.reduce((most, { wires }) => Math.max(most, wires), 0);
