/** What another threshold would do to the vehicles that are asked for. */
import { said, type Place } from '../node';
import type { Said } from '../results';
import { ratio, times } from '../values';
import { own, vehicleName } from './names';

/** The weakest that is asked for, on its worst path; null where nothing is. */
export const weakestWanted = ({ responses }: Pick<Place, 'responses'>) =>
  responses
    .filter(({ wanted }) => wanted)
    .reduce<{ readonly vehicle: string; readonly response: number } | null>(
      (weakest, { vehicle, worst }) =>
        weakest && weakest.response <= -worst ? weakest : { vehicle, response: -worst },
      null
    );

/** Two significant digits: no unit is set finer. Rounded up. */
export const settable = (threshold: number): number => {
  const step = 10 ** (Math.floor(Math.log10(threshold)) - 1);
  return Number((Math.ceil(threshold / step - 1e-9) * step).toPrecision(2));
};

/** No unit is set to less: common practice. */
const LEAST = 1e-4;

/** Null where no unit is set so fine. */
export const practicable = (threshold: number): number | null =>
  threshold >= LEAST ? settable(threshold) : null;

/** What must be kept out answers `response`; a quarter of room above it. */
export const keepOut = (response: number): number => settable(1.25 * response);

/** A higher threshold, and whom it would lose. */
export function raise(place: Place, threshold: number): Said {
  const weakest = weakestWanted(place);
  const common = {
    circuit: own(place),
    before: ratio(place.channel.tripThreshold),
    threshold: ratio(threshold)
  };
  if (!weakest) return said('threshold.raise', common);
  const vehicle = vehicleName(place, weakest.vehicle);
  return weakest.response > threshold
    ? said('threshold.room', { ...common, vehicle, times: times(weakest.response / threshold) })
    : said('threshold.noRoom', {
        circuit: common.circuit,
        threshold: common.threshold,
        vehicle,
        response: ratio(weakest.response)
      });
}
