/**
 * What of a plan has to be on paper: loops with their tails and lead-ins, boxes and cabinets, and every mark, whole; of what
 * is long (lanes, kerbs, joints, conduits) and of steel no more than the stretch beside them, some metres beyond. A plan
 * without anything but long things is shown whole.
 */
import { leadInPath, tailPath } from '#plan/lead-out';
import { visibleSite } from '#plan/layers';
import type { MarkKind, Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround, boxCorners, type Box } from '#editor/geometry/box';
import { laneOutline } from '#editor/geometry/lanes';
import { seenLine } from '#editor/geometry/marks';
import { clippedLine } from './paper-clip';

/** Metres of a long thing beyond what lies beside it. */
const BEYOND = 2;
const LONG: ReadonlySet<MarkKind> = new Set(['kerb', 'joint', 'conduit', 'island']);

function whole(site: Site): Point[] {
  return [
    ...site.loops.flatMap((loop) => [...outlineOf(loop.shape), ...(tailPath(site, loop) ?? [])]),
    ...site.circuits.flatMap((circuit) => leadInPath(site, circuit) ?? []),
    ...site.marks.filter(({ kind }) => !LONG.has(kind)).flatMap((mark) => seenLine(mark))
  ];
}

const longThings = (site: Site): readonly (readonly Point[])[] => [
  ...site.lanes.map((lane) => [...laneOutline(lane), ...laneOutline(lane).slice(0, 1)]),
  ...site.marks.filter(({ kind }) => LONG.has(kind)).map((mark) => seenLine(mark)),
  ...site.steel.map(({ outline }) => [...outline, ...outline.slice(0, 1)])
];

/** What of a way lies beside the box, as ends of its parts. */
function beside(way: readonly Point[], { left, right, bottom, top }: Box): Point[] {
  const near = { left: left - BEYOND, right: right + BEYOND, top: bottom - BEYOND, bottom: top + BEYOND };
  return way.slice(1).flatMap((to, k) => clippedLine(way[k]!, to, near) ?? []);
}

/** Metres; null for a plan on which nothing is drawn. */
export function boxOfPlan(site: Site): Box | null {
  const shown = visibleSite(site);
  const long = longThings(shown);
  const box = boxAround(whole(shown));
  if (!box) return boxAround(long.flat());
  return boxAround([...boxCorners(box), ...long.flatMap((way) => beside(way, box))]);
}
