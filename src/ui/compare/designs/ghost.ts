/** What of another design is drawn over the plan, and where a difference lies. Pure. */
import type { Place } from '#analysis/takeoff/results';
import { differencesBetween, type Difference } from '#plan/differences/index';
import type { Site } from '#plan/schema';
import { placesOfThing, type GhostPicture } from '#scenes/designs';

const probePlaces = (site: Site, id: string): readonly Place[] => {
  const probe = site.probes[Number(id)];
  return probe ? [{ kind: 'point', at: probe.at }] : [];
};

const placesIn = (site: Site, { thing, id }: Difference): readonly Place[] =>
  thing === 'probe' ? probePlaces(site, id) : placesOfThing(site, id);

/** The design that has it: the later one, unless it is gone there. */
export const siteOfDifference = (difference: Difference, before: Site, after: Site): Site =>
  difference.change === 'removed' ? before : after;

/** In both designs, where both have it. */
export const placesOf = (difference: Difference, before: Site, after: Site): readonly Place[] =>
  difference.thing === 'probe'
    ? placesIn(siteOfDifference(difference, before, after), difference)
    : [...placesIn(before, difference), ...placesIn(after, difference)];

/** Of the other design only what the present one has otherwise or not at all. */
export function ghostOf(present: Site, other: Site, name: string): GhostPicture {
  const differences = differencesBetween(present, other).filter(({ change }) => change !== 'removed');
  return { name, places: differences.flatMap((difference) => placesIn(other, difference)) };
}
