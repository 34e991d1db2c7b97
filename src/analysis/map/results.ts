/** The response to a vehicle's centre over the plan. */
export interface MapWish {
  readonly vehicle: string;
  /** Degrees, 90 = along +y. */
  readonly heading: number;
  /** Null: all. */
  readonly circuits: readonly string[] | null;
  /** Nodes lie on the box's rim and evenly between. */
  readonly box: {
    readonly left: number;
    readonly bottom: number;
    readonly right: number;
    readonly top: number;
  };
  readonly columns: number;
  readonly rows: number;
}

export interface ResponseMap extends MapWish {
  /** The largest −ΔL/L of any circuit asked about at node (column, row), stored row · columns + column, from left and bottom. */
  readonly response: Float64Array;
  /** The largest response over its own circuit's trip threshold; 0 where no circuit has one. */
  readonly ratio: Float64Array;
}
