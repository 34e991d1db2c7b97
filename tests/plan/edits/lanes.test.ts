import { describe, expect, it } from 'vitest';
import {
  addLaneCorner,
  addLanes,
  moveLanePoint,
  moveThings,
  removeLaneCorner,
  reverseLane,
  rotateThings,
  setLaneRadius,
  updateLane
} from '#plan/edits/index';
import { bentLine } from '#plan/geometry/bends';
import { bendsOf } from '#plan/lane-bends';
import { emptySite, readSite } from '#plan/read';
import type { Lane, Point, Site } from '#plan/schema';
import { writeSite } from '#plan/write';

const corner: Point[] = [[0, 0], [20, 0], [20, 15]]; // prettier-ignore

function bent(radius = 6): Site {
  const made = addLanes(emptySite(), { line: { points: corner, radii: [0, radius, 0] }, count: 1, width: 3, oppose: false }); // prettier-ignore
  if (typeof made === 'string') throw new Error(made);
  return made.site;
}

const laneOf = (site: Site): Lane => site.lanes[0]!;
const id = 'lane1';

describe('the bends of a lane', () => {
  it('make its centreline, also after it was saved and read again', () => {
    const site = bent();
    const reading = readSite(writeSite(site));
    expect(reading.ok && laneOf(reading.site)).toEqual(laneOf(site));
    expect(bendsOf(laneOf(site))?.radii).toEqual([0, 6, 0]);
  });

  it('are not believed where they do not make it, and go with the first edit', () => {
    const lane = laneOf(bent());
    const centreline = lane.centreline.map(([x, y]): Point => [x + 0.02, y]);
    const site: Site = { ...bent(), lanes: [{ ...lane, centreline }] };
    expect(bendsOf(laneOf(site))).toBeNull();
    const named = updateLane(site, id, { name: 'Exit' });
    expect(laneOf(named)).toEqual({ ...lane, name: 'Exit', centreline, bends: undefined });
    expect('bends' in laneOf(named)).toBe(false);
    // The points of the centreline are its corners now.
    const moved = moveLanePoint(site, id, 1, [14, 1]);
    expect(laneOf(moved).centreline[1]).toEqual([14, 1]);
    expect(laneOf(moved).centreline).toHaveLength(centreline.length);
  });

  it('stay with an edit of another field, and go with a centreline of its own', () => {
    expect(laneOf(updateLane(bent(), id, { width: 4 })).bends).toBeDefined();
    const straight = updateLane(bent(), id, { centreline: [[0, 0], [9, 0]] }); // prettier-ignore
    expect('bends' in laneOf(straight)).toBe(false);
  });

  it('go along with moves and turns', () => {
    const things = [{ kind: 'lane', id }] as const;
    const site = rotateThings(moveThings(bent(), things, [3, -2]), things, 30, [1, 1]);
    const bends = bendsOf(laneOf(site));
    expect(bends).not.toBeNull();
    const line = bentLine(bends!);
    expect(line).toHaveLength(laneOf(site).centreline.length);
  });

  it('take a radius as large as their sides allow, and none at the ends', () => {
    expect(laneOf(setLaneRadius(bent(), id, 1, 9)).bends?.radii[1]).toBe(9);
    expect(laneOf(setLaneRadius(bent(), id, 1, 400)).bends?.radii[1]).toBeCloseTo(15, 6);
    expect(laneOf(setLaneRadius(bent(), id, 1, 0))).toMatchObject({ centreline: corner });
    expect('bends' in laneOf(setLaneRadius(bent(), id, 1, 0))).toBe(false);
    const none = bent();
    expect(setLaneRadius(none, id, 1, -1)).toBe(none);
  });

  it('get corners, and lose them', () => {
    const more = addLaneCorner(bent(), id, 0);
    expect(laneOf(more).bends).toMatchObject({ points: [[0, 0], [10, 0], [20, 0], [20, 15]], radii: [0, 0, 6, 0] }); // prettier-ignore
    expect(laneOf(removeLaneCorner(more, id, 1)).bends).toEqual(laneOf(bent()).bends);
    expect(removeLaneCorner(more, id, 0)).toBe(more);
    expect(removeLaneCorner(more, id, 3)).toBe(more);
  });

  it('run the other way when the lane does', () => {
    const site = reverseLane(bent(), id);
    expect(laneOf(site).centreline).toEqual(laneOf(bent()).centreline.toReversed());
    expect(bendsOf(laneOf(site))?.points).toEqual(corner.toReversed());
    expect(laneOf(reverseLane(site, id))).toEqual(laneOf(bent()));
  });
});
