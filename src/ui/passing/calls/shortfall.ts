/** What of the traffic asked for is not simulated. */
import type { CallsPicture } from '#analysis/calls/results';
import { t } from '#i18n/message';
import { clockText } from './words';

/** A vehicle or two may come too late to come in before the end. */
const FEW = 2;
const SMALL = 0.02;

/** Null where everything is. */
export const shortfallOf = ({ duration_s, asked, vehicles }: CallsPicture): string | null => {
  const parts = [
    ...(duration_s < asked.duration_s
      ? [t('calls.shortened', { shown: clockText(duration_s, 0), asked: clockText(asked.duration_s, 0) })]
      : []),
    ...(asked.vehicles - vehicles.length > Math.max(FEW, SMALL * asked.vehicles)
      ? [t('calls.noRoom', { driven: vehicles.length, asked: asked.vehicles })]
      : [])
  ];
  return parts.length > 0 ? parts.join(' ') : null;
};
