/** Round values of a number in the unit in which it is shown: what is told of one of them is all of it. */
import { fromStored, tidy, toStored } from '#units/convert';
import { displayedUnit } from '#units/displayed-unit';
import type { UnitSystem } from '#units/kind';
import { INCH_UNIT } from '#units/unit';
import { quantityOf } from './quantity';
import type { Variable } from './variable';

/** Multiples of a step, by their places. */
export interface Grid {
  /** How far one value lies from the next, as values are stored. */
  readonly step: number;
  readonly placeOf: (value: number) => number;
  readonly valueAt: (place: number) => number;
}

/** Of feet and inches: fractions, and decimals of which none lies beside a fraction so near that it would be shown as one. */
const INCHES = [12, 6, 3, 1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 0.005];
/** Of all else: 100, 50, 20, 10, 5 and so on. */
const AMOUNTS = [2, 1, 0, -1, -2, -3, -4, -5, -6, -7].flatMap((power) =>
  [10, 5, 2].map((amount) => Number(`${amount}e${power - 1}`))
);
/** The finest is so many times finer than the coarsest. */
const DEEP = 1000;

/** Coarsest first, from `coarsest` down. */
export const gridsOf = (variable: Variable, system: UnitSystem, coarsest: number): readonly Grid[] => {
  const kind = quantityOf(variable);
  const isInFeet = kind === 'length' && system === 'imperial';
  const unit = isInFeet ? INCH_UNIT : displayedUnit(kind, system);
  const size = unit ? unit.times / unit.over : 1;
  return (isInFeet ? INCHES : AMOUNTS)
    .filter((amount) => amount * size <= coarsest * (1 + 1e-9) && amount * size * DEEP > coarsest)
    .map((amount) => ({
      step: amount * size,
      placeOf: (value) => (unit ? fromStored(value, unit) : value) / amount,
      valueAt: (place) => (unit ? toStored(tidy(place * amount), unit) : tidy(place * amount))
    }));
};
