/** Amounts, money and things of a take-off as people read them. */
import { itemName } from '#analysis/takeoff/names';
import type { TakeoffUnit } from '#analysis/takeoff/results';
import { spokenLanguage, t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { decimals, typeset } from '#units/digits';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import { circuitName, loopName, nameOf } from '../names';
import { markName } from '../wiring/marks';

/** Metres that are bought or cut: to the centimetre, or the hundredth of a foot. */
export const runText = (metres: number, system: UnitSystem): string =>
  system === 'imperial'
    ? format(metres, 'length', system, { unit: 'ft' }).text
    : format(Math.round(metres * 100) / 100, 'length', system).text;

export function amountText(value: number, unit: TakeoffUnit, system: UnitSystem): string {
  if (unit === 'm') return runText(value, system);
  if (unit === 'm3') return format(value, 'volume', system).text;
  if (unit === 'h') return format(value * 3_600, 'duration', system, { unit: 'h' }).text;
  const number = typeset(decimals(value, 0, 2));
  return t(unit === 'day' ? 'estimate.days' : 'estimate.pieces', { count: value, number });
}

/** "2 packs of 100.00 m"; of what is bought piece by piece only how many. */
export const packsText = (packs: number, pack: number, unit: TakeoffUnit, system: UnitSystem): string =>
  unit === 'each' && pack === 1
    ? amountText(packs, unit, system)
    : t('estimate.packs', { count: packs, pack: amountText(pack, unit, system) });

/** A share in percent: "5 %". */
export const shareText = (share: number): string => `${typeset(decimals(share * 100, 0, 1))} %`;

/** Two decimals, thousands apart; the code of the currency behind it where the site has one. */
export function moneyText(value: number, currency: string | null): string {
  const options = { minimumFractionDigits: 2, maximumFractionDigits: 2 } as const;
  const number = new Intl.NumberFormat(spokenLanguage(), options).format(value);
  return currency === null ? number : `${number} ${currency}`;
}

export const itemText = (site: Site, item: string): string =>
  itemName(site, item, (metres) => format(metres, 'smallLength', site.displayUnits).text);

/** What a line is for. */
export function subjectText(site: Site, subject: string): string {
  if (subject === '') return t('estimate.wholeSite');
  if (site.loops.some(({ id }) => id === subject)) return loopName(site, subject);
  if (site.circuits.some(({ id }) => id === subject)) return circuitName(site, subject);
  const mark = site.marks.find(({ id }) => id === subject);
  if (mark) return markName(mark, site.marks);
  const named =
    site.conduits.find(({ id }) => id === subject) ?? site.estimate?.extras?.find(({ id }) => id === subject);
  return named ? nameOf(named) : subject;
}
