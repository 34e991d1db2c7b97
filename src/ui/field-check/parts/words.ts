/** Verdicts, ranges and limits as people read them. */
import type { FigureVerdict, Limit } from '#analysis/fault-finding/results';
import { t } from '#i18n/message';
import { ACCEPTANCE_LIMITS } from '#plan/catalogue/acceptance';
import type { Quantity, Weather } from '#plan/schema';
import type { UnitSystem } from '#units/kind';
import { rangeText } from '../../readout/range-text';
import { figureText, kindOf, optionsOf, shownValue } from './figures';

export type Tone = 'good' | 'caution' | 'problem' | 'plain';

/** How a verdict looks, beside its word and its symbol. */
export const TONES: Readonly<Record<FigureVerdict, Tone>> = {
  fits: 'good',
  low: 'caution',
  high: 'caution',
  'beyond a limit': 'problem',
  'in doubt': 'caution',
  'no expectation': 'plain'
};

export const verdictWord = (verdict: FigureVerdict): string => t(`field.verdict.${verdict}`);

/** "96.1 – 101 µH"; of a drop the smaller one first. */
export function spanText(low: number, high: number, quantity: Quantity, system: UnitSystem): string {
  const ends = [shownValue(low, quantity), shownValue(high, quantity)].toSorted((a, b) => a - b);
  return rangeText(ends[0]!, ends[1]!, kindOf(quantity), system, optionsOf(quantity));
}

/** "at least 50 MΩ", "60.0 – 100 µH". */
export function limitText({ least, most }: Limit, quantity: Quantity, system: UnitSystem): string {
  if (least !== null && most !== null) return spanText(least, most, quantity, system);
  if (least !== null) return t('field.atLeast', { value: figureText(least, quantity, system) });
  return t('field.atMost', { value: figureText(most, quantity, system) });
}

/** Who says so. */
export function sourceText(id: string): string {
  if (id === 'unit') return t('field.limit.unit');
  const known = ACCEPTANCE_LIMITS.find((each) => each.id === id);
  // each entry of the catalogue has its words: a test says so
  return known ? t(`field.source.${known.id}` as 'field.source.fp-96-636-inductance') : t('field.limit.own');
}

export const weatherText = (weather: Weather): string => t(`field.weather.${weather}`);
