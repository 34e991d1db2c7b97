/**
 * What ordinary workmanship and ordinary weather leave open, where the designer states nothing. Common practice, no
 * published source: each is a plus-or-minus that holds nineteen times in twenty.
 */
import type { Site, Tolerances } from '../schema';

export type ToleranceKey = keyof Tolerances;

export const USUAL_TOLERANCES: Required<Tolerances> = {
  dimensions_m: 0.02,
  depth_m: 0.01,
  wirePitch_m: 0.0004,
  leadInLength_m: 2,
  temperature_C: 15,
  relativePermittivity: 3,
  vehicleHeight_m: 0.05
};

export const tolerancesOf = (site: Pick<Site, 'tolerances'>): Required<Tolerances> => ({
  ...USUAL_TOLERANCES,
  ...site.tolerances
});

/** Wire in the road from a hard winter's day to a summer's noon, °C. */
export const USUAL_TEMPERATURES = [-20, 50] as const;

export const temperaturesOf = (site: Pick<Site, 'temperatureRange_C'>): readonly [number, number] =>
  site.temperatureRange_C ?? USUAL_TEMPERATURES;
