/**
 * A map by the vehicle's mesh itself: over steel, where the compressed form does not hold, and for vehicles too large for
 * it. The coarse mesh gives the nodes `near` the circuit, the fine one corrects where the response is strong: as much as the two differ at
 * every third node of every third row, and by the same share at the nodes around it.
 */
import type { Placement } from '#physics/field/filaments';
import type { VehicleBody } from '../electrical/bodies';
import type { SolvedCircuit } from '../electrical/circuit-model';
import { quickEffect, vehicleEffect } from '../electrical/vehicle-effect';
import type { Steps } from '../steps';
import { nodeAt } from './nodes';
import type { MapWish } from './results';

/** A response below this is left as the coarse mesh gives it. */
const FAINT = 5e-5;
const CORRECTED = 3;

export function* nodesByMesh(
  solved: SolvedCircuit,
  body: VehicleBody,
  wish: MapWish,
  near: readonly number[],
  onShare: (share: number) => number
): Steps<Float64Array> {
  const { columns, rows, heading } = wish;
  const values = new Float64Array(columns * rows);
  const placed = (column: number, row: number): Placement => {
    const [x, y] = nodeAt(wish, column, row);
    return { x, y, heading };
  };
  for (const [done, node] of near.entries()) {
    const placement = placed(node % columns, Math.floor(node / columns));
    values[node] = Math.max(0, -quickEffect(solved, body, placement));
    yield onShare(done / near.length);
  }
  const middle = (k: number, count: number): number =>
    Math.min(count - 1, Math.floor(k / CORRECTED) * CORRECTED + 1);
  const factors = new Map<number, number>();
  for (const node of near) {
    if (values[node]! < FAINT) continue;
    const [column, row] = [middle(node % columns, columns), middle(Math.floor(node / columns), rows)];
    const corrected = row * columns + column;
    let factor = factors.get(corrected);
    if (factor === undefined) {
      const placement = placed(column, row);
      const quick = -quickEffect(solved, body, placement);
      factor = quick > FAINT ? -vehicleEffect(solved, body, placement) / quick : 1;
      factors.set(corrected, factor);
      yield;
    }
    values[node]! *= factor;
  }
  return values;
}
