import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addMark,
  courseOf,
  extractThings,
  insertCopies,
  insertWayPoint,
  leadIn,
  leadOut,
  moveThings,
  moveWayPoint,
  newLoop,
  newMark,
  removeThings,
  removeWayPoint,
  rotateThings,
  setVia,
  squareVia,
  typedTail,
  updateLeadInPart,
  updateLeadInRoute,
  updateLoop,
  updateTailRoute,
  wayPath,
  type Way
} from '#plan/edits/index';
import { followRoutes } from '#plan/lead-out';
import { emptySite, readSite, writeSite } from '#plan/read';
import type { Point, Site } from '#plan/schema';
import { fullSite } from './site';

/** Loops of 1.8 m at x = 0, 4, 8, 12; a pull box and a cabinet to their right. */
function marked(): Site {
  const box = addMark(fullSite(), newMark(fullSite(), 'pull-box', [[20, -3]]));
  return addMark(box, newMark(box, 'cabinet', [[24, 6]]));
}

const drawn = (): Site => leadIn(leadOut(marked(), 'L1'), 'C1');
const tail: Way = { kind: 'tail', loop: 'L1' };
const lead: Way = { kind: 'lead-in', circuit: 'C1' };

describe('leading out', () => {
  it('runs straight to the nearest pull box and on to the nearest cabinet, with the usual allowance', () => {
    const site = drawn();
    expect(site.loops[0]?.tail.route).toEqual({ to: 'm2', via: [], allowance: 1 });
    expect(site.circuits[0]?.leadIn.route).toEqual({ from: 'm2', to: 'm3', via: [], allowance: 2 });
    // From the corner cut at (0.9, −0.7) to (20, −3), and from there to (24, 6).
    expect(site.loops[0]?.tail.length).toBeCloseTo(Math.hypot(19.1, 2.3) + 1, 6);
    expect(site.circuits[0]?.leadIn.length).toBeCloseTo(Math.hypot(4, 9) + 2, 6);
  });

  it('changes nothing without a pull box or a second time', () => {
    const site = fullSite();
    expect(leadOut(site, 'L1')).toBe(site);
    expect(leadIn(site, 'C1')).toBe(site);
    const done = drawn();
    expect(leadOut(done, 'L1')).toBe(done);
    expect(leadIn(done, 'C1')).toBe(done);
    expect(updateTailRoute(done, 'L1', { to: 'none' })).toBe(done);
    expect(updateLeadInRoute(done, 'C1', { from: 'none' })).toBe(done);
  });

  it('ends when a length is typed', () => {
    const site = drawn();
    const typed = updateLoop(site, 'L1', { tail: typedTail(site.loops[0]!.tail, 6) });
    expect(typed.loops[0]?.tail).toEqual({ length: 6 });
    expect(updateLeadInPart(site, 'C1', 0, { length: 12 }).circuits[0]?.leadIn).toEqual({
      cable: 'k1',
      length: 12
    });
    expect(updateTailRoute(site, 'L1', undefined).loops[0]?.tail).toEqual({
      length: site.loops[0]?.tail.length
    });
    expect(updateLeadInRoute(site, 'C2', undefined)).toBe(site);
  });
});

describe('the points of a way', () => {
  it('are put in, moved and taken out, and the length follows', () => {
    const one = insertWayPoint(drawn(), lead, 0, [24, -3]);
    expect(one.circuits[0]?.leadIn.length).toBe(4 + 9 + 2);
    const moved = moveWayPoint(one, lead, 0, [20, 6]);
    expect(wayPath(moved, lead)).toEqual([[20, -3], [20, 6], [24, 6]]); // prettier-ignore
    expect(removeWayPoint(moved, lead, 0).circuits).toEqual(drawn().circuits);
    expect(moveWayPoint(one, lead, 3, [1, 1])).toBe(one);
  });

  it('make a square way across the loop and then along it, whatever its rotation', () => {
    const site = drawn();
    const square = setVia(site, tail, squareVia(site, tail));
    expect(courseOf(site, tail)).toBe('straight');
    expect(courseOf(square, tail)).toBe('square');
    expect(wayPath(square, tail)).toEqual([[0.9, -0.7], [20, -0.7], [20, -3]]); // prettier-ignore
    const turned = rotateThings(square, [{ kind: 'loop', id: 'L1' }, { kind: 'mark', id: 'm2' }], 90, [0, 0]); // prettier-ignore
    expect(courseOf(turned, tail)).toBe('square');
    expect(turned.loops[0]?.tail.route?.via).toEqual([[0.7, 20]]);
    expect(courseOf(moveWayPoint(square, tail, 0, [19, 0]), tail)).toBe('free');
  });
});

