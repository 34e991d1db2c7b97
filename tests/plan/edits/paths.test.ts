import { describe, expect, it } from 'vitest';
import { COUNTS } from '#plan/bounds';
import * as edits from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Point, Site } from '#plan/schema';
import { fullSite } from './site';

const TURN: readonly Point[] = [[0, -5], [0, 0], [5, 0]]; // prettier-ignore
const withPath = (): Site => edits.addPath(fullSite(), edits.newPath(fullSite(), TURN));
const things = [{ kind: 'path', id: 'p1' }] as const;

describe('paths that vehicles take', () => {
  it('have a name and go through a file unchanged', () => {
    const site = withPath();
    expect(site.paths).toEqual([{ id: 'p1', name: 'Path 1', points: TURN }]);
    const reading = readSite(writeSite(site));
    expect(reading.ok && reading.site.paths).toEqual(site.paths);
  });

  it('are refused without length, with a taken id, or when there are too many', () => {
    const site = withPath();
    expect(edits.addPath(site, { id: 'p2', name: '', points: [[1, 1], [1, 1]] })).toBe(site); // prettier-ignore
    expect(edits.addPath(site, { id: 'p1', name: '', points: TURN })).toBe(site);
    let full = fullSite();
    for (let n = 0; n < COUNTS.paths; n++) full = edits.addPath(full, edits.newPath(full, TURN));
    expect(full.paths).toHaveLength(COUNTS.paths);
    expect(edits.addPath(full, edits.newPath(full, TURN))).toBe(full);
  });

  it('are renamed and bent, but never to nothing', () => {
    const named = edits.updatePath(withPath(), 'p1', { name: 'Left turn' });
    expect(named.paths[0]?.name).toBe('Left turn');
    const bent = edits.movePathPoint(named, 'p1', 1, [1, 0]);
    expect(bent.paths[0]?.points).toEqual([[0, -5], [1, 0], [5, 0]]); // prettier-ignore
    expect(edits.updatePath(bent, 'p1', { points: [[2, 2], [2, 2]] })).toBe(bent); // prettier-ignore
    expect(edits.movePathPoint(bent, 'none', 0, [0, 0])).toBe(bent);
    // as far as a drawing goes, and no further
    expect(edits.movePathPoint(bent, 'p1', 2, [1e6, 0]).paths[0]?.points[2]).toEqual([20_000, 0]);
  });

  it('are moved, turned, copied and deleted like anything else', () => {
    const site = withPath();
    expect(edits.moveThings(site, things, [1, 0.5]).paths[0]?.points[0]).toEqual([1, -4.5]);
    expect(edits.rotateThings(site, things, 90, [0, 0]).paths[0]?.points[2]).toEqual([0, 5]);
    const { site: both, things: copies } = edits.insertCopies(
      site,
      edits.extractThings(site, things),
      [0, 20]
    );
    expect(copies).toEqual([{ kind: 'path', id: 'p2' }]);
    expect(both.paths[1]?.points[0]).toEqual([0, 15]);
    const rest = edits.removeThings(both, things);
    expect(rest.paths.map(({ id }) => id)).toEqual(['p2']);
    expect(rest.loops).toBe(both.loops);
  });
});
