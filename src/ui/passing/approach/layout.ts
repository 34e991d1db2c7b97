/** What of the drawing an approach is set out on. Pure. */
import type { ApproachPlan } from '#analysis/approach/advance';
import type { Ref } from '#editor/types';
import { outlineOf } from '#plan/shapes/index';
import type { Lane, Site } from '#plan/schema';
import { stationOnLane, stopLineOf, type StopLine } from '#plan/stop-line';

/** A loop that is drawn already: metres before the line, the farther end first. */
export interface DrawnLoop {
  readonly id: string;
  readonly from_m: number;
  readonly to_m: number;
}

/** Nearer to a planned leading edge than this a loop counts as lying there, metres. */
const SAME_PLACE = 0.3;

type Drawn = Pick<Site, 'lanes' | 'marks' | 'loops'>;

/** What is chosen, else what is selected, else the lane with a stop line that has the longest run before it. */
export function laneShown(site: Drawn, chosen: string | null, selection: readonly Ref[]): Lane | null {
  const find = (id: string | null | undefined) => site.lanes.find((lane) => lane.id === id);
  const selected = selection.find(({ kind }) => kind === 'lane')?.id;
  const runs = site.lanes.map((lane) => ({ lane, line: stopLineOf(site, lane) }));
  const marked = runs.filter(({ line }) => line.mark !== null);
  const best = (marked.length > 0 ? marked : runs).reduce<(typeof runs)[number] | null>(
    (most, each) => (most && most.line.along >= each.line.along ? most : each),
    null
  );
  return find(chosen) ?? find(selected) ?? best?.lane ?? null;
}

/** Loops whose middle lies in the lane, wherever they are before the line. */
export const loopsBefore = (site: Drawn, lane: Lane, line: StopLine): readonly DrawnLoop[] =>
  site.loops.flatMap(({ id, shape }) => {
    const corners = outlineOf(shape).map((point) => stationOnLane(lane, point));
    const apart = corners.reduce((sum, each) => sum + each.apart, 0) / corners.length;
    if (apart > lane.width / 2) return [];
    const along = corners.map((each) => each.along);
    return [{ id, from_m: line.along - Math.min(...along), to_m: line.along - Math.max(...along) }];
  });

/** Every loop of the plan lies there already. */
export const isPlaced = ({ distances_m }: ApproachPlan, drawn: readonly DrawnLoop[]): boolean =>
  distances_m.length > 0 &&
  distances_m.every((distance) => drawn.some(({ from_m }) => Math.abs(from_m - distance) < SAME_PLACE));
