/** What was read of a circuit, visit by visit, as it is shown. */
import { checkedFigures } from '#analysis/fault-finding/checked';
import { conditionsOf } from '#analysis/fault-finding/conditions';
import { driftOf, type Drift } from '#analysis/fault-finding/drift';
import type { ExpectedFigure, FigureVerdict, MeterConditions } from '#analysis/fault-finding/results';
import { placeOfReading, visitsOf, circuitOfReading } from '#analysis/fault-finding/visits';
import { t } from '#i18n/message';
import type { Quantity, Reading, Site } from '#plan/schema';
import { format } from '#units/format';
import { vehicleName } from '../../names';
import { pointName, shownValue } from '../parts/figures';
import { weatherText } from '../parts/words';

export interface HistoryFigure {
  readonly quantity: Quantity;
  readonly value: number | null;
  readonly expected: ExpectedFigure | null;
  /** Null while it is not known yet what was to be expected. */
  readonly verdict: FigureVerdict | null;
  readonly drift: Drift | null;
}

export interface HistoryEntry {
  /** Place in `site.readings`. */
  readonly place: number;
  readonly reading: Reading;
  readonly under: MeterConditions;
  readonly figures: readonly HistoryFigure[];
}

export interface HistoryVisit {
  readonly day: string | null;
  readonly entries: readonly HistoryEntry[];
}

/** What is expected under some conditions; null while that is not known. */
export type Expecting = (under: MeterConditions) => readonly ExpectedFigure[] | null;

function entryOf(site: Site, place: number, expecting: Expecting): HistoryEntry | null {
  const reading = site.readings[place];
  if (!reading) return null;
  const under = conditionsOf(site, reading);
  const expected = expecting(under);
  const figures = checkedFigures(site, place, reading, expected ?? []).map((figure) => ({
    quantity: figure.quantity,
    value: figure.value,
    expected: figure.expected,
    verdict: expected === null ? null : figure.verdict,
    drift: driftOf(site, place, figure.quantity)
  }));
  return { place, reading, under, figures };
}

/** The newest `most` visits of a circuit. */
export const historyOf = (
  site: Site,
  circuit: string,
  most: number,
  expecting: Expecting
): readonly HistoryVisit[] =>
  visitsOf(site, circuit)
    .slice(0, most)
    .map(({ day, readings }) => ({
      day,
      entries: readings.flatMap((place) => entryOf(site, place, expecting) ?? [])
    }));

/** Places of readings that say of no circuit that they are its. */
export const readingsOfNone = (site: Site): readonly number[] =>
  site.readings.flatMap((reading, place) => {
    const circuit = circuitOfReading(site, reading);
    return circuit !== undefined && site.circuits.some(({ id }) => id === circuit) ? [] : [place];
  });

/** "Cabinet", "Left, front, loop alone". */
export function whereText(site: Site, reading: Reading): string {
  const { testPoint, loop } = placeOfReading(site, reading);
  return pointName(testPoint, loop, site);
}

/** Everything else that was written down: "12 °C, wet, at 20 kHz, M. K., Meter A". */
export function conditionsText(site: Site, reading: Reading): string {
  const system = site.displayUnits;
  const { temperature_C, weather, meterFrequency_Hz, insulationVoltage_V, setting, vehicle, by } = reading;
  const instruments = (reading.instruments ?? []).map(
    (id) => site.fieldCheck?.instruments?.find((each) => each.id === id)?.name || id
  );
  const parts = [
    temperature_C === undefined ? null : format(temperature_C, 'temperature', system).text,
    weather === undefined ? null : weatherText(weather),
    setting === undefined ? null : t('field.withSetting', { setting }),
    vehicle === undefined ? null : vehicleName(site, vehicle),
    meterFrequency_Hz === undefined
      ? null
      : t('field.atFrequency', { frequency: format(meterFrequency_Hz, 'frequency', system).text }),
    insulationVoltage_V === undefined ? null : t('field.withVoltage', { voltage: insulationVoltage_V }),
    ...instruments,
    by ?? null,
    reading.note ?? null
  ];
  return parts.filter((part) => part !== null && part !== '').join(' · ');
}

/** "+2.1 µH (+2.2 %)"; null where there is none. */
export function driftText(
  drift: Drift,
  quantity: Quantity,
  site: Site,
  amount: (value: number) => string
): string {
  const share =
    drift.share === null
      ? ''
      : format(shownValue(drift.share, quantity), 'ratio', site.displayUnits, { digits: 2, signed: true })
          .text;
  if (quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm') return share;
  return share === '' ? amount(drift.change) : `${amount(drift.change)} (${share})`;
}
