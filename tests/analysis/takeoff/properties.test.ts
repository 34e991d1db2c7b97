/** What holds of every drawing: lines add up to items, a loop takes its lines with it, and where it lies changes nothing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { windingOf } from '#analysis/electrical/winding-of';
import { takeoffOf } from '#analysis/takeoff/takeoff';
import type { Takeoff } from '#analysis/takeoff/results';
import { wireOf } from '#plan/catalogue/wires';
import { mirrorThings, moveThings, removeThings, rotateThings, type Thing } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { circuit, loop, siteOf, unit } from '../support/sites';

const RUNS = { numRuns: 60, seed: 314_159 };
const PITCH = 12;

const size = fc.integer({ min: 8, max: 40 }).map((tenths) => tenths / 10);
const small = fc.integer({ min: 0, max: 90 }).map((part) => part / 10);

/** A loop about its place on a wide lattice, so that nothing touches; its tail drawn, typed or not there. */
const drawn = fc.record({
  kind: fc.constantFrom('rectangle', 'cut', 'quadrupole', 'diagonal', 'circle', 'polygon'),
  width: size,
  length: size,
  rotation: fc.integer({ min: -180, max: 180 }),
  turns: fc.integer({ min: 1, max: 6 }),
  wire: fc.constantFrom('awg12', 'awg14', 'mm2-2.5'),
  depth: fc.constantFrom(0.04, 0.05, 0.08),
  tail: fc.constantFrom('none', 'typed', 'drawn'),
  bend: fc.tuple(small, small)
});
type Drawn = typeof drawn extends fc.Arbitrary<infer T> ? T : never;

const shapeOf = ({ kind, width, length, rotation }: Drawn, [x, y]: readonly [number, number]): object => {
  const at = { centre: [x, y], width, length, rotation };
  if (kind === 'cut') return { kind: 'rectangle', ...at, cornerCut: 0.2 };
  if (kind === 'circle') return { kind, centre: [x, y], diameter: width };
  if (kind !== 'polygon') return { kind, ...at };
  return { kind, points: [[x, y], [x + width, y], [x + width, y + length], [x + width / 2, y + length + 0.5], [x, y + length]] }; // prettier-ignore
};

const siteWith = (all: readonly Drawn[], isTight: boolean): Site => {
  const marks: object[] = [{ id: 'cab', kind: 'cabinet', points: [[-9, -9]] }, { id: 'con', kind: 'conduit', points: [[-9, -9], [-3, -7]] }]; // prettier-ignore
  const loops = all.map((each, k) => {
    const pitch = isTight ? each.width : PITCH;
    const place = [(k % 3) * pitch, Math.floor(k / 3) * PITCH] as const;
    const shape = isTight
      ? { kind: 'rectangle', centre: place, width: each.width, length: 2, rotation: 0 }
      : shapeOf(each, place);
    const to = `box${k}`;
    if (each.tail === 'drawn')
      marks.push({ id: to, kind: 'pull-box', points: [[place[0] + 5.3, place[1] - 4.1]] });
    const via = [[place[0] + 3.1 + each.bend[0] / 9, place[1] - 2.7 - each.bend[1] / 20]];
    const tail = { none: { length: 0 }, typed: { length: 3.3 }, drawn: { length: 0, route: { to, via, allowance: 0.7 } } }[each.tail]; // prettier-ignore
    return loop(`L${k + 1}`, shape as never, {
      turns: each.turns,
      wire: each.wire,
      slot: { depth: each.depth, width: 0.008 },
      tail
    });
  });
  const circuits = all.map((_, k) => circuit(`C${k + 1}`, [`L${k + 1}`], { channel: null }));
  return siteOf({ marks, loops, circuits, units: [unit('U1')] });
};
const loopsApart = fc.array(drawn, { minLength: 1, maxLength: 6 }).map((all) => siteWith(all, false));
/** Rows of equal width side by side, so that each shares a slot with the next. */
const loopsTogether = fc
  .tuple(fc.array(drawn, { minLength: 2, maxLength: 6 }), size)
  .map(([all, width]) => siteWith(all.map((each) => ({ ...each, width })), true)); // prettier-ignore

const amounts = ({ lines }: Takeoff): ReadonlyMap<string, number> =>
  new Map(lines.map(({ id, amount }) => [id, amount]));

