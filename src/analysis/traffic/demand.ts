/**
 * Who wants to drive when, on one lane: streams drawn by lot and single arrivals, in the order of their times. Headways of
 * a stream are the least one and an exponential on top (shifted exponential: Cowan's M2, 1975; common practice), so that a
 * flow above one vehicle a least headway becomes just that.
 */
import { vehicleOf, type CatalogueVehicle } from '#plan/catalogue/vehicles';
import type { Arrival, Site, Stream, Traffic } from '#plan/schema';
import { CAR_IN_QUEUE, CUT_OFF, LEAST_DELAY, LEAST_SPEED } from './practice';
import { exponential, lotsOf, normal } from './random';

export interface Driver {
  readonly vehicle: CatalogueVehicle;
  /** When its front would be at the lane's start if nobody were ahead, s. */
  readonly at: number;
  /** m/s */
  readonly speed: number;
  /** To the right of the lane's middle, metres. */
  readonly offset: number;
  /** Behind the one ahead, s (Newell's delay). */
  readonly delay: number;
  readonly stop: Arrival['stop'];
}

/** Offsets of a stream lie on this grid, metres: each needs its own profile. */
const OFFSET_STEP = 0.05;

/** One key for each thing that is drawn, so that changing one leaves the others as they are. */
const KEYS = { headways: 1, vehicles: 2, speeds: 3, offsets: 4 } as const;

/** Of all numbers that are drawn only those below the sum of the shares count. */
const chosen = <T extends { readonly share: number }>(mix: readonly T[], share: number): T | undefined => {
  let left = share * mix.reduce((sum, each) => sum + each.share, 0);
  return mix.find((each) => each.share > 0 && (left -= each.share) < 0);
};

/** In the lane all of the body, as far as it goes in. */
const withinLane = (offset: number, width: number, { bodyWidth }: CatalogueVehicle): number => {
  const room = Math.max(0, (width - bodyWidth) / 2);
  const within = Math.min(room, Math.max(-room, offset));
  return Math.trunc(within / OFFSET_STEP + Math.sign(within) * 1e-6) * OFFSET_STEP;
};

/** That of a car at the stream's speed keeps the least headway front to front. */
const delayOf = ({ leastHeadway_s, speed_m_s }: Stream): number =>
  Math.max(LEAST_DELAY, leastHeadway_s - CAR_IN_QUEUE / speed_m_s);

function driversOf(stream: Stream, number: number, traffic: Traffic, site: Site, end: number): Driver[] {
  const width = site.lanes.find(({ id }) => id === stream.lane)?.width ?? 0;
  if (!(stream.flow_per_h > 0)) return [];
  const lots = (key: keyof typeof KEYS) => lotsOf(traffic.seed, number, KEYS[key]);
  const [headways, vehicles, speeds, offsets] = [
    lots('headways'),
    lots('vehicles'),
    lots('speeds'),
    lots('offsets')
  ];
  const known = new Map(stream.mix.map(({ vehicle }) => [vehicle, vehicleOf(vehicle, site)] as const));
  const least = stream.leastHeadway_s;
  const spare = Math.max(0, 3_600 / stream.flow_per_h - least);
  const delay = delayOf(stream);
  const drivers: Driver[] = [];
  // the first may come at any time within its headway, not a least headway late
  let at = spare * exponential(headways);
  for (; at < end; at += least + spare * exponential(headways)) {
    const share = vehicles();
    const speed = stream.speed_m_s * (1 + stream.speedSpread * normal(speeds, CUT_OFF));
    const wander = stream.wander_m * normal(offsets, CUT_OFF);
    const vehicle = known.get(chosen(stream.mix, share)?.vehicle ?? '');
    if (!vehicle) continue;
    drivers.push({
      vehicle,
      at,
      speed: Math.max(LEAST_SPEED * stream.speed_m_s, speed),
      offset: withinLane(wander, width, vehicle),
      delay,
      stop: null
    });
  }
  return drivers;
}

/** In the order of their times; who comes from `end` on is left out. */
export function driversOn(lane: string, site: Site, traffic: Traffic, end: number): readonly Driver[] {
  const drawn = traffic.streams.flatMap((stream, number) =>
    stream.lane === lane ? driversOf(stream, number, traffic, site, end) : []
  );
  const single = traffic.arrivals.flatMap((arrival): Driver[] => {
    const vehicle = vehicleOf(arrival.vehicle, site);
    if (arrival.lane !== lane || arrival.at_s >= end || !vehicle) return [];
    const { at_s: at, speed_m_s: speed, offset_m: offset, stop } = arrival;
    return [{ vehicle, at, speed, offset, delay: LEAST_DELAY, stop }];
  });
  return [...drawn, ...single].sort((a, b) => a.at - b.at);
}
