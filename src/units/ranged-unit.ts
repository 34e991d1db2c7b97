import { fromStored } from './convert';
import { unitBySymbol } from './displayed-unit';
import type { QuantityKind, UnitSystem } from './kind';
import type { Unit } from './unit';

/**
 * Units of the kinds whose values spread over decades, largest first: a loop has tenths of an ohm, its
 * insulation has hundreds of megohms.
 */
const RANGES: Partial<Record<QuantityKind, readonly string[]>> = {
  resistance: ['MΩ', 'kΩ', 'Ω', 'mΩ'],
  insulation: ['GΩ', 'MΩ', 'kΩ', 'Ω'],
  capacitance: ['µF', 'nF', 'pF'],
  time: ['s', 'ms'],
  duration: ['h', 'min', 's'],
  volume: ['m³', 'L']
};

/** The largest unit in which the value, rounded as shown, is 1 or more; undefined where the kind has one unit. */
export function rangedUnit(value: number, kind: QuantityKind, system: UnitSystem): Unit | undefined {
  if (value === 0 || (kind === 'volume' && system === 'imperial')) return undefined;
  const units = (RANGES[kind] ?? []).flatMap((symbol) => unitBySymbol(kind, symbol) ?? []);
  const fits = (unit: Unit): boolean => Number(Math.abs(fromStored(value, unit)).toPrecision(3)) >= 1;
  return units.find(fits) ?? units.at(-1);
}
