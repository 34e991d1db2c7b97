import { describe, expect, it } from 'vitest';
import {
  alignThings,
  distributeThings,
  repeatAlongLane,
  setGaps,
  type Item,
  type Thing
} from '#plan/edits/index';
import type { Lane, Point, Site } from '#plan/schema';
import { centreOf, outlineOf } from '#plan/shapes/index';
import { fullSite } from './site';

/** Loops of 2 m at these centres; the first of `fixed` are locked. */
function row(centres: readonly Point[], fixed: readonly number[] = []) {
  const [first] = fullSite().loops;
  const loops = centres.map((centre, index) => ({
    ...first!,
    id: `L${index + 1}`,
    shape: { kind: 'rectangle', centre, width: 2, length: 2, rotation: 0, cornerCut: 0 } as const
  }));
  const site: Site = { ...fullSite(), loops, circuits: [], readings: [] };
  const items = loops.map(({ id, shape }, index): Item => ({
    thing: { kind: 'loop', id },
    outline: outlineOf(shape),
    anchor: shape.centre,
    isFixed: fixed.includes(index)
  }));
  return { site, items };
}

const centres = (site: Site): Point[] =>
  site.loops.map(({ shape }) => {
    const [x, y] = centreOf(shape);
    return [Math.round(x * 1e6) / 1e6 + 0, Math.round(y * 1e6) / 1e6 + 0];
  });

const anchorOf = (site: Site, { id }: Thing): Point | null => {
  const loop = site.loops.find((each) => each.id === id);
  return loop ? centreOf(loop.shape) : null;
};

describe('aligning', () => {
  it.each([
    ['left', [[0, 0], [0, 4]]],
    ['centre', [[1.5, 0], [1.5, 4]]],
    ['right', [[3, 0], [3, 4]]],
    ['bottom', [[0, 0], [3, 0]]],
    ['middle', [[0, 2], [3, 2]]],
    ['top', [[0, 4], [3, 4]]]
  ] as const)('%s', (how, expected) => {
    const { site, items } = row([[0, 0], [3, 4]]); // prettier-ignore
    expect(centres(alignThings(site, items, how))).toEqual(expected);
  }); // prettier-ignore

  it('goes by what is locked, which stays', () => {
    const { site, items } = row([[0, 0], [3, 4], [7, 9]], [1]); // prettier-ignore
    expect(centres(alignThings(site, items, 'left'))).toEqual([[3, 0], [3, 4], [3, 9]]); // prettier-ignore
  });
});

describe('equal gaps', () => {
  it('keep the outer two and the order', () => {
    const { site, items } = row([[10, 0], [0, 0], [1, 0]]); // prettier-ignore
    expect(centres(distributeThings(site, items, 'x'))).toEqual([[10, 0], [0, 0], [5, 0]]); // prettier-ignore
  });

  it('run from one locked thing to the next', () => {
    const { site, items } = row([[0, 0], [1, 0], [6, 0], [7, 0], [14, 0]], [2]); // prettier-ignore
    expect(centres(distributeThings(site, items, 'x')).map(([x]) => x)).toEqual([0, 3, 6, 10, 14]);
  });

  it('want three things', () => {
    const { site, items } = row([[0, 0], [3, 0]]); // prettier-ignore
    expect(distributeThings(site, items, 'x')).toBe(site);
  });
});

describe('an exact gap', () => {
  it('is between the edges that face each other, from the first on', () => {
    const { site, items } = row([[0, 0], [0, 7], [0, 2.5]]); // prettier-ignore
    expect(centres(setGaps(site, items, 'y', 1.2)).map(([, y]) => y)).toEqual([0, 6.4, 3.2]);
  });

  it('lines up on both sides of what is locked', () => {
    const { site, items } = row([[0, 0], [5, 0], [6, 0]], [1]); // prettier-ignore
    expect(centres(setGaps(site, items, 'x', 1)).map(([x]) => x)).toEqual([2, 5, 8]);
  });

  it('begins anew behind each thing that is locked', () => {
    const { site, items } = row([[0, 0], [5, 0], [20, 0]], [0, 1]); // prettier-ignore
    expect(centres(setGaps(site, items, 'x', 1)).map(([x]) => x)).toEqual([0, 5, 8]);
  });
});

