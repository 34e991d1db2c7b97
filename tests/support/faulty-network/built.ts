/** A circuit as it really lies in the road, faults and all: what the network is made from. SI. */

export type XY = readonly [number, number];

/** One closed way of the wire per cell; an edge that two cells share holds the wires of both. */
export interface Cell {
  readonly corners: readonly XY[];
  /** Edge k runs from corner k to the next. */
  readonly shared: readonly boolean[];
}

export interface BuiltWire {
  readonly conductor: number;
  readonly insulated: number;
  readonly permittivity: number;
}

export interface BuiltLoop {
  readonly id: string;
  readonly cells: readonly Cell[];
  readonly turns: number;
  readonly wire: BuiltWire;
  readonly depth: number;
  readonly slotWidth: number;
  readonly fillPermittivity: number;
  readonly tail: number;
  /** Neighbouring turns bridged by a contact. */
  readonly bridged?: { readonly first: number; readonly count: number; readonly resistance: number };
  /** The wire is broken behind this turn. */
  readonly brokenAfter?: number;
  /** Of its wire to ground, Ω. */
  readonly leak: number;
}

export interface BuiltCable {
  readonly conductor: number;
  readonly spacing: number;
  readonly permittivity: number;
  /** Stated by the maker: holds instead of what follows from the geometry. */
  readonly capacitance: number | null;
}

export interface BuiltCircuit {
  readonly loops: readonly BuiltLoop[];
  /** Places in `loops`: in series within a string, strings side by side. */
  readonly strings: readonly (readonly { readonly loop: number; readonly reversed: boolean }[])[];
  readonly leadIn: {
    readonly cable: BuiltCable;
    readonly length: number;
    /** Between its two wires, this far from the cabinet. */
    readonly short?: { readonly at: number; readonly resistance: number };
    /** One of its wires is broken this far from the cabinet. */
    readonly brokenAt?: number;
    /** Of its wires to ground, Ω. */
    readonly leak: number;
  };
  readonly splice: {
    /** In one of the wires, Ω. */
    readonly series?: number;
    readonly isOpen?: boolean;
    /** Between the two wires, Ω. */
    readonly between?: number;
    /** From one of them to ground, Ω. */
    readonly leak?: number;
  };
  readonly temperature: number;
  readonly pavementPermittivity: number;
  /** Of the setting at which the unit really stands, F. */
  readonly setting: number;
  /** What steel adds to the mutual inductance of two loops (places in `loops`) at a frequency, H. */
  readonly steel?: (
    frequency: number
  ) => (i: number, j: number) => { readonly re: number; readonly im: number };
}
