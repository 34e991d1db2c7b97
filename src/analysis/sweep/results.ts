/** A number of the drawing run over a range, and what comes of it. SI; responses are −ΔL/L, positive for a drop. */
import type { Experiment, Variable } from '#plan/variables/variable';
import type { DesignId } from '../designs/results';

export const FIGURE_KINDS = [
  'loopInductance',
  'loopResistance',
  'selfResonance',
  'cover',
  'inductance',
  'resistance',
  'resistanceDc',
  'q',
  'frequency',
  'response',
  'margin',
  'neighbour',
  'mutual',
  'coupling',
  'separation',
  'ripple',
  'beatRatio',
  'wire',
  'sawCut',
  'cost'
] as const;
export type FigureKind = (typeof FIGURE_KINDS)[number];

/** Of a loop, or of two; any other that is not of the whole site is of circuits. */
export const FIGURES_OF_LOOPS: ReadonlySet<FigureKind> = new Set<FigureKind>([
  'loopInductance',
  'loopResistance',
  'selfResonance',
  'cover',
  'mutual',
  'coupling'
]);

/** A result of the drawing, by name. */
export interface Figure {
  readonly kind: FigureKind;
  /** A loop, or a circuit; null for one of the whole site. Of a pair the first. */
  readonly subject: string | null;
  /** Of a pair the second: loops of `mutual` and `coupling`, circuits of `separation`, `ripple` and `beatRatio`. */
  readonly other?: string;
  readonly vehicle?: string;
  /**
   * Of a response or a margin: of a pass on the worst or the best path across the lane, or on the path at the offset of the
   * experiment; or of a vehicle that stands at the experiment's place. The worst where it is not said.
   */
  readonly path?: 'worst' | 'best' | 'offset' | 'standing';
}

export interface SweptVariable {
  readonly variable: Variable;
  readonly values: readonly number[];
}

export interface SweepWish {
  readonly x: SweptVariable;
  /** A second one: a curve a value, or the other side of a map. */
  readonly family: SweptVariable | null;
  /** In place of a second one: a curve a design. */
  readonly designs: readonly DesignId[] | null;
  /** One to three. */
  readonly figures: readonly Figure[];
  /** Where vehicles drive for figures at the offset, and stand; where neither is what is varied. */
  readonly place: Pick<Experiment, 'offset_m' | 'along_m'>;
}

export type LimitKind = 'trip' | 'release' | 'least' | 'most' | 'problem' | 'caution';

/** A line to draw: what the figure should stay above or below. */
export interface FigureLimit {
  readonly kind: LimitKind;
  readonly value: number;
  /** Which side is right. */
  readonly wants: 'above' | 'below';
}

export interface SweptFigure {
  readonly figure: Figure;
  /** By family value or design (one row without either), then by x; null where it cannot be computed. */
  readonly values: readonly (readonly (number | null)[])[];
  /** Of the drawing as it is. */
  readonly present: number | null;
  readonly limits: readonly FigureLimit[];
}

/** One point of a sweep. */
export interface SweepPoint {
  /** Of the rows of values: a member of the family, or a design. */
  readonly row: number;
  /** Among the values of x. */
  readonly at: number;
}

export interface SweepPicture {
  readonly x: SweptVariable;
  readonly family: SweptVariable | null;
  readonly designs: readonly DesignId[] | null;
  /** Of the variables in the drawing as it is; null where it has none. */
  readonly present: { readonly x: number | null; readonly family: number | null };
  readonly figures: readonly SweptFigure[];
  /** Where the model does not bear the figures out, or the drawing cannot be built; row by row, then by x. */
  readonly doubtful: readonly SweepPoint[];
}
