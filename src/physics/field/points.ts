/** Many points in space, and the field at each of them: what every source adds its share to. */

export interface Points {
  /** Metres. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** Tesla, component by component. */
export interface Field {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

const zeros = (count: number) => ({
  x: new Float64Array(count),
  y: new Float64Array(count),
  z: new Float64Array(count)
});

export const pointsOf: (count: number) => Points = zeros;

export const noField: (count: number) => Field = zeros;

/** Currents that do not change: adds the field that they make at points. */
export interface FieldMaker {
  readonly add: (points: Points, field: Field) => void;
}
