import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  arcTo,
  bentBeside,
  bentLine,
  chordCount,
  CHORD_ERROR,
  fittedRadii,
  largestRadius,
  turnAt,
  type Bent
} from '#plan/geometry/bends';
import { distance } from '#plan/geometry/points';
import { distanceToSegment } from '#plan/geometry/segments';
import type { Point } from '#plan/schema';

const runOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, point, index) => sum + distance(points[index]!, point), 0);

const awayFrom = (line: readonly Point[], at: Point): number =>
  Math.min(...line.slice(1).map((to, index) => distanceToSegment(at, { from: line[index]!, to })));

/** Two sides of the same length that turn by `turn` degrees at the origin, rounded with the radius. */
function corner(side: number, turn: number, radius: number): Bent {
  const angle = (turn * Math.PI) / 180;
  return { points: [[-side, 0], [0, 0], [side * Math.cos(angle), side * Math.sin(angle)]], radii: [0, radius, 0] }; // prettier-ignore
}

const turns = fc.double({ min: 2, max: 170, noNaN: true }).chain((turn) => fc.constantFrom(turn, -turn));
const radii = fc.double({ min: 0.5, max: 200, noNaN: true });

describe('a corner that is rounded', () => {
  it('stands off its arc by no more than the error, and by the sagitta of a chord', () => {
    fc.assert(
      fc.property(radii, turns, (radius, turn) => {
        const angle = (Math.abs(turn) * Math.PI) / 180;
        const side = radius * Math.tan(angle / 2) + 1;
        const line = bentLine(corner(side, turn, radius));
        const arc = line.slice(1, -1);
        const pieces = arc.length - 1;
        const sagitta = radius * (1 - Math.cos(angle / pieces / 2));
        expect(sagitta).toBeLessThanOrEqual(CHORD_ERROR * (1 + 1e-9));
        // The middle of the circle lies square to the first side, where the arc leaves it.
        const centre: Point = [-(side - 1), Math.sign(turn) * radius];
        for (const at of arc) expect(distance(at, centre)).toBeCloseTo(radius, 6);
        for (const [index, to] of arc.slice(1).entries()) {
          const from = arc[index]!;
          const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
          expect(radius - distance(middle, centre)).toBeCloseTo(sagitta, 6);
        }
      })
    );
  });

  it('is as long as the arc, r·θ, less what chords are shorter than arcs', () => {
    fc.assert(
      fc.property(radii, turns, (radius, turn) => {
        const angle = (Math.abs(turn) * Math.PI) / 180;
        const side = radius * Math.tan(angle / 2) + 1;
        const run = runOf(bentLine(corner(side, turn, radius))) - 2;
        expect(run).toBeLessThanOrEqual(radius * angle + 1e-6);
        // A chord that stands off by s is shorter than its arc by about 8·s²/(3·chord).
        const pieces = chordCount(radius, angle);
        const chord = 2 * radius * Math.sin(angle / pieces / 2);
        expect(radius * angle - run).toBeLessThanOrEqual((pieces * 3 * CHORD_ERROR ** 2) / chord + 1e-6);
      })
    );
  });

  it('uses no more chords than it needs', () => {
    // r = 10 m, s = 5 mm: φ = 2·acos(1 − 0.0005) = 3.6240°; a quarter turn takes 24.83 of them.
    expect(chordCount(10, Math.PI / 2)).toBe(25);
    // r = 100 m: φ = 1.1459°, 78.54 of them.
    expect(chordCount(100, Math.PI / 2)).toBe(79);
  });

  it('keeps its ends and touches both sides', () => {
    const line = bentLine(corner(20, 90, 8));
    expect(line[0]).toEqual([-20, 0]);
    expect(distance(line[1]!, [-8, 0])).toBeLessThan(1e-9);
    expect(line.at(-2)![0]).toBeCloseTo(0, 9);
    expect(line.at(-2)![1]).toBeCloseTo(8, 9);
    expect(line.at(-1)![1]).toBeCloseTo(20, 9);
  });
});

