import { describe, expect, it } from 'vitest';
import { exitOf, followRoutes, leadInPath, nearestMark, tailPath } from '#plan/lead-out';
import { BOUNDS } from '#plan/bounds';
import { readSite, writeSite } from '#plan/read';
import type { Site } from '#plan/schema';

/** A loop of 2 × 2 m about the origin, a pull box 4 m to its right, a cabinet 3 m up and 4 m on from there. */
function site(
  change: { readonly via?: object; readonly allowance?: number; readonly length?: number } = {}
): Site {
  const reading = readSite(
    JSON.stringify({
      format: 'kerfline-site',
      version: 1,
      marks: [
        { id: 'm1', kind: 'pull-box', points: [[5, 1]] },
        { id: 'm2', kind: 'cabinet', points: [[9, 4]] }
      ],
      loops: [
        {
          id: 'L1',
          turns: 3,
          wire: 'awg14',
          slot: { depth: 0.05, width: 0.008 },
          tail: {
            length: change.length ?? 99,
            route: { to: 'm1', via: change.via ?? [], allowance: change.allowance ?? 0 }
          },
          shape: { kind: 'rectangle', centre: [0, 0], width: 2, length: 2 }
        }
      ],
      circuits: [
        {
          id: 'C1',
          strings: [[{ loop: 'L1' }]],
          leadIn: { cable: 'pair-14', length: 1, route: { from: 'm1', to: 'm2', allowance: 2 } }
        }
      ]
    })
  );
  if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
  return reading.site;
}

describe('a drawn tail', () => {
  it('runs from the corner that is nearest to its next point', () => {
    expect(tailPath(site(), site().loops[0]!)).toEqual([[1, 1], [5, 1]]); // prettier-ignore
    const around = site({ via: [[1, -5], [5, -5]] }); // prettier-ignore
    expect(tailPath(around, around.loops[0]!)).toEqual([[1, -1], [1, -5], [5, -5], [5, 1]]); // prettier-ignore
  });

  it('leaves a round loop where it faces its next point', () => {
    const [x, y] = exitOf({ kind: 'circle', centre: [0, 0], diameter: 2 }, [3, 4]);
    expect(x).toBeCloseTo(0.6, 12);
    expect(y).toBeCloseTo(0.8, 12);
    expect(exitOf({ kind: 'circle', centre: [0, 0], diameter: 2 }, [0, 0])).toEqual([1, 0]);
  });

  it('is as long as it is drawn, with its allowance, also when the file says otherwise', () => {
    expect(site({ length: 99 }).loops[0]?.tail.length).toBe(4);
    expect(site({ allowance: 1.5 }).loops[0]?.tail.length).toBe(5.5);
    expect(site({ via: [[1, -5], [5, -5]] }).loops[0]?.tail.length).toBe(4 + 4 + 6); // prettier-ignore
  });

  it('is a typed length where its pull box is not there', () => {
    const bare: Site = { ...site(), marks: [] };
    expect(tailPath(bare, bare.loops[0]!)).toBeNull();
    expect(followRoutes(bare)).toBe(bare);
  });

  it('is never longer than a document may hold', () => {
    const far = site();
    const marks = far.marks.map((mark) => ({ ...mark, points: [[15_000, 1]] as const }));
    const next = followRoutes({ ...far, marks });
    expect(next.loops[0]?.tail.length).toBe(BOUNDS.tail.max);
    expect(readSite(writeSite(next)).ok).toBe(true);
  });
});

describe('a drawn lead-in', () => {
  it('runs from the pull box to the cabinet, 3–4–5, with its allowance', () => {
    const { circuits } = site();
    expect(leadInPath(site(), circuits[0]!)).toEqual([[5, 1], [9, 4]]); // prettier-ignore
    expect(circuits[0]?.leadIn.length).toBe(5 + 2);
  });
});

describe('following', () => {
  it('leaves a site alone that is right already', () => {
    const right = site();
    expect(followRoutes(right)).toBe(right);
    const read = readSite(writeSite(right));
    expect(read.ok && read.site).toEqual(right);
  });

  it('takes the number along when the drawing moves', () => {
    const moved = site();
    const marks = moved.marks.map((mark) =>
      mark.id === 'm1' ? { ...mark, points: [[8, 1]] as const } : mark
    );
    const next = followRoutes({ ...moved, marks });
    expect(next.loops[0]?.tail.length).toBe(7);
    expect(next.circuits[0]?.leadIn.length).toBeCloseTo(Math.hypot(1, 3) + 2, 6);
  });
});

it('the nearest mark is of the kind asked for', () => {
  expect(nearestMark(site(), 'cabinet', [5, 1])?.id).toBe('m2');
  expect(nearestMark(site(), 'gate', [5, 1])).toBeUndefined();
});
