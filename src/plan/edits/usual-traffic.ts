/**
 * Traffic to begin with. Every figure is common practice for a street of its kind and there to be changed: nothing is known
 * of the real one.
 */
import { FOOT } from '#units/constants';
import { vehicleOf } from '../catalogue/vehicles';
import type { Arrival, Lane, Signal, Site, Stream, Traffic } from '../schema';
import { centreOf } from '../shapes/index';
import { laneLength, stationOnLane, stopLineOf } from '../stop-line';
import { loopsIn } from '../wiring';

/** Of a hundred vehicles; what is not named here is rare. */
const SHARES: Readonly<Record<string, number>> = {
  car: 70,
  'car-small': 12,
  suv: 12,
  van: 10,
  lorry: 5,
  bus: 2,
  motorcycle: 3,
  bicycle: 3,
  'bicycle-steel': 1
};
const RARE = 1;

/** Shorter or narrower than that, or with a gate, it is a yard's or a car park's: people drive slowly. */
const STREET = { length: 25, width: 2.9 } as const;
/** Narrower than that no car drives there. */
const CAR_WIDTH = 2.2;

const MPH = (5_280 * FOOT) / 3_600;

const SPEEDS = {
  street: { metric: 50 / 3.6, imperial: 30 * MPH },
  yard: { metric: 15 / 3.6, imperial: 10 * MPH },
  cycle: { metric: 18 / 3.6, imperial: 11 * MPH }
} as const;
/** Vehicles an hour. */
const FLOWS = { signalled: 450, street: 600, yard: 120, cycle: 60, cyclesAmongCars: 20 } as const;

type Kind = keyof typeof SPEEDS;

const kindOf = (site: Site, lane: Lane): Kind => {
  if (lane.width < CAR_WIDTH) return 'cycle';
  const isGated = site.marks.some(({ kind }) => kind === 'gate');
  return !isGated && laneLength(lane) >= STREET.length && lane.width >= STREET.width ? 'street' : 'yard';
};

/** Vehicles that the circuits in the lane must detect. */
const askedForIn = (site: Site, lane: Lane): readonly string[] =>
  site.circuits
    .filter((circuit) =>
      loopsIn(circuit).some((id) => {
        const loop = site.loops.find((each) => each.id === id);
        return loop !== undefined && stationOnLane(lane, centreOf(loop.shape)).apart <= lane.width / 2;
      })
    )
    .flatMap(({ detect }) => detect);

/** Slower than all others. */
const isPedalled = (id: string): boolean => id.startsWith('bicycle') || id === 'wheel';

function usualMix(site: Site, lane: Lane): Stream['mix'] {
  const always = kindOf(site, lane) === 'cycle' ? 'bicycle' : 'car';
  const ids = new Set([
    always,
    ...askedForIn(site, lane),
    ...(lane.largestVehicle ? [lane.largestVehicle] : [])
  ]);
  return [...ids]
    .filter((id) => vehicleOf(id, site) !== undefined)
    .map((vehicle) => ({ vehicle, share: SHARES[vehicle] ?? RARE }));
}

/** A minute's cycle with 25 s of green, at the lane's stop line. */
export const usualSignal = (site: Site, lane: Lane): Signal => ({
  cycle_s: 60,
  greenFrom_s: 0,
  green_s: 25,
  line_m: stopLineOf(site, lane).along
});

/** Of everything that comes at the lane's own speed. */
export function usualStream(site: Site, lane: Lane): Stream {
  const kind = kindOf(site, lane);
  const stops = kind !== 'yard' && stopLineOf(site, lane).mark !== null;
  const mix = usualMix(site, lane);
  return {
    lane: lane.id,
    flow_per_h: kind === 'street' && stops ? FLOWS.signalled : FLOWS[kind],
    speed_m_s: SPEEDS[kind][site.displayUnits],
    speedSpread: 0.1,
    leastHeadway_s: 1.8,
    mix: kind === 'cycle' ? mix : mix.filter(({ vehicle }) => !isPedalled(vehicle)),
    wander_m: 0.15,
    signal: stops ? usualSignal(site, lane) : null
  };
}

/** On a lane with cars, where cycles must be detected among them: few, slow, and anywhere across it. */
function cyclesAmongCars(site: Site, lane: Lane): readonly Stream[] {
  const mix = usualMix(site, lane).filter(({ vehicle }) => isPedalled(vehicle));
  if (kindOf(site, lane) === 'cycle' || mix.length === 0) return [];
  const like = usualStream(site, lane);
  const speed = Math.min(like.speed_m_s, SPEEDS.cycle[site.displayUnits]);
  return [{ ...like, flow_per_h: FLOWS.cyclesAmongCars, speed_m_s: speed, mix, wander_m: 0.5, signal: null }];
}

/** A car, as soon as the simulation begins. */
export const usualArrival = (site: Site, lane: Lane): Arrival => ({
  lane: lane.id,
  vehicle: usualMix(site, lane)[0]?.vehicle ?? 'car',
  at_s: 0,
  speed_m_s: SPEEDS[kindOf(site, lane)][site.displayUnits],
  offset_m: 0,
  stop: null
});

/** A stream on every lane, and cycles where they are asked for, for five minutes. */
export const usualTraffic = (site: Site): Traffic => ({
  seed: 1,
  duration_s: 300,
  streams: site.lanes.flatMap((lane) => [usualStream(site, lane), ...cyclesAmongCars(site, lane)]),
  arrivals: []
});
