/** The field of a current in a flat, level, rectangular sheet, as a source: close by in closed form, from afar by dipoles. */
import type { FieldMaker } from './points';
import { addPatch, patchesOf } from './sheet-boxes';

export interface SheetCurrent {
  /** Nodes, metres; ψ is bilinear between them. */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly z: number;
  /** Stream function, amperes: of node (p, q) at p·ys.length + q; 0 on the rim. */
  readonly psi: Float64Array;
}

export const sheetSource = ({ xs, ys, z, psi }: SheetCurrent): FieldMaker => {
  const patch = patchesOf(xs, ys, psi);
  const one = new Float64Array(3);
  return {
    add: (points, field) => {
      if (!patch) return;
      for (let k = 0; k < points.x.length; k++) {
        one.fill(0);
        addPatch(patch, points.x[k]!, points.y[k]!, points.z[k]! - z, one);
        field.x[k]! += one[0]!;
        field.y[k]! += one[1]!;
        field.z[k]! += one[2]!;
      }
    }
  };
};