const thingsOf = (site: Site): readonly Thing[] => [
  ...site.loops.map(({ id }): Thing => ({ kind: 'loop', id })),
  ...site.marks.map(({ id }): Thing => ({ kind: 'mark', id }))
];

const isSame = (a: Takeoff, b: Takeoff): void => {
  const [before, after] = [amounts(a), amounts(b)];
  expect([...after.keys()].sort()).toEqual([...before.keys()].sort());
  // places are kept to a tenth of a micrometre, and pieces are counted whole
  for (const [id, amount] of before) expect(Math.abs(after.get(id)! - amount)).toBeLessThan(5e-6);
};

describe('a take-off', () => {
  it('has as much wire in the slot as the electrical model has', () => {
    fc.assert(
      fc.property(loopsApart, (site) => {
        const found = amounts(takeoffOf(site));
        for (const each of site.loops) {
          const { conductorDiameter, insulatedDiameter } = wireOf(each.wire, site)!;
          const winding = windingOf(each, { conductor: conductorDiameter, insulated: insulatedDiameter });
          expect(found.get(`${each.id}/loop wire`)!).toBeCloseTo(winding.wireLength, 9);
        }
      }),
      RUNS
    );
  });

  it('adds up: the items are the sums of their lines, the hours those of the crew', () => {
    fc.assert(
      fc.property(fc.oneof(loopsApart, loopsTogether), (site) => {
        const { lines, items, hours } = takeoffOf(site);
        expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
        for (const each of items) {
          const own = lines.filter(({ item }) => item === each.item);
          expect(each.amount).toBeCloseTo(own.reduce((sum, line) => sum + line.amount, 0), 9); // prettier-ignore
          expect(each.gross).toBeCloseTo(own.reduce((sum, line) => sum + line.amount * (1 + line.waste), 0), 9); // prettier-ignore
          expect(new Set(own.map(({ unit: inUnit }) => inUnit))).toEqual(new Set([each.unit]));
        }
        expect(items.reduce((sum, each) => (each.item === 'crew' ? sum + each.amount : sum), 0)).toBeCloseTo(hours, 9); // prettier-ignore
        expect(new Set(items.map(({ item }) => item))).toEqual(new Set(lines.map(({ item }) => item)));
      }),
      RUNS
    );
  });

  it('loses exactly the lines of a loop that is removed, and of its circuit', () => {
    fc.assert(
      fc.property(loopsApart, fc.nat(5), (site, pick) => {
        const gone = pick % site.loops.length;
        const [id, circuitId] = [`L${gone + 1}`, `C${gone + 1}`];
        const left = takeoffOf(removeThings(site, [{ kind: 'loop', id }]));
        const kept = takeoffOf(site).lines.filter(({ subject, what }) => {
          if (subject === id || subject === circuitId) return false;
          return what !== 'setting up' || site.loops.length > 1;
        });
        expect(left.lines).toEqual(kept);
      }),
      RUNS
    );
  });

  it('does not care where the site lies, which way it faces, or that it is mirrored', () => {
    const place = fc.integer({ min: -900, max: 900 }).map((part) => part / 7);
    fc.assert(
      fc.property(fc.oneof(loopsApart, loopsTogether), place, place, fc.integer({ min: 1, max: 359 }), (site, x, y, degrees) => {
        const before = takeoffOf(site);
        const things = thingsOf(site);
        isSame(before, takeoffOf(moveThings(site, things, [x, y])));
        isSame(before, takeoffOf(rotateThings(site, things, degrees, [x, y])));
        isSame(before, takeoffOf(mirrorThings(site, things, { through: [x, y], angle: degrees })));
      }),
      RUNS
    ); // prettier-ignore
  });

  it('saws less, never more, for loops that share slots than for each by itself', () => {
    fc.assert(
      fc.property(loopsTogether, (site) => {
        const sawn = (of: Site): number =>
          takeoffOf(of).lines.reduce((sum, { what, amount }) => (what === 'loop saw cut' ? sum + amount : sum), 0);
        const alone = site.loops.reduce((sum, each) => sum + sawn({ ...site, loops: [each] }), 0);
        // of three in a row each shares 2 m with the next
        const shared = site.loops.length - Math.ceil(site.loops.length / 3);
        expect(sawn(site)).toBeCloseTo(alone - 2 * shared, 9);
      }),
      RUNS
    ); // prettier-ignore
  });
});
