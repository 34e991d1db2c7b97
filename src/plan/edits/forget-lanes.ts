import type { Site } from '../schema';
import { kept, withList } from './list';

/** What is left to do when lanes have gone: their traffic goes. */
export function forgetLanes(site: Site, gone: ReadonlySet<string>): Site {
  const { traffic } = site;
  if (!traffic || gone.size === 0) return site;
  const streams = kept(traffic.streams, ({ lane }) => !gone.has(lane));
  const arrivals = kept(traffic.arrivals, ({ lane }) => !gone.has(lane));
  const next = withList(withList(traffic, 'streams', streams), 'arrivals', arrivals);
  return next === traffic ? site : { ...site, traffic: next };
}
