/** What somebody typed of one figure: a value, that the meter was over its range, or why it is neither. */
import { t } from '#i18n/message';
import { BOUNDS } from '#plan/bounds';
import type { Quantity } from '#plan/schema';
import { normalise } from '#units/normalise';
import { parseQuantity } from '#units/parse';
import { format } from '#units/format';
import { formatForEdit } from '#units/format-for-edit';
import type { QuantityKind } from '#units/kind';
import { kindOf, optionsOf, shownValue } from '../parts/figures';

export type Typed =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'value'; readonly value: number }
  | { readonly kind: 'over range' }
  | { readonly kind: 'refused'; readonly reason: string };

/** As meters write it, and as people do: OL, > 2000, ∞, over range. */
const OVER_RANGE =
  /^(?:o\.?\s?l\.?|0l|ofl|over(?:flow|load|\s?-?range)?|open|offen|(?:über|ueber)(?:lauf|last|\s?-?bereich)|außer(?:halb)?\s?-?bereich|inf(?:inity)?|∞|[>≥]=?\s*[\d.,]*\s*\p{L}*)$/iu;

export const isOverRange = (text: string): boolean => OVER_RANGE.test(normalise(text));

/** The units in which a bare number may stand, the usual one first. */
export const UNITS_OF: Readonly<Record<Quantity, readonly string[]>> = {
  resistanceDc_ohm: ['Ω', 'kΩ', 'MΩ'],
  inductance_H: ['µH', 'mH'],
  q: [],
  frequency_Hz: ['kHz', 'Hz'],
  insulation_ohm: ['MΩ', 'GΩ', 'kΩ'],
  insulationBetween_ohm: ['MΩ', 'GΩ', 'kΩ'],
  deltaLOverL: ['%']
};

/** What the document can hold; stored units. */
const HELD: Readonly<Record<Quantity, readonly [least: number, most: number]>> = {
  resistanceDc_ohm: [0, 1e9],
  inductance_H: [0, BOUNDS.inductance.max],
  q: [0, 10_000],
  frequency_Hz: [0, BOUNDS.frequency.max],
  insulation_ohm: [0, 1e15],
  insulationBetween_ohm: [0, 1e15],
  deltaLOverL: [-1, 1]
};

const BARE = /^[\d.,+\-e ]+$/i;
const NOTHING: Typed = { kind: 'nothing' };

/** With the unit that stands beside the field, where none was typed. */
const withUnit = (text: string, unit: string | undefined): string =>
  unit !== undefined && BARE.test(text) ? `${text} ${unit}` : text;

/**
 * A response is asked for as a drop: 0.8 and −0.8 are both one, as units show it in either way. Only a plus in front says
 * that the inductance rose.
 */
function signed(value: number, text: string, quantity: Quantity): number {
  if (quantity !== 'deltaLOverL') return value;
  return text.startsWith('+') ? Math.abs(value) : -Math.abs(value);
}

/** `unit`: of a bare number. The value is in stored units. */
export function readTyped(text: string, quantity: Quantity, unit?: string): Typed {
  const clean = normalise(text);
  if (clean === '') return NOTHING;
  if (OVER_RANGE.test(clean)) return { kind: 'over range' };
  const kind = kindOf(quantity);
  const read = parseQuantity(withUnit(clean, unit), kind, 'metric');
  if (!read.ok) return { kind: 'refused', reason: read.reason };
  const value = signed(read.value, clean, quantity) + 0;
  const [least, most] = HELD[quantity];
  if (value >= least && value <= most) return { kind: 'value', value };
  const [from, to] = [least, most].map((bound) => format(bound, kind, 'metric').text);
  return { kind: 'refused', reason: t('field.outOfRange', { least: from ?? '', most: to ?? '' }) };
}

/** The same for what stands beside the figures: a temperature, a frequency. Undefined where nothing is typed. */
export function readAside(
  text: string,
  kind: QuantityKind,
  { min, max }: { readonly min: number; readonly max: number },
  system: 'metric' | 'imperial'
): number | undefined | { readonly reason: string } {
  if (text.trim() === '') return undefined;
  const read = parseQuantity(text, kind, system);
  if (!read.ok) return { reason: read.reason };
  if (read.value >= min && read.value <= max) return read.value;
  const [least, most] = [min, max].map((bound) => format(bound, kind, system).text);
  return { reason: t('field.outOfRange', { least: least ?? '', most: most ?? '' }) };
}

/** A kept figure as the field shows it again, exactly. */
export function typedText(value: number, quantity: Quantity): string {
  const text = formatForEdit(shownValue(value, quantity), kindOf(quantity), 'metric');
  // a rise is a negative drop: it is typed with a plus
  return quantity === 'deltaLOverL' && value > 0 ? text.replace('-', '+') : text;
}

/** How the value is read back, where it does not say the same as what was typed. */
export function echoOf(text: string, value: number, quantity: Quantity): string {
  const shown = format(shownValue(value, quantity), kindOf(quantity), 'metric', optionsOf(quantity)).text;
  const exact = typedText(value, quantity);
  const isPlain = [shown, exact].some((each) => normalise(each) === normalise(text));
  return isPlain ? '' : exact;
}
