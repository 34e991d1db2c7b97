/** What is measured, where, and how it turned out, as people read it on paper and in tables. */
import type { ExpectedFigure, FigureVerdict, Limit, MeasuringPlace } from '#analysis/fault-finding/results';
import { t } from '#i18n/message';
import type { Quantity, Reading, Site } from '#plan/schema';
import type { RecordVerdict } from '#plan/edits/record';
import { decimals, typeset } from '#units/digits';
import { format, joined } from '#units/format';
import type { QuantityKind, UnitSystem } from '#units/kind';
import { clean } from '../sheet/text/clean';
import { loopName, vehicleName } from './names';

const KIND: Readonly<Record<Quantity, QuantityKind>> = {
  resistanceDc_ohm: 'resistance',
  inductance_H: 'inductance',
  q: 'plain',
  frequency_Hz: 'frequency',
  insulation_ohm: 'insulation',
  insulationBetween_ohm: 'insulation',
  deltaLOverL: 'ratio'
};

const DIGITS: Readonly<Partial<Record<Quantity, number>>> = {
  q: 3,
  insulation_ohm: 3,
  insulationBetween_ohm: 3
};

/** A drop is stored as a negative ΔL/L and read as a positive −ΔL/L. */
export const shown = (value: number, quantity: Quantity): number =>
  quantity === 'deltaLOverL' ? -value : value;

/** A meter for small resistances shows ohms, not milliohms. */
const OHMS_UP_TO = 1_000;
const ownUnit = (value: number, quantity: Quantity): string | undefined =>
  quantity === 'resistanceDc_ohm' && Math.abs(value) < OHMS_UP_TO ? 'Ω' : undefined;

function written(value: number, quantity: Quantity, system: UnitSystem, unit = ownUnit(value, quantity)) {
  const digits = DIGITS[quantity];
  return format(shown(value, quantity), KIND[quantity], system, {
    ...(digits === undefined ? {} : { digits }),
    ...(unit === undefined || unit === '' ? {} : { unit })
  });
}

/** "98.4 µH". */
export const figureText = (value: number, quantity: Quantity, system: UnitSystem): string =>
  written(value, quantity, system).text;

/** The unit that a figure is read in, for a box to write into; empty for Q. */
export const unitOf = (value: number | null, quantity: Quantity, system: UnitSystem): string =>
  value === null && KIND[quantity] === 'insulation' ? 'MΩ' : written(value ?? 1, quantity, system).unit;

/** "93.1–103.6 µH"; empty without a range. */
export function rangeText({ value, low, high, quantity }: ExpectedFigure, system: UnitSystem): string {
  if (value === null || low === null || high === null) return '';
  const { unit } = written(value, quantity, system);
  const [from, to] = quantity === 'deltaLOverL' ? [high, low] : [low, high];
  return t('record.range', {
    from: written(from, quantity, system, unit).number,
    to: written(to, quantity, system, unit).text
  });
}

/** A limit is a round figure: "50 MΩ", not "50.0 MΩ". */
function roundFigure(value: number, quantity: Quantity, system: UnitSystem, unit?: string) {
  const shownAs = written(value, quantity, system, unit);
  const number = shownAs.number.replace(/([.,]\d*?)0+$/, '$1').replace(/[.,]$/, '');
  return { number, unit: shownAs.unit, text: joined(number, shownAs.unit) };
}

function limitText({ least, most }: Limit, quantity: Quantity, system: UnitSystem): string {
  const say = (value: number) => roundFigure(value, quantity, system).text;
  if (least !== null && most !== null) {
    const from = roundFigure(least, quantity, system);
    const to = roundFigure(most, quantity, system, from.unit);
    return t('record.limit.between', { least: from.number, most: to.text });
  }
  if (least !== null) return t('record.limit.least', { least: say(least) });
  return most === null ? '' : t('record.limit.most', { most: say(most) });
}

/** Of limits that say the same, one. */
export const limitsText = ({ limits, quantity }: ExpectedFigure, system: UnitSystem): string =>
  [...new Set(limits.map((limit) => limitText(limit, quantity, system)))].filter(Boolean).join(', ');

/** "Inductance at 50 kHz", "−ΔL/L of a known vehicle: Car". */
export function quantityText(
  site: Pick<Site, 'vehicles' | 'displayUnits'>,
  quantity: Quantity,
  { frequency_Hz, vehicle }: { readonly frequency_Hz: number | null; readonly vehicle: string | null }
): string {
  const name = t(`field.quantity.${quantity}`);
  if (quantity === 'deltaLOverL' && vehicle !== null)
    return clean(t('record.ofVehicle', { vehicle: vehicleName(site, vehicle) }));
  if ((quantity === 'inductance_H' || quantity === 'q') && frequency_Hz !== null)
    return t('record.atFrequency', {
      quantity: name,
      frequency: joined(typeset(decimals(frequency_Hz / 1000, 0, 2)), 'kHz')
    });
  return name;
}

/** "Entry left, loop alone". */
export const placeText = (site: Pick<Site, 'loops'>, { testPoint, loop }: MeasuringPlace): string =>
  loop === null ? t(`field.point.${testPoint}`) : t('field.point.ofLoop', { loop: loopName(site, loop) });

export const verdictText = (verdict: FigureVerdict): string => t(`field.verdict.${verdict}`);
export const acceptanceText = (verdict: RecordVerdict): string => t(`record.acceptance.${verdict}`);

/** When it was taken down, as it is stored: "2025-11-26 14:30". */
export const timeText = ({ at }: Pick<Reading, 'at'>): string => (at ?? '').slice(0, 16).replace('T', ' ');
