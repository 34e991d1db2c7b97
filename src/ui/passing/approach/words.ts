/** Distances and published figures of an approach in words. */
import { listed } from '#i18n/locale';
import { fixed } from '#units/digits';
import type { ApproachPlan } from '#analysis/approach/advance';
import { decisionZone, widened } from '#analysis/approach/decision-zone';
import { AT_SIGNALS, SEEING, stoppingDistance, usualYellow, yellowTime } from '#analysis/approach/motion';
import { passageTime } from '#analysis/approach/passage-time';
import { MILE_PER_HOUR, PUBLISHED_PASSAGES, PUBLISHED_ROWS } from '#analysis/approach/published';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { FOOT } from '#units/constants';
import { format } from '#units/format';

type System = Pick<Site, 'displayUnits'>;

/** To a tenth of a metre or a foot: nobody sets a loop out finer from a speed. */
export const distanceText = ({ displayUnits }: System, metres: number): string => {
  const isImperial = displayUnits === 'imperial';
  if (!Number.isFinite(metres)) return t('approach.unbounded');
  return t(isImperial ? 'approach.feet' : 'approach.metres', {
    value: fixed(isImperial ? metres / FOOT : metres, 1)
  });
};

export const speedText = ({ displayUnits }: System, speed: number): string =>
  format(speed, 'speed', displayUnits).text;
export const secondsText = (seconds: number): string => t('approach.seconds', { value: fixed(seconds, 1) });

const upTo = (step: number, value: number): number => Math.ceil(value / step - 1e-9) * step;
const FEET = 5;

/** As printed, and in the site's units where those are others. */
export interface Printed {
  readonly text: string;
  readonly also: string | null;
}

const alone = (text: string): Printed => ({ text, also: null });
const NONE = alone('–');

const feetText = ({ displayUnits }: System, ...feet: readonly number[]): Printed => {
  const range = (unit: number) => feet.map((each) => (each * unit).toFixed(0)).join('–');
  return {
    text: t('approach.feet', { value: range(1) }),
    also: displayUnits === 'imperial' ? null : t('approach.metres', { value: range(FOOT) })
  };
};

const mphText = (site: System, mph: number): Printed => ({
  text: t('approach.mph', { value: mph }),
  also: site.displayUnits === 'imperial' ? null : speedText(site, mph * MILE_PER_HOUR)
});

export interface PublishedText {
  readonly speed: Printed;
  /** Each: as published, and by this program's formula and the same rounding. */
  readonly zone: readonly [Printed, Printed];
  readonly yellow: readonly [Printed, Printed];
  readonly sight: readonly [Printed, Printed];
}

export const publishedTexts = (site: System): readonly PublishedText[] =>
  PUBLISHED_ROWS.map(({ speed_mph, zone_ft, yellow_s, sight_ft }) => {
    const speed = speed_mph * MILE_PER_HOUR;
    const zone = widened(decisionZone(speed));
    const sight = upTo(FEET, stoppingDistance(speed, SEEING) / FOOT);
    return {
      speed: mphText(site, speed_mph),
      zone: [
        zone_ft ? feetText(site, ...zone_ft) : NONE,
        feetText(site, zone.from_m / FOOT, zone.to_m / FOOT)
      ],
      yellow: [
        yellow_s === null ? NONE : alone(secondsText(yellow_s)),
        alone(secondsText(usualYellow(yellowTime(speed, AT_SIGNALS))))
      ],
      sight: [sight_ft === null ? NONE : feetText(site, sight_ft), feetText(site, sight)]
    };
  });

export interface PassageText {
  readonly zone: Printed;
  readonly published: string;
  readonly ours: string;
}

export const passageTexts = (site: System): readonly PassageText[] =>
  PUBLISHED_PASSAGES.map(({ zone_ft, at25_s, at55_s }) => {
    const at = (mph: number) => fixed(passageTime(mph * MILE_PER_HOUR, zone_ft * FOOT), 1);
    return {
      zone: feetText(site, zone_ft),
      published: t('approach.seconds', { value: `${fixed(at25_s, 1)}–${fixed(at55_s, 1)}` }),
      ours: t('approach.seconds', { value: `${at(25)}–${at(55)}` })
    };
  });

/** What comes out, in one or two sentences. */
export const summaryOf = (site: System, { zone, distances_m, carriedTo_m }: ApproachPlan): string => {
  const where = t('approach.zoneIs', {
    from: distanceText(site, zone.from_m),
    to: distanceText(site, zone.to_m)
  });
  if (distances_m.length === 0) return `${where} ${t('approach.tooMany')}`;
  const loops = t('approach.loopsAre', {
    count: distances_m.length,
    distances: listed(distances_m.map((each) => distanceText(site, each)))
  });
  const carried = t('approach.carried', { to: distanceText(site, Math.max(0, carriedTo_m ?? 0)) });
  return [where, loops, carried].join(' ');
};
