/** From figures of readings to what the inference takes. */
import { accuracyOf, type Accuracy } from '#plan/catalogue/instruments';
import type { Quantity, Site } from '#plan/schema';
import { conditionsOf } from '../conditions';
import type { AskedFigure, Prepared } from '../forward/contract';
import type { MeasuredFigure } from '../results';
import type { Observed } from './observed';

type Figure = Pick<MeasuredFigure, 'reading' | 'testPoint' | 'loop' | 'quantity' | 'value'>;

/** Of a response the one of the vehicle that the reading names; where it names none, of the only one there is. */
const vehicleOf = ({ askable }: Prepared, named: string | undefined): string | null => {
  const known = new Set(askable.flatMap(({ vehicle }) => (vehicle === null ? [] : [vehicle])));
  if (named !== undefined) return known.has(named) ? named : null;
  return known.size === 1 ? [...known][0]! : null;
};

/** Null for what the model cannot be asked. */
const askedOf = (
  site: Site,
  prepared: Prepared,
  { reading: place, testPoint, loop, quantity }: Figure
): AskedFigure | null => {
  const reading = site.readings[place];
  if (!reading) return null;
  if (testPoint === 'loop' && !(loop !== null && prepared.loops.includes(loop))) return null;
  const { meterFrequency_Hz = null, temperature_C = null, setting = null } = conditionsOf(site, reading);
  // the unit measures at its own frequency, whatever meter was at hand
  const frequency = testPoint === 'unit' ? null : meterFrequency_Hz;
  const vehicle = quantity === 'deltaLOverL' ? vehicleOf(prepared, reading.vehicle) : null;
  if (quantity === 'deltaLOverL' && vehicle === null) return null;
  return { testPoint, loop, quantity, meterFrequency_Hz: frequency, temperature_C, setting, vehicle };
};

/** No insulation tester tells less from nought, whatever share is stated of it, Ω: common practice, 0.01 MΩ. */
const LEAST_INSULATION = 1e4;

const resolved = (quantity: Quantity, accuracy: Accuracy): Accuracy =>
  quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm'
    ? { ...accuracy, floor: Math.max(LEAST_INSULATION, accuracy.floor) }
    : accuracy;

export interface Placed {
  readonly observed: Observed;
  /** Place among the figures. */
  readonly figure: number;
}

/** Figures that the model cannot be asked are left out. */
export const observe = (
  site: Site,
  prepared: Prepared,
  figures: readonly Figure[],
  isBaseline: boolean
): readonly Placed[] =>
  figures.flatMap((figure, place): readonly Placed[] => {
    const asked = askedOf(site, prepared, figure);
    if (!asked) return [];
    const accuracy = resolved(
      figure.quantity,
      accuracyOf(site, site.readings[figure.reading]!, figure.quantity)
    );
    return [{ figure: place, observed: { asked, value: figure.value, accuracy, isBaseline } }];
  });
