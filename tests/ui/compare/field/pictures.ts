/** Pictures with fields that are known without the program. */
import type { FieldPicture, FieldPlane } from '#analysis/field-picture/results';
import type { Point } from '#plan/schema';
import { edgesOf, placeAt } from '#ui/compare/field/frame';

type Field = (u: number, v: number) => readonly [number, number, number];

export const SECTION: FieldPlane = { kind: 'section', from: [1, 2], to: [1, 6], low_m: -0.5, high_m: 1.5 };

/** A field given by a formula, at every node of a net. */
export function pictureOf(
  field: Field,
  more: Partial<FieldPicture> = {},
  net = { columns: 41, rows: 21 }
): FieldPicture {
  const plane = more.plane ?? SECTION;
  const values = new Float64Array(3 * net.columns * net.rows);
  for (let node = 0; node < net.columns * net.rows; node++) {
    const [u, v]: Point = placeAt(edgesOf(plane), net, node % net.columns, Math.floor(node / net.columns));
    values.set(field(u, v), 3 * node);
  }
  return {
    plane,
    ...net,
    field: values,
    lines: [],
    wires: [],
    metal: [],
    unresolved_m: 0,
    strongest_T: 1,
    leftOut: [],
    ...more
  };
}
