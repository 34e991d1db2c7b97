import type { QuantityKind, UnitSystem } from './kind';
import { UNITS, type Unit } from './unit';

const SYMBOLS: Readonly<Record<UnitSystem, Partial<Record<QuantityKind, string>>>> = {
  metric: { length: 'm', smallLength: 'mm', temperature: '°C', volume: 'L', speed: 'km/h', pace: 'm/h' },
  imperial: { length: 'ft', smallLength: 'in', temperature: '°F', volume: 'gal', speed: 'mph', pace: 'ft/h' }
};

/** The unit of this kind with that symbol, or undefined. */
export function unitBySymbol(kind: QuantityKind, symbol: string): Unit | undefined {
  return UNITS[kind].find((unit) => unit.symbol === symbol);
}

/**
 * The unit that a bare number in an edit field has, and in which the field shows its value; undefined for
 * counts and plain numbers.
 */
export function displayedUnit(kind: QuantityKind, system: UnitSystem): Unit | undefined {
  const symbol = SYMBOLS[system][kind];
  return symbol === undefined ? UNITS[kind][0] : unitBySymbol(kind, symbol);
}
