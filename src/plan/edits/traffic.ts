/**
 * The traffic that a drawing is tried with. Streams and arrivals have no ids: they are told by their place in their lists.
 * What is added to a site without traffic begins one.
 */
import { COUNTS } from '../bounds';
import { vehicleOf } from '../catalogue/vehicles';
import {
  traffic as trafficSchema,
  type Arrival,
  type Signal,
  type Site,
  type Stream,
  type Traffic
} from '../schema';
import { kept, mapped, patched, withList, type Patch } from './list';

const NONE: Traffic = { seed: 1, duration_s: 300, streams: [], arrivals: [] };

type Ends = Pick<Site, 'lanes' | 'vehicles'>;

const knowsLane = ({ lanes }: Ends, id: string): boolean => lanes.some((lane) => lane.id === id);
const knowsVehicle = (site: Ends, id: string): boolean => vehicleOf(id, site) !== undefined;

const isSound = (site: Site, traffic: Traffic): boolean =>
  trafficSchema.safeParse(traffic).success &&
  traffic.streams.every(
    ({ lane, mix }) => knowsLane(site, lane) && mix.every(({ vehicle }) => knowsVehicle(site, vehicle))
  ) &&
  traffic.arrivals.every(({ lane, vehicle }) => knowsLane(site, lane) && knowsVehicle(site, vehicle));

/** The same site when the traffic names what is not there or is out of bounds. */
export const setTraffic = (site: Site, traffic: Traffic): Site =>
  site.traffic !== traffic && isSound(site, traffic) ? { ...site, traffic } : site;

export const removeTraffic = (site: Site): Site =>
  site.traffic === undefined ? site : patched(site, { traffic: undefined });

/** Seed and duration. */
export const updateTraffic = (site: Site, patch: Patch<Pick<Traffic, 'seed' | 'duration_s'>>): Site =>
  setTraffic(site, patched(site.traffic ?? NONE, patch));

const withStreams = (site: Site, change: (streams: readonly Stream[]) => readonly Stream[]): Site => {
  const traffic = site.traffic ?? NONE;
  return setTraffic(site, withList(traffic, 'streams', change(traffic.streams)));
};

const withArrivals = (site: Site, change: (arrivals: readonly Arrival[]) => readonly Arrival[]): Site => {
  const traffic = site.traffic ?? NONE;
  return setTraffic(site, withList(traffic, 'arrivals', change(traffic.arrivals)));
};

export const addStream = (site: Site, stream: Stream): Site =>
  withStreams(site, (streams) => [...streams, stream]);

/** The same site when the stream is not there, nothing changes, or the result would not be sound. */
export const updateStream = (site: Site, index: number, patch: Patch<Stream>): Site =>
  site.traffic?.streams[index]
    ? withStreams(site, (streams) =>
        mapped(streams, (each, at) => (at === index ? patched(each, patch) : each))
      )
    : site;

export const removeStream = (site: Site, index: number): Site =>
  site.traffic ? withStreams(site, (streams) => kept(streams, (_, at) => at !== index)) : site;

/** The signal that a stream's lane stops at; null takes it away. */
export const setSignal = (site: Site, stream: number, signal: Signal | null): Site =>
  updateStream(site, stream, { signal });

/** The same site when the stream has none, nothing changes, or the result would not be sound. */
export function updateSignal(site: Site, stream: number, patch: Patch<Signal>): Site {
  const signal = site.traffic?.streams[stream]?.signal;
  return signal ? setSignal(site, stream, patched(signal, patch)) : site;
}

export const addArrival = (site: Site, arrival: Arrival): Site =>
  (site.traffic?.arrivals.length ?? 0) < COUNTS.arrivals
    ? withArrivals(site, (arrivals) => [...arrivals, arrival])
    : site;

/** The same site when the arrival is not there, nothing changes, or the result would not be sound. */
export const updateArrival = (site: Site, index: number, patch: Patch<Arrival>): Site =>
  site.traffic?.arrivals[index]
    ? withArrivals(site, (arrivals) =>
        mapped(arrivals, (each, at) => (at === index ? patched(each, patch) : each))
      )
    : site;

export const removeArrival = (site: Site, index: number): Site =>
  site.traffic ? withArrivals(site, (arrivals) => kept(arrivals, (_, at) => at !== index)) : site;
