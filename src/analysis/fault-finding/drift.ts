/**
 * How far a circuit has moved since it was taken over. Only like is held against like: the same place and quantity, for
 * inductance and Q the same test frequency, for a frequency the same setting, for a response the same vehicle.
 * A resistance is brought to the temperature of its commissioning reading where both are known: all of it is copper.
 */
import { copperResistivity } from '#physics/wire/round-wire';
import type { Quantity, Reading, Site } from '#plan/schema';
import { conditionsOf } from './conditions';
import { circuitOfReading, newestFirst, placeOfReading } from './visits';

export interface Drift {
  /** Place in `site.readings` of the commissioning reading. */
  readonly since: number;
  /** What was read then. */
  readonly from: number;
  /** What was read now, at the temperature of then where that is known. */
  readonly to: number;
  /** `to` less `from`. */
  readonly change: number;
  /** Of `from`; null where that is nought. */
  readonly share: number | null;
  /** The temperatures differ and were allowed for. */
  readonly isCorrected: boolean;
}

type Read = Pick<Site, 'circuits' | 'readings' | 'fieldCheck'>;

const isSame = <T>(a: T | undefined, b: T | undefined): boolean =>
  a === undefined || b === undefined || a === b;

/** Of two readings at one place. */
function isAlike(site: Read, quantity: Quantity, a: Reading, b: Reading): boolean {
  if (quantity === 'inductance_H' || quantity === 'q') {
    const [here, there] = [conditionsOf(site, a), conditionsOf(site, b)];
    // the unit measures at its own frequency, whatever meter was at hand
    const isAtUnit = placeOfReading(site, a).testPoint === 'unit';
    return isAtUnit || isSame(here.meterFrequency_Hz, there.meterFrequency_Hz);
  }
  if (quantity === 'frequency_Hz') return isSame(a.setting, b.setting);
  return quantity !== 'deltaLOverL' || isSame(a.vehicle, b.vehicle);
}

/** Both were taken of the same thing at the same place. */
function isSameSeries(site: Read, a: Reading, b: Reading): boolean {
  const [here, there] = [placeOfReading(site, a), placeOfReading(site, b)];
  return (
    circuitOfReading(site, a) === circuitOfReading(site, b) &&
    here.testPoint === there.testPoint &&
    here.loop === there.loop
  );
}

/** The newest commissioning reading that is not newer than this one; undated ones count as the oldest. */
function baselineOf(site: Read, place: number, quantity: Quantity): number | undefined {
  const reading = site.readings[place];
  if (!reading) return undefined;
  const at = reading.at ?? '';
  const places = site.readings.flatMap((each, index) => {
    const fits =
      index !== place &&
      each.isCommissioning === true &&
      each[quantity] !== undefined &&
      (each.at ?? '') <= at &&
      isSameSeries(site, each, reading) &&
      isAlike(site, quantity, each, reading);
    return fits ? [index] : [];
  });
  const timeOf = (index: number): string => site.readings[index]?.at ?? '';
  return places.toSorted((a, b) => newestFirst(timeOf(a), timeOf(b)) || b - a)[0];
}

/** Null where there is nothing to hold it against; a commissioning reading itself has not drifted. */
export function driftOf(site: Read, place: number, quantity: Quantity): Drift | null {
  const reading = site.readings[place];
  const value = reading?.[quantity];
  if (!reading || value === undefined || reading.isCommissioning === true) return null;
  const since = baselineOf(site, place, quantity);
  const then = since === undefined ? undefined : site.readings[since];
  const from = then?.[quantity];
  if (since === undefined || !then || from === undefined) return null;
  const isCorrected =
    quantity === 'resistanceDc_ohm' &&
    reading.temperature_C !== undefined &&
    then.temperature_C !== undefined &&
    reading.temperature_C !== then.temperature_C;
  const to = isCorrected
    ? (value * copperResistivity(then.temperature_C)) / copperResistivity(reading.temperature_C)
    : value;
  const change = to - from;
  return { since, from, to, change, share: from === 0 ? null : change / Math.abs(from), isCorrected };
}
