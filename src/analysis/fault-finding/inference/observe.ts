/** From figures of readings to what the inference takes. */
import { accuracyOf } from '#plan/catalogue/instruments';
import type { Site } from '#plan/schema';
import { conditionsOf } from '../checked';
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
  const vehicle = quantity === 'deltaLOverL' ? vehicleOf(prepared, reading.vehicle) : null;
  if (quantity === 'deltaLOverL' && vehicle === null) return null;
  return { testPoint, loop, quantity, meterFrequency_Hz, temperature_C, setting, vehicle };
};

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
    const accuracy = accuracyOf(site, site.readings[figure.reading]!, figure.quantity);
    return [{ figure: place, observed: { asked, value: figure.value, accuracy, isBaseline } }];
  });
