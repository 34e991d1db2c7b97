import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as edits from '#plan/edits/index';
import { readSite, writeSite } from '#plan/read';
import type { Point, Site } from '#plan/schema';
import { fullSite } from './site';

const OUTLINE: readonly Point[] = [[-3, -2], [3, -2], [3, 2], [-3, 2]]; // prettier-ignore
const withMat = (): Site => edits.addSteel(fullSite(), edits.newSteel(fullSite(), OUTLINE));

describe('steel in the pavement', () => {
  it('begins as a mat of usual bars, and the next piece is like the last', () => {
    const site = edits.updateSteel(withMat(), 's1', { depth: 0.2, pitch: 0.3 });
    expect(site.steel[0]).toMatchObject({ kind: 'mat', depth: 0.2, pitch: 0.3, outline: OUTLINE });
    expect(edits.newSteel(site, OUTLINE)).toMatchObject({ id: 's2', depth: 0.2, pitch: 0.3 });
  });

  it('is refused when its outline crosses itself or encloses nothing', () => {
    const site = fullSite();
    const bow: Point[] = [[0, 0], [2, 2], [2, 0], [0, 2]]; // prettier-ignore
    const flat: Point[] = [[0, 0], [2, 0], [4, 0]]; // prettier-ignore
    for (const outline of [bow, flat]) expect(edits.addSteel(site, edits.newSteel(site, outline))).toBe(site);
  });

  it('changes kind and comes back with bars', () => {
    const plate = edits.setSteelKind(withMat(), 's1', 'plate');
    expect(plate.steel[0]).not.toHaveProperty('pitch');
    expect(edits.updateSteel(plate, 's1', { pitch: 0.5 })).toBe(plate);
    const above = edits.updateSteel(plate, 's1', { depth: -0.1 });
    expect(above.steel[0]?.depth).toBe(-0.1);
    const mat = edits.setSteelKind(above, 's1', 'mat').steel[0];
    expect(mat).toMatchObject({ kind: 'mat', depth: 0.1, pitch: 0.15, barRadius: 0.006 });
  });

  it('is read as a rectangle at any angle, and typed sizes keep its middle', () => {
    const turned = edits.rotateThings(withMat(), [{ kind: 'steel', id: 's1' }], 31, [1, 1]);
    const box = edits.steelBox(turned.steel[0]!.outline)!;
    expect(box.width).toBeCloseTo(6, 6);
    expect(box.length).toBeCloseTo(4, 6);
    expect(box.rotation).toBeCloseTo(31, 4);
    const wider = edits.updateSteelBox(turned, 's1', { width: 8 });
    const next = edits.steelBox(wider.steel[0]!.outline)!;
    expect(next.width).toBeCloseTo(8, 6);
    expect(Math.hypot(next.centre[0] - box.centre[0], next.centre[1] - box.centre[1])).toBeLessThan(1e-6);
    expect(edits.steelBox([[0, 0], [2, 0], [3, 1], [1, 1]])).toBeNull(); // prettier-ignore
  });

  it('stays a rectangle under a dragged corner, whose opposite stands still', () => {
    const site = edits.moveSteelPoint(withMat(), 's1', 2, [5, 1]);
    expect(site.steel[0]?.outline).toEqual([[-3, -2], [5, -2], [5, 1], [-3, 1]]); // prettier-ignore
    // A corner dragged onto a side would leave no area: the steel stays.
    expect(edits.moveSteelPoint(site, 's1', 2, [5, -2])).toBe(site);
  });

  it('is moved, copied and deleted like anything else', () => {
    const site = withMat();
    const things = [{ kind: 'steel', id: 's1' }] as const;
    const moved = edits.moveThings(site, things, [1, 0.5]);
    expect(moved.steel[0]?.outline[0]).toEqual([-2, -1.5]);
    const { site: both, things: copies } = edits.insertCopies(
      site,
      edits.extractThings(site, things),
      [0, 9]
    );
    expect(copies).toEqual([{ kind: 'steel', id: 's2' }]);
    expect(both.steel[1]?.outline[0]).toEqual([-3, 7]);
    expect(edits.removeThings(both, things).steel.map(({ id }) => id)).toEqual(['s2']);
  });

  it('leaves a document that can be opened, whatever is done to it', () => {
    const number = fc.oneof(
      { weight: 12, arbitrary: fc.integer({ min: -900, max: 900 }).map((value) => value / 90) },
      { weight: 1, arbitrary: fc.constantFrom(0, 1e-9, -1e6, 1e6, Number.NaN, Infinity) }
    );
    const point: fc.Arbitrary<Point> = fc.tuple(number, number);
    const id = fc.constantFrom('s1', 's2', 's3', 'none');
    const edit: fc.Arbitrary<(site: Site) => Site> = fc.oneof(
      fc
        .array(point, { minLength: 2, maxLength: 5 })
        .map((outline) => (site: Site) => edits.addSteel(site, edits.newSteel(site, outline))),
      fc.tuple(id, number, number, number).map(
        ([which, depth, pitch, barRadius]) =>
          (site: Site) =>
            edits.updateSteel(site, which, { depth, pitch, barRadius: barRadius / 100 })
      ),
      fc.tuple(id, number).map(
        ([which, permeability]) =>
          (site: Site) =>
            edits.updateSteel(site, which, {
              relativePermeability: permeability < 1 ? undefined : permeability,
              resistivity_ohm_m: permeability * 1e-7
            })
      ),
      fc.tuple(id, fc.constantFrom('mat' as const, 'plate' as const)).map(
        ([which, kind]) =>
          (site: Site) =>
            edits.setSteelKind(site, which, kind)
      ),
      fc.tuple(id, fc.integer({ min: -1, max: 5 }), point).map(
        ([which, index, to]) =>
          (site: Site) =>
            edits.moveSteelPoint(site, which, index, to)
      ),
      fc.tuple(id, number, point).map(
        ([which, width, centre]) =>
          (site: Site) =>
            edits.updateSteelBox(site, which, { width, centre })
      ),
      fc.tuple(id, number).map(
        ([which, degrees]) =>
          (site: Site) =>
            edits.rotateThings(site, [{ kind: 'steel', id: which }], degrees * 20, [0, 0])
      ),
      id.map((which) => (site: Site) => edits.removeThings(site, [{ kind: 'steel', id: which }])),
      id.map((which) => (site: Site) => {
        const copy = edits.extractThings(site, [{ kind: 'steel', id: which }]);
        return edits.insertCopies(site, copy, [1, 1]).site;
      })
    );
    let changes = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 4, maxLength: 25, size: 'max' }), (list) => {
        let site = withMat();
        for (const apply of list) {
          const next = apply(site);
          if (next === site) continue;
          changes += 1;
          const read = readSite(writeSite(next));
          expect(read.ok ? [] : read.problems.map(({ message }) => message)).toEqual([]);
          site = next;
        }
      }),
      { seed: 314_159, numRuns: 120 }
    );
    expect(changes).toBeGreaterThan(300);
  });
});
