import { describe, expect, it } from 'vitest';
import { COUNTS } from '#plan/bounds';
import * as edits from '#plan/edits/index';
import { emptySite } from '#plan/empty';
import { readSite, writeSite } from '#plan/read';
import type { Lane, Mark, Point, Site } from '#plan/schema';
import { laneLength, placeOnLane, stationOnLane, stopLineOf } from '#plan/stop-line';
import { centreOf, outlineOf } from '#plan/shapes/index';

const lane = (centreline: readonly Point[]): Lane => ({
  id: 'lane1',
  name: 'Approach',
  centreline,
  width: 3.5
});
const line = (from: Point, to: Point, id = 'm1'): Mark => ({ id, kind: 'stop-line', points: [from, to] });
const site = (centreline: readonly Point[], marks: readonly Mark[] = []): Site => ({
  ...emptySite('Approach'),
  lanes: [lane(centreline)],
  marks
});
const straight = (marks: readonly Mark[] = [line([-1.75, 0], [1.75, 0])]): Site => site([[0, -150], [0, 5]], marks); // prettier-ignore

describe('the line that a lane stops at', () => {
  it('is the last stop line across it, or its end', () => {
    const marks = [line([-2, 0], [2, 0]), line([-2, -40], [2, -40], 'm2')];
    expect(stopLineOf(straight(marks), lane([[0, -150], [0, 5]]))).toEqual({ along: 150, mark: 'm1' }); // prettier-ignore
    // one that lies beside the lane is another lane's
    expect(stopLineOf(straight([line([3, 0], [6, 0])]), straight().lanes[0]!)).toEqual({
      along: 155,
      mark: null
    });
    const kerb: Mark = { id: 'm3', kind: 'kerb', points: [[-2, -9], [2, -9]] }; // prettier-ignore
    expect(stopLineOf(straight([kerb]), straight().lanes[0]!).mark).toBeNull();
  });

  it('is told along the bends', () => {
    const bent = lane([[0, 0], [30, 0], [30, 40]]); // prettier-ignore
    expect(laneLength(bent)).toBe(70);
    expect(stopLineOf({ marks: [line([28, 35], [32, 35])] }, bent).along).toBeCloseTo(65, 9);
    expect(placeOnLane(bent, 50)).toEqual({ at: [30, 20], ahead: [0, 1] });
    expect(placeOnLane(bent, -10)).toEqual({ at: [-10, 0], ahead: [1, 0] });
    expect(stationOnLane(bent, [32, 25])).toEqual({ along: 55, apart: 2 });
  });
});

describe('advance loops', () => {
  it('lie with their leading edges at the distances, on circuits and channels of their own', () => {
    const next = edits.addAdvanceLoops(straight(), 'lane1', [110, 80, 50]);
    const edges = next.loops.map(({ shape }) => Math.min(...outlineOf(shape).map(([, y]) => y)));
    expect(edges).toEqual([-110, -80, -50]);
    for (const { shape } of next.loops) {
      expect(shape).toMatchObject({ kind: 'rectangle', width: 1.8, length: 1.8, rotation: 0 });
      expect(centreOf(shape)[0]).toBe(0);
    }
    expect(next.circuits.map(({ strings }) => strings)).toEqual(
      next.loops.map(({ id }) => [[{ loop: id, reversed: false }]])
    );
    const channels = next.circuits.map(({ channel }) => `${channel?.unit} ${channel?.number}`);
    expect(new Set(channels).size).toBe(3);
    const read = readSite(writeSite(next));
    expect(read.ok && read.site).toEqual(next);
  });

  it('turn with the lane', () => {
    const next = edits.addAdvanceLoops(site([[-100, 0], [0, 0]]), 'lane1', [60]); // prettier-ignore
    const across = outlineOf(next.loops[0]!.shape);
    expect(Math.min(...across.map(([x]) => x))).toBeCloseTo(-60, 9);
    expect(Math.max(...across.map(([, y]) => y))).toBeCloseTo(0.9, 9);
    expect(next.loops[0]!.shape).toMatchObject({ rotation: -90 });
  });

  it('draw a lane that is too short on at its start, and traffic still stops at its line', () => {
    const short: Site = {
      ...site([[0, -40], [0, 10]], [line([-2, 0], [2, 0])]), // prettier-ignore
      traffic: {
        seed: 1,
        duration_s: 60,
        streams: [
          {
            lane: 'lane1',
            flow_per_h: 300,
            speed_m_s: 14,
            speedSpread: 0.1,
            leastHeadway_s: 1.8,
            mix: [{ vehicle: 'car', share: 1 }],
            wander_m: 0,
            signal: { cycle_s: 60, greenFrom_s: 0, green_s: 30, line_m: 40 }
          }
        ],
        arrivals: [
          {
            lane: 'lane1',
            vehicle: 'car',
            at_s: 3,
            speed_m_s: 14,
            offset_m: 0,
            stop: { at_m: 39, for_s: 5 }
          },
          { lane: 'other', vehicle: 'car', at_s: 3, speed_m_s: 14, offset_m: 0, stop: { at_m: 7, for_s: 5 } }
        ]
      }
    };
    // 90 m before the line at 40 m: 50 m are missing, and 10 m of run-up
    expect(edits.missingRun(short, short.lanes[0]!, 90)).toBe(60);
    const next = edits.addAdvanceLoops(short, 'lane1', [90, 30]);
    expect(next.lanes[0]!.centreline).toEqual([[0, -100], [0, 10]]); // prettier-ignore
    expect(stopLineOf(next, next.lanes[0]!).along).toBe(100);
    expect(next.traffic?.streams[0]?.signal?.line_m).toBe(100);
    expect(next.traffic?.arrivals.map(({ stop }) => stop?.at_m)).toEqual([99, 7]);
    expect(next.loops.map(({ shape }) => centreOf(shape)[1])).toEqual([-89.1, -29.1]);
  });

  it('leave the site alone when the document may not hold them', () => {
    const open = straight();
    expect(edits.addAdvanceLoops(open, 'none', [50])).toBe(open);
    expect(edits.addAdvanceLoops(open, 'lane1', [])).toBe(open);
    expect(edits.addAdvanceLoops(open, 'lane1', [50, Number.NaN])).toBe(open);
    expect(edits.addAdvanceLoops(open, 'lane1', [50_000])).toBe(open);
    const full = edits.addAdvanceLoops(open, 'lane1', [50]);
    const crowded: Site = {
      ...full,
      loops: Array.from({ length: COUNTS.loops - 1 }, (_, k) => ({ ...full.loops[0]!, id: `X${k}` }))
    };
    expect(edits.addAdvanceLoops(crowded, 'lane1', [50, 40])).toBe(crowded);
  });
});
