import { fromStored, tidy, toStored } from './convert';
import { unitBySymbol } from './displayed-unit';
import type { QuantityKind, UnitSystem } from './kind';

type Step = readonly [amount: number, symbol: string];

const STEPS: Readonly<Record<QuantityKind, Step>> = {
  length: [0.05, 'm'],
  smallLength: [1, 'mm'],
  angle: [1, '°'],
  count: [1, ''],
  frequency: [1, 'kHz'],
  inductance: [1, 'µH'],
  capacitance: [1, 'nF'],
  resistance: [0.1, 'Ω'],
  insulation: [1, 'MΩ'],
  time: [0.1, 's'],
  duration: [1, 'min'],
  ratio: [0.01, '%'],
  temperature: [1, '°C'],
  volume: [1, 'L'],
  speed: [1, 'km/h'],
  pace: [1, 'm/h'],
  plain: [0.1, '']
};
const IMPERIAL_STEPS: Partial<Record<QuantityKind, Step>> = {
  length: [1, 'in'],
  smallLength: [0.05, 'in'],
  temperature: [1, '°F'],
  volume: [1, 'gal'],
  speed: [1, 'mph'],
  pace: [5, 'ft/h']
};
/** With shift. */
const COARSE = 10;

/**
 * The stored value that an arrow key leads to: up (1) or down (-1) to the next round number of the displayed
 * unit, ten steps further with `coarse`. Ratios step by 0.01 %, by 0.1 % from 1 % and by 1 % from 10 %, because
 * a trip threshold and a release ratio share the kind. A count stops at nought; what is not finite stays.
 */
export function stepped(
  value: number,
  kind: QuantityKind,
  system: UnitSystem,
  direction: 1 | -1,
  coarse = false
): number {
  if (!Number.isFinite(value)) return value;
  const [amount, symbol] = (system === 'imperial' ? IMPERIAL_STEPS[kind] : undefined) ?? STEPS[kind];
  const unit = unitBySymbol(kind, symbol);
  const size = kind === 'ratio' ? amount * ratioGrowth(value) : amount;
  const position = (unit === undefined ? value : fromStored(value, unit)) / size;
  const next = multiple(position, direction, coarse ? COARSE : 1) * size;
  const bounded = kind === 'count' ? Math.max(0, next) : next;
  return unit === undefined ? tidy(bounded) : toStored(tidy(bounded), unit);
}

/** A value that is a multiple but for rounding counts as one. */
function multiple(position: number, direction: 1 | -1, steps: number): number {
  const slack = 1e-6;
  return direction === 1 ? Math.floor(position + slack) + steps : Math.ceil(position - slack) - steps;
}

function ratioGrowth(ratio: number): number {
  const size = Math.abs(ratio) * (1 + 1e-9);
  if (size >= 0.1) return 100;
  return size >= 0.01 ? 10 : 1;
}
