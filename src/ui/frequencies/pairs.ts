/** A pair of circuits as people read it. */
import type { Beat, BeatVerdict } from '#analysis/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { circuitName } from '../names';
import { shownResponse } from '../readout/share';
import { times } from './remedies';
import { separationOptions } from './separation';

/** Ids may hold any printable text, so nothing that is written between two of them tells them apart. */
export const pairKey = ({ a, b }: Pick<Beat, 'a' | 'b'>): string => JSON.stringify([a, b]);

export const VERDICT_WORDS = {
  clear: 'frequencies.clear',
  watch: 'frequencies.watch',
  'false calls likely': 'frequencies.falseCalls'
} as const satisfies Record<BeatVerdict, string>;

/** Names of the classes that give a verdict its colour. */
export const TONES = {
  clear: 'good',
  watch: 'caution',
  'false calls likely': 'problem'
} as const satisfies Record<BeatVerdict, string>;

export const pairName = (site: Pick<Site, 'circuits'>, { a, b }: Pick<Beat, 'a' | 'b'>): string =>
  t('frequencies.pair', { a: circuitName(site, a), b: circuitName(site, b) });

type Named = Pick<Site, 'circuits' | 'displayUnits'>;

export const separationText = ({ displayUnits }: Pick<Site, 'displayUnits'>, hertz: number): string =>
  format(hertz, 'frequency', displayUnits, separationOptions(hertz)).text;

/** The whole pair in one line, for those who hear it. */
export const pairLine = (site: Named, beat: Beat): string =>
  t('frequencies.pairLong', {
    pair: pairName(site, beat),
    verdict: t(VERDICT_WORDS[beat.verdict]),
    ratio: times(beat.ratio),
    separation: separationText(site, beat.separation_Hz)
  });

/** −ΔL/L or a ripple, as `Response` shows it. */
export const responseText = ({ displayUnits }: Pick<Site, 'displayUnits'>, response: number): string => {
  const { value, digits } = shownResponse(response);
  return format(value, 'ratio', displayUnits, { digits }).text;
};

/** The figures of a pair, one a part. */
export const pairFigures = (site: Named, { k, separation_Hz, ripple, ratio }: Beat): readonly string[] => [
  t('frequencies.couplingIs', { k: format(k, 'ratio', site.displayUnits, { digits: 3 }).text }),
  separation_Hz === 0
    ? t('frequencies.overlap')
    : t('frequencies.apart', { separation: separationText(site, separation_Hz) }),
  t('frequencies.rippleIs', { ripple: responseText(site, ripple) }),
  t('frequencies.ratioIs', { ratio: times(ratio) })
];
