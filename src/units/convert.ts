import type { Unit } from './unit';

/** The stored value of `amount` units, without the zero shift that only temperatures have. */
export function scaled(amount: number, unit: Unit): number {
  return (amount * unit.times) / unit.over;
}

/** The stored value of `amount` units. */
export function toStored(amount: number, unit: Unit): number {
  return tidy(scaled(amount, unit) + unit.offset);
}

/** How many units a stored value is. */
export function fromStored(value: number, unit: Unit): number {
  return ((value - unit.offset) * unit.over) / unit.times;
}

/** Drops the last bit or two, so that 1.8 + 0.6 is stored as 2.4 and minus nought as nought. */
export function tidy(value: number): number {
  return Number(value.toPrecision(15)) + 0;
}
