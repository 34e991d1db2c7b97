/**
 * Published figures, to stand beside those that are computed. All were read in a restatement that names the document and
 * the page, none in the document itself; miles an hour, feet and seconds as printed. Where a restatement gives a range
 * without its speeds, the speeds are those that reproduce both ends.
 */
import { FOOT } from '#units/constants';

export const MILE_PER_HOUR = (5280 * FOOT) / 3600;

export const SOURCES = {
  zone: 'NCHRP Report 812, exhibit 4-7',
  yellow: 'NCHRP Report 812, exhibit 6-2',
  passage: 'NCHRP Report 812, exhibit 6-12',
  sight: 'AASHTO, Geometric Design of Highways and Streets, 2018, section 3.1.2'
} as const;

/** Ends of the decision zone, feet from the line. */
export const PUBLISHED_ZONES = [
  { speed_mph: 35, from_ft: 285, to_ft: 125 },
  { speed_mph: 55, from_ft: 445, to_ft: 200 }
] as const;

/** Level road. */
export const PUBLISHED_YELLOWS = [
  { speed_mph: 25, yellow_s: 3.0 },
  { speed_mph: 30, yellow_s: 3.2 },
  { speed_mph: 35, yellow_s: 3.6 },
  { speed_mph: 40, yellow_s: 3.9 },
  { speed_mph: 45, yellow_s: 4.3 },
  { speed_mph: 50, yellow_s: 4.7 },
  { speed_mph: 55, yellow_s: 5.0 },
  { speed_mph: 60, yellow_s: 5.4 }
] as const;

/** Design values: level road, rounded up to 5 ft. */
export const PUBLISHED_SIGHT_DISTANCES = [
  { speed_mph: 25, sight_ft: 155 },
  { speed_mph: 30, sight_ft: 200 },
  { speed_mph: 35, sight_ft: 250 },
  { speed_mph: 40, sight_ft: 305 },
  { speed_mph: 45, sight_ft: 360 },
  { speed_mph: 50, sight_ft: 425 },
  { speed_mph: 55, sight_ft: 495 },
  { speed_mph: 60, sight_ft: 570 }
] as const;

/** Single zones at the stop line, 3 s from front to front: at 25 and at 55 mph. */
export const PUBLISHED_PASSAGES = [
  { zone_ft: 6, at25_s: 2.3, at55_s: 2.7 },
  { zone_ft: 20, at25_s: 1.9, at55_s: 2.5 },
  { zone_ft: 40, at25_s: 1.4, at55_s: 2.3 },
  { zone_ft: 60, at25_s: 0.8, at55_s: 2.0 },
  { zone_ft: 80, at25_s: 0.3, at55_s: 1.8 }
] as const;

/** Everything published at one speed, metres and seconds; null where the source gives nothing. */
export interface PublishedRow {
  readonly speed_mph: number;
  readonly zone_ft: readonly [number, number] | null;
  readonly yellow_s: number | null;
  readonly sight_ft: number | null;
}

export const PUBLISHED_ROWS: readonly PublishedRow[] = PUBLISHED_YELLOWS.map(({ speed_mph, yellow_s }) => {
  const zone = PUBLISHED_ZONES.find((each) => each.speed_mph === speed_mph);
  const sight = PUBLISHED_SIGHT_DISTANCES.find((each) => each.speed_mph === speed_mph);
  return {
    speed_mph,
    zone_ft: zone ? [zone.from_ft, zone.to_ft] : null,
    yellow_s,
    sight_ft: sight?.sight_ft ?? null
  };
});