describe('a way whose ends move, go or are copied', () => {
  const withPoint = () => insertWayPoint(drawn(), tail, 0, [10, -3]);

  it('goes along with both its ends and stays with one', () => {
    const site = withPoint();
    const both = moveThings(site, [{ kind: 'loop', id: 'L1' }, { kind: 'mark', id: 'm2' }], [1, 2]); // prettier-ignore
    expect(both.loops[0]?.tail.route?.via).toEqual([[11, -1]]);
    const one = moveThings(site, [{ kind: 'loop', id: 'L1' }], [1, 2]);
    expect(one.loops[0]?.tail.route?.via).toEqual([[10, -3]]);
    const lone = insertWayPoint(site, lead, 0, [22, 0]);
    const marks = moveThings(lone, [{ kind: 'mark', id: 'm2' }, { kind: 'mark', id: 'm3' }], [1, 2]); // prettier-ignore
    expect(marks.circuits[0]?.leadIn.route?.via).toEqual([[23, 2]]);
  });

  it('is a typed length when its pull box is deleted', () => {
    const site = drawn();
    const next = removeThings(site, [{ kind: 'mark', id: 'm2' }]);
    expect(next.loops[0]?.tail).toEqual({ length: site.loops[0]?.tail.length });
    expect(next.circuits[0]?.leadIn).toEqual({ cable: 'k1', length: site.circuits[0]?.leadIn.length });
    expect(readSite(writeSite(next)).ok).toBe(true);
  });

  it('leads copies to the same pull box, straight, in the same document only', () => {
    const site = withPoint();
    const cut = extractThings(site, [{ kind: 'loop', id: 'L1' }]);
    const here = insertCopies(site, cut, [0, 4], site.marks).site;
    expect(here.loops.at(-1)?.tail.route).toEqual({ to: 'm2', via: [], allowance: 1 });
    expect(here.circuits.at(-1)?.leadIn.route).toEqual(site.circuits[0]?.leadIn.route);
    const other = insertCopies(emptySite(), cut, [0, 4], site.marks).site;
    expect(other.loops[0]?.tail).toEqual({ length: site.loops[0]?.tail.length });
    expect(other.circuits[0]?.leadIn).not.toHaveProperty('route');
    expect(readSite(writeSite(other)).ok).toBe(true);
  });

  it('leads copies to the copied pull box, with its points', () => {
    const site = withPoint();
    const things = [{ kind: 'loop', id: 'L1' }, { kind: 'mark', id: 'm2' }, { kind: 'mark', id: 'm3' }] as const; // prettier-ignore
    const { site: next } = insertCopies(site, extractThings(site, things), [0, 10], site.marks);
    expect(next.loops.at(-1)?.tail.route).toEqual({ to: 'm4', via: [[10, 7]], allowance: 1 });
    expect(next.circuits.at(-1)?.leadIn.route).toMatchObject({ from: 'm4', to: 'm5' });
  });

  it('a new loop is drawn to the pull box that is nearest to it', () => {
    const site = updateTailRoute(drawn(), 'L4', { to: 'm2', allowance: 0.5, via: [[15, 0]] });
    const second = addMark(site, newMark(site, 'pull-box', [[-9, 0]]));
    const loop = newLoop(second, { kind: 'circle', centre: [-5, 0], diameter: 2 });
    expect(loop.tail.route).toEqual({ to: 'm4', via: [], allowance: 0.5 });
  });
});

describe('own wires and cables', () => {
  const own = (): Site => {
    const site = fullSite();
    const wires = [{ id: 'w1', name: 'Mine', conductorDiameter: 1e-3, insulatedDiameter: 3e-3, insulationPermittivity: 2.3 }]; // prettier-ignore
    return updateLoop({ ...site, wires }, 'L1', { wire: 'w1' });
  };
  const cut = (site: Site) => extractThings(site, [{ kind: 'loop', id: 'L1' }]);

  it('come along with a loop into a site that does not have them', () => {
    const { site } = insertCopies(emptySite(), cut(own()), [0, 0]);
    expect(site.wires).toEqual(own().wires);
    expect(site.loops[0]?.wire).toBe('w1');
    expect(readSite(writeSite(site)).ok).toBe(true);
  });

  it('are not doubled, and get another id where theirs means something else', () => {
    const twice = insertCopies(own(), cut(own()), [0, 4]).site;
    expect(twice.wires).toHaveLength(1);
    const other: Site = { ...emptySite(), wires: [{ ...own().wires[0]!, conductorDiameter: 2e-3 }] };
    const { site } = insertCopies(other, cut(own()), [0, 0]);
    expect(site.wires.map(({ id, conductorDiameter }) => [id, conductorDiameter])).toEqual([['w1', 2e-3], ['w2', 1e-3]]); // prettier-ignore
    expect(site.loops[0]?.wire).toBe('w2');
  });

  it('do not change what a built-in name means in the other site', () => {
    const shadowing: Site = { ...own(), wires: [{ ...own().wires[0]!, id: 'awg14' }] };
    const { site } = insertCopies(emptySite(), cut(updateLoop(shadowing, 'L1', { wire: 'awg14' })), [0, 0]);
    expect(site.wires.map(({ id }) => id)).toEqual(['w1']);
    expect(site.loops[0]?.wire).toBe('w1');
  });
});