/** North for ten metres, then east. */
const BENT: Lane = { id: 'lane9', name: '', centreline: [[0, 0], [0, 10], [30, 10]], width: 3.5 }; // prettier-ignore

describe('along a lane', () => {
  it('equal gaps follow a corner, beside the middle as far as before', () => {
    const { site, items } = row([[0.5, 2], [0.5, 4], [18, 9.5]]); // prettier-ignore
    const next = distributeThings({ ...site, lanes: [BENT] }, items, BENT);
    // Stations 2, 4 and 28: the middle one goes to 15, five metres behind the corner, half a metre to the right.
    expect(centres(next)).toEqual([[0.5, 2], [5, 9.5], [18, 9.5]]); // prettier-ignore
    expect(next.loops[1]?.shape).toMatchObject({ rotation: -90 });
  });

  it('repeats at a pitch, turns with the lane and ends where it ends', () => {
    const { site } = row([[0, 4]]); // prettier-ignore
    const with1 = { ...site, lanes: [BENT] };
    const things: Thing[] = [{ kind: 'loop', id: 'L1' }];
    const repeated = repeatAlongLane(with1, { things, lane: BENT, count: 5, pitch: 10, anchorOf });
    expect(repeated.made).toBe(3);
    expect(centres(repeated.site)).toEqual([[0, 4], [4, 10], [14, 10], [24, 10]]); // prettier-ignore
    expect(repeated.site.loops.map(({ shape }) => 'rotation' in shape && shape.rotation)).toEqual([
      0, -90, -90, -90
    ]);
    expect(repeated.things).toHaveLength(3);
  });

  it('repeats against the direction of travel as far as the lane begins', () => {
    const { site } = row([[0, 8]]); // prettier-ignore
    const things: Thing[] = [{ kind: 'loop', id: 'L1' }];
    const repeated = repeatAlongLane(site, { things, lane: BENT, count: 5, pitch: -5, anchorOf });
    expect(centres(repeated.site)).toEqual([[0, 8], [0, 3]]); // prettier-ignore
  });

  it('turns with a slight bend too, to its own side', () => {
    const { site } = row([[4, 0.5]]); // prettier-ignore
    const [c, s] = [Math.cos(Math.PI / 9), Math.sin(Math.PI / 9)];
    const lane: Lane = { ...BENT, centreline: [[0, 0], [10, 0], [10 + 20 * c, 20 * s]] }; // prettier-ignore
    const things: Thing[] = [{ kind: 'loop', id: 'L1' }];
    const { site: next } = repeatAlongLane(site, { things, lane, count: 1, pitch: 10, anchorOf });
    // Four metres behind the bend of 20°, and half a metre to the left of the middle there.
    const [, [x, y] = [0, 0]] = centres(next);
    expect(x).toBeCloseTo(10 + 4 * c - 0.5 * s, 4);
    expect(y).toBeCloseTo(4 * s + 0.5 * c, 4);
    const turned = next.loops[1]?.shape;
    expect(turned && 'rotation' in turned ? turned.rotation : NaN).toBeCloseTo(20, 6);
  });

  it('wires each copy as the original is, on a channel of its own', () => {
    const site = fullSite();
    const lane: Lane = { ...BENT, centreline: [[0, -5], [0, 60]] }; // prettier-ignore
    const things: Thing[] = [{ kind: 'loop', id: 'L1' }, { kind: 'loop', id: 'L2' }]; // prettier-ignore
    const { site: next } = repeatAlongLane(site, { things, lane, count: 2, pitch: 8, anchorOf });
    const strings = next.circuits.map((circuit) =>
      circuit.strings.map((each) => each.map(({ loop }) => loop))
    );
    expect(strings).toEqual([[['L1', 'L2']], [['L3']], [['L5', 'L6']], [['L7', 'L8']]]);
    expect(next.circuits[2]?.strings[0]?.map(({ reversed }) => reversed)).toEqual([false, true]);
    const places = next.circuits.map(({ channel }) => `${channel?.unit} ${channel?.number}`);
    expect(new Set(places).size).toBe(4);
  });
});
