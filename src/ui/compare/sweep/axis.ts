/** Axes of a chart in the unit that people read, with round ticks. Pure. */
import { scaleLinear, scaleLog } from 'd3-scale';
import { fromStored, toStored } from '#units/convert';
import { plain } from '#units/digits';
import { displayedUnit } from '#units/displayed-unit';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { rangedUnit } from '#units/ranged-unit';

export type ScaleKind = 'linear' | 'logarithmic';

export interface Tick {
  /** Stored units. */
  readonly value: number;
  readonly text: string;
}

export interface Axis {
  /** Pixels of a stored value. */
  readonly place: (value: number) => number;
  /** Stored value at a pixel. */
  readonly invert: (pixels: number) => number;
  readonly ticks: readonly Tick[];
  /** Symbol of the unit of the ticks' texts; empty without one. */
  readonly unit: string;
  /** Ends of the axis, stored units. */
  readonly domain: readonly [number, number];
}

export interface AxisWish {
  readonly kind: QuantityKind;
  readonly system: UnitSystem;
  /** Stored units, the first at `pixels[0]`. */
  readonly domain: readonly [number, number];
  readonly pixels: readonly [number, number];
  readonly scale?: ScaleKind;
  /** Pixels between two ticks at least. */
  readonly perTick: number;
  readonly isWhole?: boolean;
}

const digitsOf = (tick: number): string => plain(Number(tick.toPrecision(6)));

function ticksOf(wanted: number, low: number, high: number, scale: ScaleKind): readonly number[] {
  if (scale === 'linear') return scaleLinear([low, high], [0, 1]).ticks(wanted);
  const all = scaleLog([low, high], [0, 1]).ticks(wanted);
  const decades = all.filter((tick) => /^1e/.test(tick.toExponential()));
  if (decades.length > 1) return decades;
  const few = all.filter((tick) => /^[125]/.test(tick.toExponential()));
  return few.length > 1 ? few : scaleLinear([low, high], [0, 1]).ticks(Math.min(3, wanted));
}

/** A logarithmic axis wants a domain above nought. */
export function axisOf({
  kind,
  system,
  domain,
  pixels,
  scale = 'linear',
  perTick,
  isWhole = false
}: AxisWish): Axis {
  const largest = Math.max(Math.abs(domain[0]), Math.abs(domain[1]));
  const unit = rangedUnit(largest, kind, system) ?? displayedUnit(kind, system);
  const shown = (value: number) => (unit ? fromStored(value, unit) : value);
  const stored = (amount: number) => (unit ? toStored(amount, unit) : amount);
  const [low, high] = [shown(domain[0]), shown(domain[1])];
  const make = scale === 'linear' ? scaleLinear() : scaleLog();
  const map = make.domain([low, high]).range([...pixels]);
  const wanted = Math.max(2, Math.floor(Math.abs(pixels[1] - pixels[0]) / perTick));
  const ticks = ticksOf(wanted, low, high, scale)
    .filter((tick) => !isWhole || Number.isInteger(tick))
    .map((tick) => ({ value: stored(tick), text: digitsOf(tick) }));
  return {
    place: (value) => map(shown(value)),
    invert: (pixel) => stored(map.invert(pixel)),
    ticks,
    unit: unit?.symbol ?? '',
    domain
  };
}
