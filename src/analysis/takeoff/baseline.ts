/**
 * The line that cuts are set out from: the one that the sheet names; else a stop line, a kerb, or the first lane, whichever
 * there is first in that order and has every loop within a tape's length to its side. Square to a stop line of a few metres
 * nobody can set out what lies a hundred metres before it.
 */
import { nearestOn, stationed, type Stationed } from '#plan/geometry/stations';
import type { Mark, Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import type { SetOut } from './results';

export interface Baseline {
  /** As it is called; the id of what has no name. */
  readonly name: string;
  readonly line: Stationed;
}

const named = (name: string, points: readonly Point[]): Baseline | null => {
  const line = stationed(points);
  return line && { name, line };
};

const ofMark = (mark: Mark | undefined): Baseline | null =>
  mark ? named(mark.text || mark.id, mark.points) : null;

const ofLane = (lane: Site['lanes'][number] | undefined): Baseline | null =>
  lane ? named(lane.name || lane.id, lane.centreline) : null;

const firstMark = ({ marks }: Site, kind: Mark['kind']): Baseline | null =>
  marks.reduce<Baseline | null>((found, mark) => found ?? (mark.kind === kind ? ofMark(mark) : null), null);

function chosen({ sheet, lanes, marks }: Site): Baseline | null {
  const choice = sheet?.baseline;
  if (!choice) return null;
  return choice.kind === 'lane'
    ? ofLane(lanes.find(({ id }) => id === choice.lane))
    : ofMark(marks.find(({ id }) => id === choice.mark));
}

/** Metres: the usual long tape. Common practice. */
const TAPE = 30;

const isInReach = ({ line }: Baseline, { loops }: Site): boolean =>
  loops.every(({ shape }) => outlineOf(shape).every((point) => nearestOn(line, point, true).apart <= TAPE));

function usual(site: Site): Baseline | null {
  const lines = [firstMark(site, 'stop-line'), firstMark(site, 'kerb'), ofLane(site.lanes[0])].filter(
    (each) => each !== null
  );
  return lines.find((each) => isInReach(each, site)) ?? lines[0] ?? null;
}

/** Null where there is no line to measure from. A choice whose lane or mark is gone counts as none. */
export const baselineOf = (site: Site): Baseline | null => chosen(site) ?? usual(site);

/**
 * Before its start and beyond its end the line goes on straight, so that a tape held in line finds every place. Outside a
 * bend many places have the bend itself as their nearest point: the offset is what the tape then measures from there.
 */
export const setOutFrom = ({ line }: Baseline, point: Point): SetOut => {
  const { along, offset, apart } = nearestOn(line, point, true);
  return { station: along, offset: offset > 0 ? -apart : apart };
};
