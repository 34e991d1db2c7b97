/** What a number field makes of what is typed into it. */
import { t } from '#i18n/message';
import { format } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { parseQuantity, type ParseResult } from '#units/parse';
import { stepped } from '#units/step';

export interface EntryRule {
  readonly kind: QuantityKind;
  readonly system: UnitSystem;
  /** Stored units. */
  readonly min: number;
  readonly max: number;
}

/** A value in stored units that the rule admits, or the reason why not. */
export function readEntry(text: string, { kind, system, min, max }: EntryRule): ParseResult {
  const result = parseQuantity(text, kind, system);
  if (!result.ok || (result.value >= min && result.value <= max)) return result;
  const [least, most] = [min, max].map((bound) => format(bound, kind, system).text);
  return { ok: false, reason: t('field.outOfRange', { least: least ?? '', most: most ?? '' }) };
}

/** Where an arrow key leads from `value`, kept within the rule. */
export function stepEntry(value: number, rule: EntryRule, direction: 1 | -1, coarse: boolean): number {
  const next = stepped(value, rule.kind, rule.system, direction, coarse);
  return Math.min(rule.max, Math.max(rule.min, next));
}
