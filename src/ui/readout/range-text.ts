import { format, type FormatOptions } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';

/** "81.2 – 86.9 µH": two values with one unit where both have the same; a single value where both read alike. */
export function rangeText(
  low: number,
  high: number,
  kind: QuantityKind,
  system: UnitSystem,
  options: FormatOptions = {}
): string {
  const to = format(high, kind, system, options);
  const sameUnit = to.unit === '' ? options : { ...options, unit: to.unit };
  const from = format(low, kind, system, sameUnit);
  if (from.text === to.text) return to.text;
  return from.unit === to.unit ? `${from.number} – ${to.text}` : `${from.text} – ${to.text}`;
}
