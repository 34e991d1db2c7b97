/** Meters as they usually are: common practice, no published source; a site lists its own with what their makers state. */
import type { Instrument, Quantity, Reading, Site } from '../schema';

export interface Accuracy {
  /** Of the reading. */
  readonly share: number;
  /** On top of it, in the quantity's unit. */
  readonly floor: number;
}

/** Of a meter that is not named: a plus-or-minus that holds nineteen times in twenty. */
export const USUAL_ACCURACY: Readonly<Record<Quantity, Accuracy>> = {
  resistanceDc_ohm: { share: 0.01, floor: 0.1 },
  inductance_H: { share: 0.02, floor: 1e-6 },
  q: { share: 0.05, floor: 0.2 },
  frequency_Hz: { share: 0.001, floor: 50 },
  insulation_ohm: { share: 0.1, floor: 1e5 },
  insulationBetween_ohm: { share: 0.1, floor: 1e5 },
  deltaLOverL: { share: 0.02, floor: 1e-4 }
};

/** At which a meter measures that does not say; common practice. */
export const USUAL_METER_FREQUENCY = 50_000;

type Used = Pick<Reading, 'instruments'>;

/** Of the instruments that were used the first that states an accuracy for the quantity. */
export const instrumentFor = (
  site: Pick<Site, 'fieldCheck'>,
  { instruments = [] }: Used,
  quantity: Quantity
): Instrument | undefined =>
  site.fieldCheck?.instruments?.find(
    ({ id, accuracies }) => instruments.includes(id) && accuracies.some((each) => each.quantity === quantity)
  );

/** As that instrument states it, of a usual meter else. */
export const accuracyOf = (site: Pick<Site, 'fieldCheck'>, used: Used, quantity: Quantity): Accuracy =>
  instrumentFor(site, used, quantity)?.accuracies.find((each) => each.quantity === quantity) ??
  USUAL_ACCURACY[quantity];
