/** What is measured, and where, as people read it. */
import { t } from '#i18n/message';
import type { Quantity, Site, TestPoint } from '#plan/schema';
import { format, type FormatOptions } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { loopName } from '../../names';

interface Shown {
  readonly kind: QuantityKind;
  readonly options: FormatOptions;
}

const SHOWN: Readonly<Record<Quantity, Shown>> = {
  // as meters show it: tenths of an ohm, not hundreds of milliohms
  resistanceDc_ohm: { kind: 'resistance', options: { unit: 'Ω' } },
  inductance_H: { kind: 'inductance', options: {} },
  q: { kind: 'plain', options: { digits: 3 } },
  frequency_Hz: { kind: 'frequency', options: {} },
  insulation_ohm: { kind: 'insulation', options: {} },
  insulationBetween_ohm: { kind: 'insulation', options: {} },
  deltaLOverL: { kind: 'ratio', options: {} }
};

export const kindOf = (quantity: Quantity): QuantityKind => SHOWN[quantity].kind;
export const optionsOf = (quantity: Quantity): FormatOptions => SHOWN[quantity].options;

export const quantityName = (quantity: Quantity): string => t(`field.quantity.${quantity}`);

/** "Entry left, loop alone", "cabinet". */
export const pointName = (
  testPoint: TestPoint,
  loop: string | null = null,
  site?: Pick<Site, 'loops'>
): string =>
  testPoint === 'loop' && loop !== null && site
    ? t('field.point.ofLoop', { loop: loopName(site, loop) })
    : t(`field.point.${testPoint}`);

/** As it is shown: a drop, which is stored as a negative ΔL/L, is a positive −ΔL/L. */
export const shownValue = (value: number, quantity: Quantity): number =>
  quantity === 'deltaLOverL' ? -value : value;

/** Half the width of what a meter leaves open, with its unit. */
export const errorText = (halfWidth: number, quantity: Quantity, system: UnitSystem): string =>
  format(halfWidth, kindOf(quantity), system, { ...optionsOf(quantity), digits: 2 }).text;

/** A figure with its unit; null was over the meter's range. */
export const figureText = (value: number | null, quantity: Quantity, system: UnitSystem): string =>
  value === null
    ? t('field.overRange')
    : format(shownValue(value, quantity), kindOf(quantity), system, optionsOf(quantity)).text;
