/**
 * What ordinary workmanship and ordinary weather leave open, where the designer states nothing. Common practice, no
 * published source: each is a plus-or-minus that holds nineteen times in twenty.
 */
import type { Site, Tolerances } from '../schema';

export type ToleranceKey = keyof Tolerances;
export type StatedTolerances = Readonly<Record<ToleranceKey, number>>;

export const USUAL_TOLERANCES: StatedTolerances = {
  dimensions_m: 0.02,
  depth_m: 0.01,
  wirePitch_m: 0.0004,
  leadInLength_m: 2,
  temperature_C: 15,
  relativePermittivity: 3,
  vehicleHeight_m: 0.05
};

/** What the site states, and the usual where it states nothing. */
export const tolerancesOf = (site: Pick<Site, 'tolerances'>): StatedTolerances => {
  const stated = site.tolerances ?? {};
  return {
    dimensions_m: stated.dimensions_m ?? USUAL_TOLERANCES.dimensions_m,
    depth_m: stated.depth_m ?? USUAL_TOLERANCES.depth_m,
    wirePitch_m: stated.wirePitch_m ?? USUAL_TOLERANCES.wirePitch_m,
    leadInLength_m: stated.leadInLength_m ?? USUAL_TOLERANCES.leadInLength_m,
    temperature_C: stated.temperature_C ?? USUAL_TOLERANCES.temperature_C,
    relativePermittivity: stated.relativePermittivity ?? USUAL_TOLERANCES.relativePermittivity,
    vehicleHeight_m: stated.vehicleHeight_m ?? USUAL_TOLERANCES.vehicleHeight_m
  };
};

/** Wire in the road from a hard winter's day to a summer's noon, °C. */
export const USUAL_TEMPERATURES = [-20, 50] as const;

/** The colder first, whatever the order in the file. */
export const temperaturesOf = ({
  temperatureRange_C: [a, b] = USUAL_TEMPERATURES
}: Pick<Site, 'temperatureRange_C'>): readonly [number, number] => [Math.min(a, b), Math.max(a, b)];

/** The share of a vehicle's response that steel may cost without a word: a tenth, common practice. */
export const USUAL_STEEL_COST = 0.1;

export const acceptedSteelCostOf = (site: Pick<Site, 'acceptedSteelCost'>): number =>
  site.acceptedSteelCost ?? USUAL_STEEL_COST;