const SEED = 141_421;
const number = fc.oneof(
  { weight: 12, arbitrary: fc.integer({ min: -400, max: 400 }).map((value) => value / 13) },
  { weight: 1, arbitrary: fc.constantFrom(Number.NaN, Infinity, 1e9) }
);
const point: fc.Arbitrary<Point> = fc.tuple(number, number);
const mark = fc.constantFrom('m1', 'm2', 'm3', 'm4', 'none');
const loop = fc.constantFrom('L1', 'L2', 'L5', 'none');
const circuit = fc.constantFrom('C1', 'C2', 'C3');
const way: fc.Arbitrary<Way> = fc.oneof(
  loop.map((id): Way => ({ kind: 'tail', loop: id })),
  circuit.map((id): Way => ({ kind: 'lead-in', circuit: id }))
);
const index = fc.integer({ min: -1, max: 3 });
type Edit = (site: Site) => Site;
const things = fc.array(
  fc.oneof(
    loop.map((id) => ({ kind: 'loop' as const, id })),
    mark.map((id) => ({ kind: 'mark' as const, id }))
  ),
  { maxLength: 4 }
);
const edit: fc.Arbitrary<Edit> = fc.oneof(
  loop.map(
    (id): Edit =>
      (site) =>
        leadOut(site, id)
  ),
  circuit.map(
    (id): Edit =>
      (site) =>
        leadIn(site, id)
  ),
  fc.tuple(loop, mark, number).map(
    ([id, to, allowance]): Edit =>
      (site) =>
        updateTailRoute(site, id, { to, allowance })
  ),
  fc.tuple(circuit, mark, mark).map(
    ([id, from, to]): Edit =>
      (site) =>
        updateLeadInRoute(site, id, { from, to })
  ),
  fc.tuple(way, index, point).map(
    ([one, at, to]): Edit =>
      (site) =>
        insertWayPoint(site, one, at, to)
  ),
  fc.tuple(way, index, point).map(
    ([one, at, to]): Edit =>
      (site) =>
        moveWayPoint(site, one, at, to)
  ),
  fc.tuple(way, index).map(
    ([one, at]): Edit =>
      (site) =>
        removeWayPoint(site, one, at)
  ),
  way.map(
    (one): Edit =>
      (site) =>
        setVia(site, one, squareVia(site, one))
  ),
  fc.tuple(things, point).map(
    ([some, by]): Edit =>
      (site) =>
        moveThings(site, some, by)
  ),
  fc.tuple(things, point).map(
    ([some, by]): Edit =>
      (site) =>
        insertCopies(site, extractThings(site, some), by, site.marks).site
  ),
  fc.tuple(things, number, point).map(
    ([some, by, about]): Edit =>
      (site) =>
        rotateThings(site, some, by * 10, about)
  ),
  {
    weight: 1,
    arbitrary: mark.map(
      (id): Edit =>
        (site) =>
          removeThings(site, [{ kind: 'mark', id }])
    )
  }
);

describe('any sequence of drawing ways', () => {
  it('leaves a document that can be opened and says the length that is drawn', () => {
    let changes = 0;
    fc.assert(
      fc.property(fc.array(edit, { minLength: 5, maxLength: 30, size: 'max' }), (list) => {
        let site = drawn();
        for (const apply of list) {
          const next = followRoutes(apply(site));
          if (next === site) continue;
          changes += 1;
          const read = readSite(writeSite(next));
          expect(read.ok ? [] : read.problems.map(({ message }) => message)).toEqual([]);
          expect(read.ok && read.site.loops.map((each) => each.tail.length)).toEqual(
            next.loops.map((each) => each.tail.length)
          );
          site = next;
        }
      }),
      { seed: SEED, numRuns: 120 }
    );
    expect(changes).toBeGreaterThan(500);
  }, 60_000);
});
