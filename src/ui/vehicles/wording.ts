/** Vehicles and their parts in words. */
import { t } from '#i18n/message';
import type { CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { VehicleUses } from '#plan/edits/index';
import type { HeightCalibration, Site, VehiclePart } from '#plan/schema';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import { shownResponse } from '../readout/share';

type Shown = Pick<Site, 'displayUnits'>;

/** In feet and their hundredths rather than in inches: a vehicle's sizes are not laid out by them, and must fit a drawing. */
const lengthOf = ({ displayUnits }: Shown, metres: number) =>
  format(metres, 'length', displayUnits, displayUnits === 'imperial' ? { unit: 'ft' } : {});

export const lengthText = (site: Shown, metres: number): string => lengthOf(site, metres).text;

export function responseText({ displayUnits }: Shown, deltaLOverL: number): string {
  const { value, digits } = shownResponse(-deltaLOverL);
  return format(value, 'ratio', displayUnits, { digits }).text;
}

/** "3.90 × 1.70 m" */
const sidesText = (site: Shown, length: number, width: number): string =>
  t('vehicles.gist', {
    length: lengthOf(site, length).number,
    width: lengthText(site, width)
  });

export const gistOf = (site: Shown, { bodyLength, bodyWidth }: CatalogueVehicle): string =>
  sidesText(site, bodyLength, bodyWidth);

/** What it was called, or its kind and its number in the list. */
export const partName = (part: VehiclePart, index: number): string =>
  part.name?.trim() ||
  t(part.kind === 'plate' ? 'vehicles.plateName' : 'vehicles.ringName', { number: index + 1 });

export const partSize = (site: Shown, part: VehiclePart): string =>
  part.kind === 'plate'
    ? sidesText(site, part.length, part.width)
    : t('vehicles.ringSize', { diameter: lengthText(site, 2 * part.radius) });

export const partHeight = (part: VehiclePart): number =>
  part.kind === 'plate' ? part.height : part.centre[2];

/** "up 71 mm" */
export const moveText = (system: UnitSystem, raised: number): string =>
  t(raised < 0 ? 'vehicles.measured.down' : 'vehicles.measured.up', {
    by: format(Math.abs(raised), 'smallLength', system, { digits: 3 }).text
  });

export const recordText = (
  site: Shown,
  { circuit, measured, predicted, raised }: HeightCalibration
): string =>
  t('vehicles.record', {
    circuit,
    measured: responseText(site, measured),
    predicted: responseText(site, predicted),
    move: moveText(site.displayUnits, raised)
  });

/** What went with a vehicle that was removed. */
export function removedText(name: string, { placed, askedFor, lanes, traffic }: VehicleUses): string {
  const uses = [
    placed > 0 ? t('vehicles.uses.placed', { count: placed }) : '',
    askedFor > 0 ? t('vehicles.uses.askedFor', { count: askedFor }) : '',
    lanes > 0 ? t('vehicles.uses.lanes', { count: lanes }) : '',
    traffic > 0 ? t('vehicles.uses.traffic', { count: traffic }) : ''
  ].filter((text) => text !== '');
  return uses.length === 0
    ? t('vehicles.removed', { name })
    : t('vehicles.removedWith', { name, uses: uses.join(', ') });
}
