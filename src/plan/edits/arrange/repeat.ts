/** Copies along a lane at a pitch: they turn with the lane and are wired among themselves as the originals are. */
import type { Lane, Point, Site } from '../../schema';
import { extractThings, insertCopies } from '../copies';
import type { Thing } from '../thing';
import { laneLine, moveAlongLane, staysOnLane } from './along-lane';

export interface Repetition {
  readonly things: readonly Thing[];
  readonly lane: Lane;
  /** Copies beside what is there. */
  readonly count: number;
  /** Metres along the lane from one to the next; negative against the direction of travel. */
  readonly pitch: number;
  /** What of a thing follows the lane. */
  readonly anchorOf: (site: Site, thing: Thing) => Point | null;
}

export interface Repeated {
  readonly site: Site;
  readonly things: readonly Thing[];
  /** How many copies there is room for: on the lane and in the document. */
  readonly made: number;
}

export function repeatAlongLane(site: Site, { things, lane, count, pitch, anchorOf }: Repetition): Repeated {
  const line = laneLine(lane);
  const from = extractThings(site, things);
  let next = site;
  const copies: Thing[] = [];
  let made = 0;
  if (!line || pitch === 0 || !Number.isFinite(pitch)) return { site, things: [], made };
  const anchors = things.map((thing) => anchorOf(site, thing)).filter((anchor) => anchor !== null);
  for (let step = 1; step <= count; step++) {
    const by = step * pitch;
    if (!anchors.every((anchor) => staysOnLane({ line, anchor, by }))) break;
    const inserted = insertCopies(next, from, [0, 0], site.marks);
    if (inserted.things.length === 0) break;
    next = inserted.things.reduce((result, thing) => {
      const anchor = anchorOf(result, thing);
      return anchor ? moveAlongLane(result, thing, { line, anchor, by }) : result;
    }, inserted.site);
    copies.push(...inserted.things);
    made = step;
  }
  return { site: next, things: copies, made };
}
