/** The unit that a price is for, as it is shown and typed: prices are stored for a metre, a cubic metre, a piece, an hour. */
import type { TakeoffUnit } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import { fromStored, tidy, toStored } from '#units/convert';
import { unitBySymbol } from '#units/displayed-unit';
import type { QuantityKind, UnitSystem } from '#units/kind';

/** What is shown has twelve digits, fewer than what is stored, so that the noise of the way there and back is hidden. */
const brief = (value: number): number => Number(value.toPrecision(12));

const symbolOf = (unit: TakeoffUnit, system: UnitSystem): { kind: QuantityKind; symbol: string } | null => {
  if (unit === 'm') return { kind: 'length', symbol: system === 'metric' ? 'm' : 'ft' };
  if (unit === 'm3') return { kind: 'volume', symbol: system === 'metric' ? 'L' : 'gal' };
  return null;
};

/** Stored units that one shown unit is. */
function sizeOf(unit: TakeoffUnit, system: UnitSystem): number {
  const found = symbolOf(unit, system);
  const shown = found && unitBySymbol(found.kind, found.symbol);
  return shown ? toStored(1, shown) : 1;
}

/** "m", "gal", "piece". */
export function priceUnitText(unit: TakeoffUnit, system: UnitSystem): string {
  const found = symbolOf(unit, system);
  if (found) return found.symbol;
  return unit === 'h' ? 'h' : t(unit === 'day' ? 'estimate.oneDay' : 'estimate.onePiece');
}

export const priceShown = (stored: number, unit: TakeoffUnit, system: UnitSystem): number =>
  brief(stored * sizeOf(unit, system));

export const priceStored = (shown: number, unit: TakeoffUnit, system: UnitSystem): number =>
  tidy(shown / sizeOf(unit, system));

interface Measured {
  readonly amount: number;
  readonly unit: TakeoffUnit;
  /** For one stored unit. */
  readonly price: number | null;
}

/** The same numbers of another unit: who counts forty of something and then says that they are feet has forty feet. */
export function inUnit({ amount, unit, price }: Measured, wanted: TakeoffUnit, system: UnitSystem): Measured {
  const shown = brief(amount / sizeOf(unit, system));
  return {
    amount: tidy(shown * sizeOf(wanted, system)),
    unit: wanted,
    price: price === null ? null : priceStored(priceShown(price, unit, system), wanted, system)
  };
}

/** How an amount of the unit is typed. */
export const amountKind = (unit: TakeoffUnit): QuantityKind =>
  unit === 'm' ? 'length' : unit === 'm3' ? 'volume' : 'plain';

/** Twists on a metre, or on a foot. */
export const perLengthShown = (perMetre: number, system: UnitSystem): number =>
  brief(system === 'metric' ? perMetre : perMetre * toStored(1, unitBySymbol('length', 'ft')!));
export const perLengthStored = (shown: number, system: UnitSystem): number =>
  tidy(system === 'metric' ? shown : fromStored(shown, unitBySymbol('length', 'ft')!));
