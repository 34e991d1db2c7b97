/** What a speed pair says in words. */
import { listed } from '#i18n/locale';
import type { LoopPair, PairDirection, PairPass, Spread } from '#analysis/speed-pair/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { INCH } from '#units/constants';
import { format } from '#units/format';
import { circuitName, laneName, vehicleName } from '../../names';
import type { SpeedRow } from './rows';

type Shown = Pick<Site, 'displayUnits' | 'circuits' | 'vehicles' | 'lanes'>;
type System = Pick<Site, 'displayUnits'>;

export const speedText = ({ displayUnits }: System, speed: number): string =>
  format(speed, 'speed', displayUnits).text;
/** To a centimetre or a quarter of an inch: no loop is cut and no vehicle is told finer. */
const FINEST = { metric: 0.01, imperial: INCH / 4 } as const;

export const lengthText = ({ displayUnits }: System, metres: number): string => {
  const finest = FINEST[displayUnits];
  return format(Math.round(metres / finest) * finest, 'length', displayUnits).text;
};
export const secondsText = ({ displayUnits }: System, seconds: number): string =>
  format(seconds, 'time', displayUnits, { unit: 'ms', digits: 3 }).text;

/** Under this share nothing is said but nought. */
const NOUGHT = 0.000_05;

/** "+1.2 %", with a hundredth of a percent as the last that counts. */
export const shareText = ({ displayUnits }: System, share: number | null, signed = true): string => {
  if (share === null) return '–';
  if (share === Infinity) return t('speed.unbounded');
  if (Math.abs(share) < NOUGHT) return format(0, 'ratio', displayUnits).text;
  return format(share, 'ratio', displayUnits, { digits: Math.abs(share) < 0.001 ? 1 : 2, signed }).text;
};

export const plusMinus = (text: string): string => t('speed.plusMinus', { value: text });

/** Not broken between a number and its unit. */
export const tight = (text: string): string => text.replaceAll(' ', '\u00a0');

export const spreadText = (site: System, { usual, worst }: Spread): string =>
  t('speed.spread', {
    usual: tight(shareText(site, usual, false)),
    worst: tight(shareText(site, worst, false))
  });

/** What the largest spacing that is wanted means for the one that is drawn. */
export const spacingText = (
  site: System,
  { wanted, now, aim }: { readonly wanted: number | null; readonly now: number; readonly aim: number }
): string => {
  if (wanted === null) return t('speed.noSpacing');
  const values = {
    aim: shareText(site, aim, false),
    spacing: lengthText(site, Math.max(0, wanted)),
    now: lengthText(site, now)
  };
  return wanted <= now ? t('speed.enough', values) : t('speed.wanted', values);
};

export const pairName = (site: Shown, pair: LoopPair): string =>
  t('speed.pairOf', {
    a: circuitName(site, pair.first),
    b: circuitName(site, pair.second),
    spacing: lengthText(site, pair.spacing_m),
    lane: laneName(site, pair.lane)
  });

/** Why a vehicle has no speed. */
export const lackOf = (site: Shown, { sides }: PairDirection, { profiles, crossings }: PairPass): string => {
  if (crossings) return t('speed.wrongOrder');
  const missing = sides.filter(({ threshold }, k) => !profiles[k]!.values.some((each) => each >= threshold));
  const names = missing.map(({ circuit }) => circuitName(site, circuit));
  return t('speed.missed', { circuits: listed(names) });
};

/** Told as several, or null. */
export const severalOf = (site: Shown, { sides }: PairDirection, { crossings }: PairPass): string | null => {
  const worst = crossings?.findIndex(({ detections }) => detections > 1) ?? -1;
  if (!crossings || worst < 0) return null;
  return t('speed.several', {
    circuit: circuitName(site, sides[worst as 0 | 1].circuit),
    count: crossings[worst as 0 | 1].detections
  });
};

export const summaryOf = (site: Shown, direction: PairDirection, row: SpeedRow): string => {
  const vehicle = vehicleName(site, row.pass.vehicle);
  const found = row.measurement;
  if (!found) return t('speed.none', { vehicle, why: lackOf(site, direction, row.pass) });
  return t('speed.summary', {
    vehicle,
    trips: lengthText(site, found.tripDistance_m),
    time: secondsText(site, found.between_s),
    speed: speedText(site, found.speed_m_s),
    error: shareText(site, found.errors.trips),
    chance: shareText(site, found.errors.chance.usual, false),
    length: lengthText(site, found.length_m)
  });
};

/** What the two thresholds do to the measurement; null where they are equal. */
export const thresholdNotice = (site: Shown, { sides }: PairDirection, row: SpeedRow | undefined) => {
  const [a, b] = sides;
  const isEven = Math.abs(a.threshold - b.threshold) < 1e-9 * a.threshold;
  if (isEven) return null;
  const percent = (value: number) => format(value, 'ratio', site.displayUnits).text;
  const values = {
    a: circuitName(site, a.circuit),
    b: circuitName(site, b.circuit),
    one: percent(a.threshold),
    other: percent(b.threshold)
  };
  const share = row?.measurement?.errors.thresholds ?? null;
  return share === null
    ? t('speed.uneven', values)
    : t('speed.unevenBy', { ...values, error: shareText(site, share) });
};
