import { INCH } from './constants';
import { fromStored } from './convert';
import { decimalSign } from '#i18n/locale';
import { decimals } from './digits';
import { displayedUnit } from './displayed-unit';
import { feetInchesText } from './feet-inches-text';
import { joined } from './format';
import type { QuantityKind, UnitSystem } from './kind';

/**
 * Metres: three quarters of the last decimal of an inch. Any less, and 2.12504" would show as 2.125" and, once
 * committed, as 2 1/8".
 */
const FRACTION_TOLERANCE = 0.75e-4 * INCH;

/**
 * A stored value as an edit field shows it, always in the unit that a bare number in that field has, with plain
 * hyphens and the decimal sign of the language, which the reader never takes for anything else. Reading it back gives the value within 0.1 mm for lengths, 1 µm for small lengths and 10⁻⁹
 * of the value for the rest. Undefined, null and whatever is not finite give an empty field.
 */
export function formatForEdit(
  value: number | undefined | null,
  kind: QuantityKind,
  system: UnitSystem
): string {
  if (value === undefined || value === null || !Number.isFinite(value)) return '';
  return written(value, kind, system).replace('.', decimalSign());
}

function written(value: number, kind: QuantityKind, system: UnitSystem): string {
  if (kind === 'length' && system === 'imperial') return feetInchesText(value, FRACTION_TOLERANCE, 4);
  const unit = displayedUnit(kind, system);
  if (unit === undefined) return brief(value);
  const amount = fromStored(value, unit);
  if (kind === 'length') return joined(decimals(amount, 0, 4), unit.symbol);
  if (kind === 'smallLength') return joined(decimals(amount, 0, system === 'metric' ? 3 : 5), unit.symbol);
  return joined(brief(amount), unit.symbol);
}

/** Twelve digits hide the noise of binary fractions and keep everything that anybody can have typed. */
function brief(value: number): string {
  return String(Number(value.toPrecision(12)));
}
