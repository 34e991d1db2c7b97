/** Where a lane’s traffic stops, and where things lie along a lane. */
import { expect, it } from 'vitest';
import { emptySite } from '#plan/read';
import type { Lane, Mark, Point } from '#plan/schema';
import { laneLength, placeOnLane, stationOnLane, stopLineOf } from '#plan/stop-line';

/** Ten metres ahead, then ten to the right. */
const bent: Lane = { id: 'a', name: '', centreline: [[0, 0], [0, 10], [10, 10]], width: 3.5 }; // prettier-ignore
const line = (id: string, ...points: Point[]): Mark => ({ id, kind: 'stop-line', points });
const stopsAt = (...marks: Mark[]) => stopLineOf({ ...emptySite('Ropery Row'), marks }, bent);

it('is the last line that is drawn across it, whatever the order of drawing', () => {
  const near = line('near', [-2, 4], [2, 4]);
  const far = line('far', [6, 8], [6, 12]);
  expect(stopsAt(near, far)).toEqual({ along: 16, mark: 'far' });
  expect(stopsAt(far, near)).toEqual({ along: 16, mark: 'far' });
});

it('is the lane’s end where no line crosses it', () => {
  expect(stopsAt(line('beside', [3, 4], [6, 4]))).toEqual({ along: 20, mark: null });
  expect(laneLength(bent)).toBe(20);
});

it('a place beside the lane has the station of the nearest point, and how far off it is', () => {
  expect(stationOnLane(bent, [1, 4])).toEqual({ along: 4, apart: 1 });
  expect(stationOnLane(bent, [7, 12])).toEqual({ along: 17, apart: 2 });
});

it('beyond its ends a lane goes on straight', () => {
  expect(placeOnLane(bent, -3)).toEqual({ at: [0, -3], ahead: [0, 1] });
  expect(placeOnLane(bent, 25)).toEqual({ at: [15, 10], ahead: [1, 0] });
});
