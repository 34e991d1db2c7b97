/** What was read, as the inference takes it. */
import type { Accuracy } from '#plan/catalogue/instruments';
import type { AskedFigure } from '../forward/contract';
import { NINETEEN_IN_TWENTY } from '../judge';

export interface Observed {
  readonly asked: AskedFigure;
  /** Null: over the meter's range. */
  readonly value: number | null;
  readonly accuracy: Accuracy;
  /** Taken on the day of commissioning, when all was well: what later readings are held against. */
  readonly isBaseline: boolean;
}

/** No meter leaves less open, of the reading, whatever is stated of it. */
const LEAST_SHARE = 1e-4;

/** One standard deviation of the meter where `value` is to be read. */
export const meterAt = (value: number, { share, floor }: Accuracy): number =>
  Math.max(share * Math.abs(value) + floor, LEAST_SHARE * Math.abs(value)) / NINETEEN_IN_TWENTY;

/** Figures that are read again under the same conditions share the model's error. */
export const sameFigure = (a: AskedFigure, b: AskedFigure): boolean =>
  a.quantity === b.quantity &&
  a.testPoint === b.testPoint &&
  a.loop === b.loop &&
  a.meterFrequency_Hz === b.meterFrequency_Hz &&
  a.vehicle === b.vehicle;
