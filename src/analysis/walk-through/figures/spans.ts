/** What a meter plausibly shows: the design's tolerances and the meter's own error, independent of each other. */
import { limitsOfSite } from '#plan/catalogue/acceptance';
import { accuracyOf, instrumentFor } from '#plan/catalogue/instruments';
import type { Quantity, Site } from '#plan/schema';
import { called } from '../../findings/finding';
import type { PlausibleRange } from '../../results';
import type { Span } from './figures';

/** A site's own instruments where they state the quantity, a usual meter else. */
interface Metered {
  readonly site: Pick<Site, 'fieldCheck'>;
  readonly instruments: readonly string[];
}

/** Both are a plus-or-minus that holds nineteen times in twenty, so their squares add up. */
export const spanOf = (
  value: number,
  { low, high }: PlausibleRange,
  quantity: Quantity,
  { site, instruments }: Metered
): Span => {
  const used = { instruments: [...instruments] };
  const { share, floor } = accuracyOf(site, used, quantity);
  const instrument = instrumentFor(site, used, quantity);
  const meter = Math.abs(value) * share + floor;
  return {
    value,
    low: Math.max(0, value - Math.hypot(value - low, meter)),
    high: value + Math.hypot(high - value, meter),
    meter: instrument ? called(instrument) : null
  };
};

/** WAC 296-46B-300: the limit of a site that has chosen none, Ω. */
const PUBLISHED = 50e6;

export const insulationLimitOf = (site: Pick<Site, 'fieldCheck'>): number => {
  const published = limitsOfSite(site).flatMap(({ quantity, least }) =>
    quantity === 'insulation_ohm' && least !== null ? [least] : []
  );
  const own = site.fieldCheck?.insulationLimit_ohm;
  const limits = own === undefined ? published : [...published, own];
  return limits.length > 0 ? Math.max(...limits) : PUBLISHED;
};
