/** The field of a whole winding, every turn at its own height: what a picture close to the wires needs. */
import type { Winding } from '../inductance/winding';
import type { FieldMaker } from './points';
import { addRoundField, type RoundWire } from './round-field';
import { addStraightField, STRAIGHT } from './straight-field';

/** `current` in every turn, amperes, in the winding's own sense. */
export const windingSource = ({ runs, wireRadius }: Winding, current: number): FieldMaker => {
  const straight = Float64Array.from(
    runs.flatMap((run) =>
      run.kind === 'straight'
        ? run.heights.flatMap((z) => [run.x, run.y, z, run.ux, run.uy, run.length, current, wireRadius])
        : []
    )
  );
  const round = runs.flatMap((run): RoundWire[] =>
    run.kind === 'round'
      ? run.heights.map((z) => ({
          x: run.x,
          y: run.y,
          z,
          radius: run.radius,
          thickness: wireRadius,
          axis: [0, 0, 1],
          current
        }))
      : []
  );
  return {
    add: (points, field) => {
      if (straight.length >= STRAIGHT) addStraightField(straight, points, field);
      for (const wire of round) addRoundField(wire, points, field);
    }
  };
};
