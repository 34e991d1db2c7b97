import { expect, test } from 'vitest';
import { scaleThings } from '#plan/edits/scale';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { siteWith, square } from '../../editor/sites';

const drawn = (): Site =>
  siteWith({
    shapes: [{ ...square(2, 2), cornerCut: 0.2 }],
    lanes: [
      {
        id: 'A',
        width: 3,
        centreline: [[0, 0], [10, 0], [10, 10]],
        bends: { points: [[0, 0], [10, 0], [10, 10]], radii: [0, 4, 0] }
      }
    ],
    marks: [
      { id: 'm1', kind: 'gate', points: [[0, 5], [4, 5]], opening: { kind: 'slide', travel: 4 } },
      { id: 'm2', kind: 'dimension', points: [[0, 6], [4, 6]], offset: 0.5 }
    ]
  }); // prettier-ignore

const ALL = [
  { kind: 'loop', id: 'L1' },
  { kind: 'lane', id: 'A' },
  { kind: 'mark', id: 'm1' },
  { kind: 'mark', id: 'm2' }
] as const;

test('every length that a thing has becomes as many times as large', () => {
  const next = scaleThings(drawn(), ALL, 1.5, [0, 0]);
  expect(next.loops[0]?.shape).toMatchObject({ centre: [3, 3], cornerCut: 0.3 });
  expect(next.lanes[0]).toMatchObject({ width: 4.5, bends: { radii: [0, 6, 0] } });
  expect(next.lanes[0]?.bends?.points).toEqual([[0, 0], [15, 0], [15, 15]]); // prettier-ignore
  expect(next.marks[0]).toMatchObject({ points: [[0, 7.5], [6, 7.5]], opening: { travel: 6 } }); // prettier-ignore
  expect(next.marks[1]).toMatchObject({ points: [[0, 9], [6, 9]], offset: 0.75 }); // prettier-ignore
});

test('all of it or nothing: one that would leave its bounds keeps the others as they are', () => {
  const site = drawn();
  expect(scaleThings(site, ALL, 1e4, [0, 0])).toBe(site);
  expect(readSite(JSON.stringify(scaleThings(site, ALL, 0.9, [1, 1]))).ok).toBe(true);
});
