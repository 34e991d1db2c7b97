/** Things in a row along an axis of the plan or along a lane. */
import type { Lane, Site } from '../../schema';
import { alongLane, laneLine, moveAlongLane } from './along-lane';
import { extentAlong, shiftAlong, shiftEach, type Extent, type Item, type PlanAxis } from './item';
import { equalGaps, exactGaps } from './spread';

/** An axis of the plan, or the way of a lane. */
export type Row = PlanAxis | Lane;

function spaced(
  site: Site,
  items: readonly Item[],
  row: Row,
  shiftsOf: (extents: readonly Extent[]) => readonly number[]
): Site {
  if (row === 'x' || row === 'y') {
    const shifts = shiftsOf(items.map((item) => extentAlong(item, row)));
    return shiftEach(
      site,
      items,
      shifts.map((shift) => shiftAlong(row, shift))
    );
  }
  const line = laneLine(row);
  if (!line) return site;
  const shifts = shiftsOf(items.map((item) => alongLane(line, item)));
  return items.reduce(
    (result, { thing, anchor, isFixed }, index) =>
      isFixed ? result : moveAlongLane(result, thing, { line, anchor, by: shifts[index] ?? 0 }),
    site
  );
}

/** Equal gaps between three things or more. */
export const distributeThings = (site: Site, items: readonly Item[], row: Row): Site =>
  items.length < 3 ? site : spaced(site, items, row, equalGaps);

/** This gap, metres, between two things or more; a negative one lets them overlap. */
export const setGaps = (site: Site, items: readonly Item[], row: Row, gap: number): Site =>
  items.length < 2 || !Number.isFinite(gap)
    ? site
    : spaced(site, items, row, (extents) => exactGaps(extents, gap));
