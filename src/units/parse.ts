import { t } from '#i18n/message';
import type { Amount } from './amount';
import { tidy, toStored } from './convert';
import { displayedUnit } from './displayed-unit';
import { readExpression } from './expression';
import { formatForEdit } from './format-for-edit';
import type { QuantityKind, UnitSystem } from './kind';
import { normalise } from './normalise';
import { Refusal } from './refusal';

/** Nobody types more into a field; it also bounds how deep parentheses can be. */
const LONGEST = 200;
/** Far beyond any quantity, and far enough from overflow for every conversion back. */
const LARGEST = 1e100;

/** `value` is in stored units (see unit.ts); `echo` is the value as the field will show it. */
export type ParseResult =
  | { readonly ok: true; readonly value: number; readonly echo: string }
  | { readonly ok: false; readonly reason: string };

/**
 * Reads what somebody typed into a field: a number, a number with any unit of the kind, feet and inches, or a
 * simple sum of them. A number without a unit has the unit that the field displays. Never throws: whatever is
 * not understood, or could be understood in two ways, is refused with the reason as a sentence.
 */
export function parseQuantity(text: string, kind: QuantityKind, system: UnitSystem): ParseResult {
  try {
    const value = readValue(text, kind, system);
    return { ok: true, value, echo: formatForEdit(value, kind, system) };
  } catch (error) {
    if (error instanceof Refusal) return { ok: false, reason: error.message };
    throw error;
  }
}

function readValue(text: string, kind: QuantityKind, system: UnitSystem): number {
  const clean = normalise(text);
  if (clean === '') throw new Refusal(t('refusal.empty'));
  if (clean.length > LONGEST) throw new Refusal(t('refusal.tooLong', { most: LONGEST }));
  const value = storedValue(readExpression(clean, kind), kind, system);
  // NaN is what two overflows leave of each other.
  if (!(Math.abs(value) <= LARGEST)) throw new Refusal(t('refusal.resultTooLarge'));
  if (kind === 'count' && (!Number.isSafeInteger(value) || value < 0)) {
    throw new Refusal(t('refusal.count'));
  }
  return value;
}

function storedValue(amount: Amount, kind: QuantityKind, system: UnitSystem): number {
  const [unit, other] = amount.units;
  if (other !== undefined && amount.units.some((each) => each.offset !== 0)) {
    throw new Refusal(t('refusal.twoScales'));
  }
  if (unit !== undefined) return tidy(amount.value + unit.offset);
  const displayed = displayedUnit(kind, system);
  return displayed === undefined ? tidy(amount.value) : toStored(amount.value, displayed);
}
