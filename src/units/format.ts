import type { DecimalSign } from '#i18n/locale';
import { fromStored } from './convert';
import { decimals, significant, typeset } from './digits';
import { displayedUnit, unitBySymbol } from './displayed-unit';
import { feetInchesText } from './feet-inches-text';
import type { QuantityKind, UnitSystem } from './kind';
import { rangedUnit } from './ranged-unit';
import type { Unit } from './unit';

/** `text` is number and unit together; feet and inches carry their marks in `number` and have no `unit`. */
export interface Formatted {
  readonly text: string;
  readonly number: string;
  readonly unit: string;
}

/**
 * `digits`: significant digits instead of the kind's own rule. `unit`: the symbol of a unit to keep to, for
 * columns. `signed`: a plus before positive numbers. `decimalSign`: another than the spoken language's.
 */
export interface FormatOptions {
  readonly digits?: number;
  readonly unit?: string;
  readonly signed?: boolean;
  readonly decimalSign?: DecimalSign;
}

/** Least and most decimals, by symbol, where a fixed fineness reads better than significant digits. */
const DECIMALS: Readonly<Record<string, readonly [number, number]>> = {
  m: [2, 3],
  cm: [0, 1],
  mm: [0, 2],
  ft: [2, 2],
  in: [0, 3],
  '°': [0, 1],
  '°C': [0, 1],
  '°F': [0, 1],
  min: [0, 1],
  h: [0, 2],
  'm/h': [0, 1],
  'ft/h': [0, 1],
  'km/h': [0, 1],
  mph: [0, 1]
};
const SIGNIFICANT: Partial<Record<QuantityKind, number>> = { frequency: 4, inductance: 4 };
/** A sixteenth of an inch is shown as one when the value is this near to it (metres). */
const FRACTION_TOLERANCE = 5e-5;

/**
 * A stored value (see unit.ts) as people read it. Undefined, null and whatever is not finite give a dash. Throws
 * a RangeError for a `unit` that the kind does not have, and for digits outside 1 to 100.
 */
export function format(
  value: number | undefined | null,
  kind: QuantityKind,
  system: UnitSystem,
  options: FormatOptions = {}
): Formatted {
  if (value === undefined || value === null || !Number.isFinite(value))
    return { text: '–', number: '–', unit: '' };
  if (kind === 'length' && system === 'imperial' && options.unit === undefined) {
    const number = finish(feetInchesText(value, FRACTION_TOLERANCE, 3), value, options);
    return { text: number, number, unit: '' };
  }
  const unit = chosenUnit(value, kind, system, options.unit);
  const amount = unit === undefined ? value : fromStored(value, unit);
  const number = finish(digitsOf(amount, kind, unit, options.digits), value, options);
  const symbol = unit?.symbol ?? '';
  return { text: joined(number, symbol), number, unit: symbol };
}

/** Number and symbol with the space that belongs between them. */
export function joined(number: string, symbol: string): string {
  return symbol === '' || symbol === '°' ? number + symbol : `${number} ${symbol}`;
}

function chosenUnit(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  symbol?: string
): Unit | undefined {
  if (symbol === undefined) return rangedUnit(value, kind, system) ?? displayedUnit(kind, system);
  const unit = unitBySymbol(kind, symbol);
  if (unit === undefined) throw new RangeError(`no unit of ${kind} has the symbol ${symbol}`);
  return unit;
}

function digitsOf(amount: number, kind: QuantityKind, unit: Unit | undefined, digits?: number): string {
  if (digits !== undefined) return significant(amount, digits);
  const [least, most] = kind === 'count' ? [0, 2] : (DECIMALS[unit?.symbol ?? ''] ?? []);
  if (least !== undefined && most !== undefined) return decimals(amount, least, most);
  return significant(amount, SIGNIFICANT[kind] ?? 3);
}

function finish(number: string, value: number, options: FormatOptions): string {
  const sign = options.signed === true && value > 0 && /[1-9]/.test(number) ? '+' : '';
  return sign + typeset(number, options.decimalSign);
}
