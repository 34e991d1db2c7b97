/** A source whose own frame stands somewhere on the plan: x to the right, y ahead. */
import type { Placement } from './filaments';
import { noField, pointsOf, type FieldMaker } from './points';

export const placedSource = (sources: readonly FieldMaker[], { x, y, heading }: Placement): FieldMaker => {
  const turn = ((heading - 90) * Math.PI) / 180;
  const cosine = Math.cos(turn);
  const sine = Math.sin(turn);
  return {
    add: (points, field) => {
      const count = points.x.length;
      const local = pointsOf(count);
      for (let k = 0; k < count; k++) {
        const px = points.x[k]! - x;
        const py = points.y[k]! - y;
        local.x[k] = px * cosine + py * sine;
        local.y[k] = py * cosine - px * sine;
        local.z[k] = points.z[k]!;
      }
      const own = noField(count);
      for (const source of sources) source.add(local, own);
      for (let k = 0; k < count; k++) {
        field.x[k]! += own.x[k]! * cosine - own.y[k]! * sine;
        field.y[k]! += own.x[k]! * sine + own.y[k]! * cosine;
        field.z[k]! += own.z[k]!;
      }
    }
  };
};
