/** The one unit in which a column shows a quantity, by the units shown, and how fine it is worth reading. */
import { fromStored, tidy } from '#units/convert';
import { unitBySymbol } from '#units/displayed-unit';
import type { QuantityKind, UnitSystem } from '#units/kind';

export type MeasureName =
  | 'length'
  | 'depth'
  | 'thickness'
  | 'volume'
  | 'mass'
  | 'inductance'
  | 'resistance'
  | 'insulation'
  | 'capacitance'
  | 'frequency'
  | 'resonance'
  | 'share'
  | 'response'
  | 'duration'
  | 'pulse';

export interface Measure {
  readonly symbol: string;
  /** Places after the decimal sign. */
  readonly digits: number;
  /** The stored value, SI, in that unit; null for none and for what is no number. */
  readonly of: (stored: number | null | undefined) => number | null;
}

/** Kilograms, by definition. */
const POUND = 0.45359237;

const finite =
  (convert: (stored: number) => number): Measure['of'] =>
  (stored) =>
    typeof stored === 'number' && Number.isFinite(stored) ? tidy(convert(stored)) : null;

/** Throws a RangeError for a symbol that the kind does not have. */
function inUnit(kind: QuantityKind, symbol: string, digits: number): Measure {
  const unit = unitBySymbol(kind, symbol);
  if (!unit) throw new RangeError(`no unit of ${kind} has the symbol ${symbol}`);
  return { symbol, digits, of: finite((stored) => fromStored(stored, unit)) };
}

const SAME = {
  inductance: inUnit('inductance', 'µH', 1),
  resistance: inUnit('resistance', 'Ω', 3),
  // wet copper leaks through kilohms
  insulation: inUnit('insulation', 'MΩ', 4),
  capacitance: inUnit('capacitance', 'nF', 1),
  frequency: inUnit('frequency', 'kHz', 2),
  // known to some percent: nobody reads its hundredths
  resonance: inUnit('frequency', 'kHz', 0),
  share: inUnit('ratio', '%', 0),
  // a trip threshold is some hundredths of a percent
  response: inUnit('ratio', '%', 3),
  duration: inUnit('time', 's', 1),
  // 0.125 s is usual
  pulse: inUnit('time', 's', 3)
} as const;

const BY_SYSTEM: Readonly<Record<UnitSystem, Readonly<Record<MeasureName, Measure>>>> = {
  metric: {
    ...SAME,
    length: inUnit('length', 'm', 2),
    depth: inUnit('smallLength', 'mm', 0),
    thickness: inUnit('smallLength', 'mm', 1),
    volume: inUnit('volume', 'L', 2),
    mass: { symbol: 'kg', digits: 2, of: finite((stored) => stored) }
  },
  imperial: {
    ...SAME,
    length: inUnit('length', 'ft', 2),
    depth: inUnit('smallLength', 'in', 2),
    thickness: inUnit('smallLength', 'in', 3),
    volume: inUnit('volume', 'gal', 2),
    mass: { symbol: 'lb', digits: 2, of: finite((stored) => stored / POUND) }
  }
};

export const measureOf = (name: MeasureName, system: UnitSystem): Measure => BY_SYSTEM[system][name];