describe('the room that sides leave', () => {
  it('is the shorter side over tan(θ/2), less what the neighbour takes', () => {
    const bent: Bent = { points: [[0, 0], [10, 0], [10, 12], [30, 12]], radii: [0, 4, 5, 0] }; // prettier-ignore
    expect(largestRadius(bent, 1)).toBeCloseTo(7, 9);
    expect(largestRadius(bent, 2)).toBeCloseTo(8, 9);
    expect(largestRadius(bent, 0)).toBe(0);
    expect(largestRadius(bent, 3)).toBe(0);
    expect(fittedRadii(bent)).toEqual([0, 4, 5, 0]);
  });

  it('is shared by two arcs that want more of a side than there is', () => {
    const bent: Bent = { points: [[0, 0], [50, 0], [50, 12], [100, 12]], radii: [0, 20, 10, 0] }; // prettier-ignore
    expect(fittedRadii(bent)[1]).toBeCloseTo(8, 9);
    expect(fittedRadii(bent)[2]).toBeCloseTo(4, 9);
  });

  it('is never exceeded, and nothing runs backwards', () => {
    const points = fc.array(fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true })), { minLength: 3, maxLength: 6 }); // prettier-ignore
    fc.assert(
      fc.property(points, fc.array(radii, { minLength: 6, maxLength: 6 }), (drawn, wanted) => {
        fc.pre(drawn.every((at, k) => k === 0 || distance(at, drawn[k - 1]!) > 0.1));
        const bent: Bent = { points: drawn, radii: wanted.slice(0, drawn.length) };
        const fitted = fittedRadii(bent);
        fitted.forEach((radius, k) => expect(radius).toBeLessThanOrEqual(bent.radii[k]! + 1e-12));
        const taken = fitted.map((radius, k) => radius * Math.tan(Math.abs(turnAt(drawn, k)) / 2));
        for (let side = 0; side + 1 < drawn.length; side++)
          expect(taken[side]! + taken[side + 1]!).toBeLessThanOrEqual(
            distance(drawn[side]!, drawn[side + 1]!) * (1 + 1e-6)
          );
        // It cuts corners and adds no way.
        expect(runOf(bentLine(bent))).toBeLessThanOrEqual(runOf(drawn) + 1e-6);
      })
    );
  });
});

describe('a line beside another', () => {
  it('has arcs about the same centres: every point is the offset away from the other', () => {
    fc.assert(
      fc.property(turns, fc.double({ min: -4, max: 4, noNaN: true }), (turn, offset) => {
        const radius = 12;
        const bent = corner(radius * Math.tan((Math.abs(turn) * Math.PI) / 360) + 5, turn, radius);
        const beside = bentBeside(bent, offset);
        expect(beside).not.toBeNull();
        expect(beside!.radii[1]).toBeCloseTo(radius - offset * Math.sign(turn), 9);
        const line = bentLine(bent);
        for (const at of bentLine(beside!))
          expect(Math.abs(awayFrom(line, at) - Math.abs(offset))).toBeLessThan(2 * CHORD_ERROR);
      })
    );
  });

  it('is refused where the bend is tighter than the offset, and where a side would turn over', () => {
    expect(bentBeside(corner(20, 90, 3), 3.5)).toBeNull();
    expect(bentBeside(corner(20, 90, 3), -3.5)).not.toBeNull();
    const step: Bent = { points: [[0, 0], [10, 0], [10, 1], [20, 1]], radii: [0, 0, 0, 0] }; // prettier-ignore
    expect(bentBeside(step, 2)).not.toBeNull();
    const pocket: Bent = { points: [[0, 0], [10, 0], [10, 1], [0, 1]], radii: [0, 0, 0, 0] }; // prettier-ignore
    expect(bentBeside(pocket, 2)).toBeNull();
  });
});

describe('an arc that goes on', () => {
  it('leaves in the direction of the last piece, keeps one radius and ends where it should', () => {
    const angles = fc.double({ min: -160, max: 160, noNaN: true }).filter((angle) => Math.abs(angle) > 1);
    fc.assert(
      fc.property(angles, fc.double({ min: 1, max: 60, noNaN: true }), (away, chord) => {
        const angle = (away * Math.PI) / 180;
        const to: Point = [chord * Math.cos(angle), chord * Math.sin(angle)];
        const arc = arcTo([0, 0], [1, 0], to)!;
        // The inscribed angle: a chord that turns away by α belongs to a radius of c/(2·sin α).
        expect(arc.radius).toBeCloseTo(chord / (2 * Math.abs(Math.sin(angle))), 6);
        const points: Point[] = [[-5, 0], ...arc.corners, to];
        const line = bentLine({ points, radii: points.map((_, k) => (k > 0 && k <= arc.corners.length ? arc.radius : 0)) }); // prettier-ignore
        const centre: Point = [0, Math.sign(away) * arc.radius];
        for (const at of line.slice(1)) expect(distance(at, centre)).toBeCloseTo(arc.radius, 3);
        expect(turnAt(points, 1)).toBeCloseTo((2 * angle) / arc.corners.length, 9);
      })
    );
  });

  it('is straight ahead without a corner, and nothing leads straight back', () => {
    expect(arcTo([0, 0], [1, 0], [7, 0])).toEqual({ corners: [], radius: 0 });
    expect(arcTo([0, 0], [1, 0], [-7, 0.1])).toBeNull();
  });
});
