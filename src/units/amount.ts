import { t } from '#i18n/message';
import { scaled } from './convert';
import type { QuantityKind } from './kind';
import { noun, Refusal } from './refusal';
import type { Unit } from './unit';

/**
 * A part of a sum. Without units it is a bare number that may still take one; with units `value` is in stored
 * units, zero shift left out. `written` is the number in front of the unit where nothing else was typed.
 */
export interface Amount {
  readonly value: number;
  readonly units: readonly Unit[];
  readonly written?: number;
}

/** A number with the unit typed behind it. */
export function withUnit(value: number, unit: Unit): Amount {
  return { value: scaled(value, unit), units: [unit], written: value };
}

function isBare(amount: Amount): boolean {
  return amount.units.length === 0;
}

/**
 * Adds up signed terms. Bare terms take the unit of the others (1.8 + 0.6 m is 2.4 m), which is only clear when
 * the others agree on one. Throws a Refusal otherwise.
 */
export function sum(terms: readonly Amount[]): Amount {
  const [first] = terms;
  if (first !== undefined && terms.length === 1) return first;
  const units = [...new Set(terms.flatMap((term) => term.units))];
  const [unit, other] = units;
  if (other !== undefined && terms.some(isBare)) {
    throw new Refusal(t('refusal.mixedSum'));
  }
  const values = terms.map((term) =>
    unit !== undefined && isBare(term) ? scaled(term.value, unit) : term.value
  );
  return { value: values.reduce((total, value) => total + value, 0), units };
}

/** Throws a Refusal when both factors have units. */
export function product(left: Amount, right: Amount, kind: QuantityKind): Amount {
  if (!isBare(left) && !isBare(right)) {
    throw new Refusal(t('refusal.product', { kind: noun(kind) }));
  }
  return { value: left.value * right.value, units: [...left.units, ...right.units] };
}

/**
 * Divides. A bare number over a number with a unit is a fraction of that unit: 3/4" is three quarters of an
 * inch. Throws a Refusal for a nought below the line and for one quantity over another.
 */
export function quotient(left: Amount, right: Amount, kind: QuantityKind): Amount {
  if (right.value === 0) throw new Refusal(t('refusal.divisionByNought'));
  if (isBare(right)) return { value: left.value / right.value, units: left.units };
  const [unit] = right.units;
  if (!isBare(left) || right.written === undefined || unit === undefined) {
    throw new Refusal(t('refusal.quotient', { kind: noun(kind) }));
  }
  return withUnit(left.value / right.written, unit);
}

/** The same with the other sign. */
export function negated(amount: Amount): Amount {
  return { value: -amount.value, units: amount.units };
}
