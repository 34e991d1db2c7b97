/** A visit's readings as figures, each with what was expected of it and what is odd about it. */
import { accuracyOf } from '#plan/catalogue/instruments';
import type { Quantity, Site } from '#plan/schema';
import { checkedFigures } from './checked';
import { judge, meterDeviation, type Judgement } from './judge';
import type { ExpectedFigure, MeasuredFigure, Told, ToldAmount, ToldValue } from './results';

const KIND_OF_QUANTITY: Readonly<Record<Quantity, ToldAmount['kind']>> = {
  resistanceDc_ohm: 'resistance',
  inductance_H: 'inductance',
  q: 'plain',
  frequency_Hz: 'frequency',
  insulation_ohm: 'insulation',
  insulationBetween_ohm: 'insulation',
  deltaLOverL: 'ratio'
};

/** A response is told as the drop that it is. */
export const valueOf = (quantity: Quantity, value: number): ToldValue => ({
  value: quantity === 'deltaLOverL' ? -value : value,
  kind: KIND_OF_QUANTITY[quantity]
});

/** What is asked about a figure that lies far out of this circuit's own range; null for any other. */
export function farOffTold(
  quantity: Quantity,
  value: number,
  expected: Pick<ExpectedFigure, 'low' | 'high'> | null,
  { farOff }: Pick<Judgement, 'farOff'>
): Told | null {
  if (farOff === null || !expected || expected.low === null || expected.high === null) return null;
  const [low, high] = [valueOf(quantity, expected.low), valueOf(quantity, expected.high)];
  return { key: `doubt.far.${farOff}.${quantity}`, values: { value: valueOf(quantity, value), low, high } };
}

/** Why a figure is in doubt or asked about, or which limit it breaks; null for one that is none of it. */
function doubtOf(
  site: Site,
  place: number,
  { quantity, value, expected, verdict }: Pick<MeasuredFigure, 'quantity' | 'value' | 'expected' | 'verdict'>
): Told | null {
  const reading = site.readings[place];
  if (!reading || value === null) return null;
  const told = (key: string, other: number): Told => ({
    key,
    values: { value: valueOf(quantity, value), other: valueOf(quantity, other) }
  });
  const judgement = judge(quantity, value, expected, accuracyOf(site, reading, quantity));
  const { meant, limit } = judgement;
  if (verdict === 'in doubt')
    return meant === null
      ? { key: `doubt.${quantity}`, values: { value: valueOf(quantity, value) } }
      : told('doubt.meant', meant);
  if (verdict !== 'beyond a limit' || !limit) return farOffTold(quantity, value, expected, judgement);
  if (limit.least !== null && value < limit.least) return told('doubt.under', limit.least);
  return limit.most === null ? null : told('doubt.over', limit.most);
}

/** `place` in `site.readings`; `expected` under the conditions of that reading. */
export function measuredFigures(
  site: Site,
  place: number,
  expected: readonly ExpectedFigure[]
): readonly MeasuredFigure[] {
  const reading = site.readings[place];
  if (!reading) return [];
  return checkedFigures(site, place, reading, expected).map((figure): MeasuredFigure => {
    const size = figure.value ?? figure.expected?.value ?? 0;
    return {
      ...figure,
      meterDeviation: meterDeviation(size, accuracyOf(site, reading, figure.quantity)),
      doubt: doubtOf(site, place, figure)
    };
  });
}
