/** How the figures of a circuit stray together: by the design's tolerances, by the model's error and by the meter's own. */
import type { ToleranceInput } from '../../results';
import type { AskedFigure, Spread } from '../forward/contract';
import { sameFigure } from './observed';

/** What figures stray with: the design's tolerances, and what a model leaves open. */
type Stray = ToleranceInput | 'steel' | 'steel losses';

/** A spread of a cause's figures. */
export interface StraySpread extends Omit<Spread, 'inputs'> {
  readonly inputs: readonly Stray[];
}

export interface Row {
  readonly asked: AskedFigure;
  readonly predicted: number;
  /** Of ln (figure) for one standard deviation of each input. */
  readonly derivatives: readonly number[];
  /** One standard deviation of the model's error, as a share. */
  readonly model: number;
  /** One standard deviation, in the figure's unit. */
  readonly meter: number;
  /** Read on the day of commissioning. */
  readonly isBaseline: boolean;
}

/**
 * Each loop is cut by itself, so that its errors are its own; of a circuit they average out. A figure of the circuit holds
 * each loop's by the share that the loop has in its inductance.
 */
const OF_EACH_LOOP: ReadonlySet<Stray> = new Set(['dimensions', 'depth', 'steel']);

/** Of each loop of the circuit, adding up to one. */
export type LoopShares = ReadonlyMap<string, number>;

const sharedLoops = (a: AskedFigure, b: AskedFigure, shares: LoopShares): number => {
  if (a.loop !== null && b.loop !== null) return a.loop === b.loop ? 1 : 0;
  const one = a.loop ?? b.loop;
  if (one !== null) return shares.get(one) ?? 0;
  let sum = 0;
  for (const share of shares.values()) sum += share * share;
  return sum;
};

/** These are another day's: the day of commissioning says nothing about them. */
const OF_THE_DAY: ReadonlySet<Stray> = new Set(['temperature', 'permittivity', 'vehicleHeight']);

export interface Strays {
  readonly inputs: readonly Stray[];
  readonly shares: LoopShares;
}

export const covarianceOf = (a: Row, b: Row, { inputs, shares }: Strays, isSameReading: boolean): number => {
  const inCommon = sharedLoops(a.asked, b.asked, shares);
  let shared = 0;
  inputs.forEach((input, k) => {
    if (a.isBaseline !== b.isBaseline && OF_THE_DAY.has(input)) return;
    const part = OF_EACH_LOOP.has(input) ? inCommon : 1;
    shared += part * (a.derivatives[k] ?? 0) * (b.derivatives[k] ?? 0);
  });
  if (isSameReading || sameFigure(a.asked, b.asked)) shared += a.model * b.model;
  return a.predicted * b.predicted * shared + (isSameReading ? a.meter * a.meter : 0);
};

/** What two figures have in common, as a share of both: all but the meter's part. */
export type Relative = (spread: StraySpread) => Float64Array;

/**
 * Of every two of these figures, row by row. It hangs on the spread alone, which many places of a cause's unknowns share:
 * reckoned once each.
 */
export const relativeOf = (
  observed: readonly { readonly asked: AskedFigure; readonly isBaseline: boolean }[],
  shares: LoopShares
): Relative => {
  const known = new WeakMap<StraySpread, Float64Array>();
  const size = observed.length;
  return (spread) => {
    const found = known.get(spread);
    if (found) return found;
    const rows = observed.map(({ asked, isBaseline }, k): Row => ({
      ...{ asked, isBaseline },
      predicted: 1,
      derivatives: spread.derivatives[k]!,
      model: spread.model[k]!,
      meter: 0
    }));
    const strays = { inputs: spread.inputs, shares };
    const made = new Float64Array(size * size);
    for (let i = 0; i < size; i++)
      for (let j = 0; j <= i; j++)
        made[i * size + j] = made[j * size + i] = covarianceOf(rows[i]!, rows[j]!, strays, i === j);
    known.set(spread, made);
    return made;
  };
};
