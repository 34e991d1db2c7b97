/** What curves of a pass say in words. */
import type { PassCurve, Zone } from '#analysis/passing/results';
import { responseAt } from '#analysis/passing/zones';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { INCH } from '#units/constants';
import { format } from '#units/format';
import { circuitName, vehicleName } from '../../names';
import { responseText } from '../../frequencies/pairs';
import { times } from '../../frequencies/remedies';
import type { CircuitCurves } from './plot';

type Shown = Pick<Site, 'vehicles' | 'displayUnits'>;

/** To the centimetre or the inch: finer is not where a vehicle stands. */
export function placeText({ displayUnits }: Pick<Site, 'displayUnits'>, metres: number): string {
  const fineness = displayUnits === 'imperial' ? INCH : 0.01;
  return format(Math.round(metres / fineness) * fineness, 'length', displayUnits).text;
}

/** "Car 1.23 % (×7.7)". */
function responseAtText(site: Shown, { profile, threshold }: PassCurve, along: number): string {
  const response = responseAt(profile, along);
  const values = { vehicle: vehicleName(site, profile.vehicle), response: responseText(site, response) };
  return threshold === null
    ? t('along.value', values)
    : t('along.valueAndShare', { ...values, share: times(response / threshold) });
}

/** All curves at a place, in one line. */
export const lineAt = (site: Shown, curves: readonly PassCurve[], along: number): string =>
  t('along.at', {
    place: placeText(site, along),
    values: curves.map((curve) => responseAtText(site, curve, along)).join(', ')
  });

export const zoneText = (site: Shown, { from_m, to_m }: Zone): string =>
  t('along.zone', {
    length: placeText(site, to_m - from_m),
    from: placeText(site, from_m),
    to: placeText(site, to_m)
  });

export const zoneLength = (site: Shown, { from_m, to_m }: Zone): string => placeText(site, to_m - from_m);

/** How the vehicle in hand fares on a circuit, in one sentence. */
export function summaryOf(
  site: Shown & Pick<Site, 'circuits'>,
  { circuit, curves }: CircuitCurves,
  held: string
): string {
  const curve = curves.find(({ profile }) => profile.vehicle === held) ?? curves[0];
  if (!curve) return '';
  return t('along.summary', {
    circuit: circuitName(site, circuit),
    vehicle: vehicleName(site, curve.profile.vehicle),
    zones: zonesText(site, curve)
  });
}

function zonesText(site: Shown, { zones, threshold }: PassCurve): string {
  if (threshold === null) return t('along.noThreshold');
  if (zones.length === 0) return t('along.notDetected');
  const texts = zones.map((zone) => zoneText(site, zone)).join('; ');
  return t('along.detected', { count: zones.length, zones: texts });
}
