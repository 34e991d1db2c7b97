/** What a simulation says in words. */
import type { BeatSimulation, SimulatedSide } from '#analysis/beat-simulation/simulation';
import type { Beat } from '#analysis/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { circuitName } from '../../names';
import { times } from '../remedies';
import { responseText, separationText } from '../pairs';

type Shown = Pick<Site, 'circuits' | 'displayUnits'>;

export const nameOfSide = (site: Shown, { circuit }: Pick<SimulatedSide, 'circuit'>, n: number): string =>
  circuit === null ? t(n === 0 ? 'simulator.first' : 'simulator.second') : circuitName(site, circuit);

/** In hertz as far as that reads well: swings and separations are a few hundred of them. */
export const hertzText = ({ displayUnits }: Pick<Site, 'displayUnits'>, hertz: number, digits = 3): string =>
  format(hertz, 'frequency', displayUnits, { unit: Math.abs(hertz) < 10_000 ? 'Hz' : 'kHz', digits }).text;

export const plusMinus = (text: string): string => t('simulator.plusMinus', { value: text });

export const couplingText = ({ displayUnits }: Pick<Site, 'displayUnits'>, k: number): string =>
  format(k, 'ratio', displayUnits, { digits: 3 }).text;

/** From here on the swing is visibly more than the first-order law says. */
const STRONG = 1 / 3;

/** What to know before the law is compared with the curves; null where it simply holds. */
export const noticeOf = (site: Shown, { isLocked, strength }: BeatSimulation): string | null => {
  if (isLocked) return t('simulator.locked');
  if (strength <= STRONG) return null;
  const share = format(strength, 'ratio', site.displayUnits, { digits: 2 }).text;
  return t(strength < 1 ? 'simulator.strong' : 'simulator.mayLock', { share });
};

/** Why the pair's verdict on the drawing may be worse than what its frequencies at rest show. */
export const worstWords = (
  site: Pick<Site, 'displayUnits'>,
  { ratio, separation_Hz }: Pick<Beat, 'ratio' | 'separation_Hz'>
): string =>
  separation_Hz === 0
    ? t('simulator.worstOverlap', { ratio: times(ratio) })
    : t('simulator.worst', { ratio: times(ratio), least: separationText(site, separation_Hz) });

/** The side that suffers more, in one sentence. */
export const summaryOf = (site: Shown, { sides, k, separation_Hz }: BeatSimulation): string => {
  const worse = sides[1].ratio > sides[0].ratio ? 1 : 0;
  const { seen, ratio } = sides[worse];
  return t('simulator.summary', {
    a: nameOfSide(site, sides[worse], worse),
    b: nameOfSide(site, sides[1 - worse]!, 1 - worse),
    k: couplingText(site, k),
    separation: hertzText(site, separation_Hz),
    swing: hertzText(site, seen.swing_Hz),
    averaged: responseText(site, seen.averaged),
    ratio: times(ratio)
  });
};
