/**
 * One figure of a meter held against what was expected of it. It fits within what meter and design allow together: both are
 * plus-or-minuses that hold nineteen times in twenty, 1.96 standard deviations, and are added as squares. The design's is
 * the part of the plausible range on the figure's own side.
 */
import type { Accuracy } from '#plan/catalogue/instruments';
import type { Quantity } from '#plan/schema';
import type { ExpectedFigure, FigureVerdict, Limit } from './results';

export const NINETEEN_IN_TWENTY = 1.96;

type Held = Pick<ExpectedFigure, 'value' | 'low' | 'high' | 'limits'>;

export interface Judgement {
  readonly verdict: FigureVerdict;
  /** From the expected value, in standard deviations of meter and design together; null where that means nothing. */
  readonly deviations: number | null;
  /** The one that it breaks. */
  readonly limit: Limit | null;
  /** What may have been meant: the same digits with another prefix, or the other sign, which would fit. */
  readonly meant: number | null;
  /** On which side it lies so far out of this circuit's own range that it is asked about; the verdict stays what it is. */
  readonly farOff: 'below' | 'above' | null;
}

/** Outside of these no circuit of loops can read: the entry, or the meter, is in doubt. Common sense, far out. */
const POSSIBLE: Readonly<Record<Quantity, readonly [least: number, most: number]>> = {
  resistanceDc_ohm: [1e-3, 1e8],
  inductance_H: [5e-7, 0.05],
  q: [0.05, 500],
  frequency_Hz: [2e3, 5e5],
  insulation_ohm: [0, 1e12],
  insulationBetween_ohm: [0, 1e12],
  deltaLOverL: [-0.6, 0.2]
};

/**
 * Shares of what is expected at least and at most beyond which this circuit's own figure is questioned: a short or a bad
 * joint can read so, a meter that was not zeroed or bad contact does more often. No fault makes a Q much better than it was
 * designed. Judgement, no published source.
 */
const FAR_OFF: Readonly<Partial<Record<Quantity, readonly [below: number, above: number]>>> = {
  resistanceDc_ohm: [0.5, 10],
  inductance_H: [0.1, 10],
  q: [0, 3]
};

/** A prefix that was left out or mistaken; a response in percent that was taken for a fraction, or typed without its sign. */
export const SLIPS: Readonly<Partial<Record<Quantity, readonly number[]>>> = {
  resistanceDc_ohm: [1e-3, 1e3, 1e-6],
  inductance_H: [1e3, 1e-3, 1e6, 1e-6],
  frequency_Hz: [1e3, 1e-3],
  deltaLOverL: [-1, 0.01, -0.01, 100]
};

const isInsulation = (quantity: Quantity): boolean =>
  quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm';

/** A figure that is stored as a drop is larger the further it drops. */
const sizeOf = (value: number, quantity: Quantity): number => (quantity === 'deltaLOverL' ? -value : value);

/** One standard deviation of the meter alone, in the quantity's unit. */
export const meterDeviation = (value: number, { share, floor }: Accuracy): number =>
  (share * Math.abs(value) + floor) / NINETEEN_IN_TWENTY;

/** How far `value` lies from the expected one, in standard deviations; null where nothing is expected. */
export function deviationsFrom(
  value: number,
  { value: expected, low, high }: Held,
  accuracy: Accuracy
): number | null {
  if (expected === null) return null;
  const edge = value > expected ? high : low;
  const design = edge === null ? 0 : Math.abs(edge - expected) / NINETEEN_IN_TWENTY;
  const both = Math.hypot(design, meterDeviation(value, accuracy));
  if (both === 0) return value === expected ? 0 : null;
  return (value - expected) / both;
}

const isWithin = (deviations: number | null): boolean =>
  deviations !== null && Math.abs(deviations) <= NINETEEN_IN_TWENTY;

const broken = (value: number, limits: readonly Limit[]): Limit | null =>
  limits.find(({ least, most }) => (least !== null && value < least) || (most !== null && value > most)) ??
  null;

function farOffIn(value: number, quantity: Quantity, { low, high }: Held): Judgement['farOff'] {
  const shares = FAR_OFF[quantity];
  if (!shares || low === null || high === null) return null;
  if (value < shares[0] * low) return 'below';
  return value > shares[1] * high ? 'above' : null;
}

function meantBy(value: number, quantity: Quantity, expected: Held, accuracy: Accuracy): number | null {
  const candidates = (SLIPS[quantity] ?? []).map((factor) => value * factor);
  // the meter's floor belongs to the range in which it was read, and would let any small figure pass for another
  const { share } = accuracy;
  return candidates.find((each) => isWithin(deviationsFrom(each, expected, { share, floor: 0 }))) ?? null;
}

/** Over the range: nothing better can be said of an insulation; of anything else it is more than there should be. */
function judgeOverRange(quantity: Quantity, expected: Held | null): Judgement {
  const none = { deviations: null, limit: null, meant: null, farOff: null };
  if (isInsulation(quantity)) return { ...none, verdict: 'fits' };
  return { ...none, verdict: (expected?.value ?? null) === null ? 'no expectation' : 'high' };
}

/** `value` null: the meter was over its range. */
export function judge(
  quantity: Quantity,
  value: number | null,
  expected: Held | null,
  accuracy: Accuracy
): Judgement {
  if (value === null) return judgeOverRange(quantity, expected);
  const deviations = expected && deviationsFrom(value, expected, accuracy);
  const fits = isWithin(deviations);
  const meant = expected && !fits ? meantBy(value, quantity, expected, accuracy) : null;
  const limit = expected && broken(value, expected.limits);
  const [least, most] = POSSIBLE[quantity];
  const isImpossible = meant !== null || value < least || value > most;
  const farOff = expected && !fits && !isImpossible ? farOffIn(value, quantity, expected) : null;
  const judged = (verdict: FigureVerdict): Judgement => ({ verdict, deviations, limit, meant, farOff });
  if (isImpossible) return judged('in doubt');
  if (limit) return judged('beyond a limit');
  if (fits) return judged('fits');
  if (expected === null || expected.value === null)
    return judged(expected !== null && expected.limits.length > 0 ? 'fits' : 'no expectation');
  return judged(sizeOf(value, quantity) > sizeOf(expected.value, quantity) ? 'high' : 'low');
}
