/**
 * A vehicle as a set of perfect conductors, in its own frame: x to the right, y ahead, z up from the road surface.
 * At 20–100 kHz the skin depth in steel is of the order of 0.1 mm: eddy currents keep the flux out of the underside.
 * Left out: iron raises L a little at the wheels; undersides have holes, so a plate's height is an *effective* one.
 */
export interface PlatePart {
  readonly kind: 'plate';
  readonly x: number;
  readonly y: number;
  readonly height: number;
  /** Across and along the vehicle, metres. */
  readonly width: number;
  readonly length: number;
}

/** A closed ring of round conductor in any plane: a rim, a frame. */
export interface RingPart {
  readonly kind: 'ring';
  readonly x: number;
  readonly y: number;
  readonly height: number;
  readonly radius: number;
  readonly conductorRadius: number;
  /** Normal of the ring's plane, any length but zero. */
  readonly axis: readonly [number, number, number];
  /** Ω·m; a perfect conductor where it is not stated. */
  readonly resistivity?: number;
  /** Counts with a resistivity alone. */
  readonly relativePermeability?: number;
}

export type Part = PlatePart | RingPart;
