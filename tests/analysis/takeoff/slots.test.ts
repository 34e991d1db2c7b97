/** Slots of every shape, and slots that several loops lie in: sawn once. Lengths worked out by hand. */
import { describe, expect, it } from 'vitest';
import { sawnOn } from '#analysis/takeoff/cuts';
import { circuit, loop, siteOf, square } from '../support/sites';
import { amount, box, drawnTail, linesOf, taken, total, WIRE, near } from './lines';

const sawn = (fields: object) => sawnOn(siteOf({ ...fields }));
const ends = ({ pieces }: ReturnType<typeof sawn>): number =>
  pieces.reduce((sum, { overcut }) => sum + (overcut.from > 0 ? 1 : 0) + (overcut.to > 0 ? 1 : 0), 0);
const shape = (kind: string, over: object = {}): Readonly<Record<string, unknown>> => ({
  kind,
  centre: [0, 0],
  ...over
});

describe('a quadrupole of 1.8 m × 6 m, two turns', () => {
  const loops = [loop('L1', shape('quadrupole', { width: 1.8, length: 6 }), { turns: 2 })];
  const { pieces } = sawn({ loops });

  it('is five cuts: two sides of 6 m, two of 1.8 m in one go, and the middle', () => {
    const kinds = pieces.map(({ kind, length }) => `${kind} ${length.toFixed(3)}`).sort();
    expect(kinds).toEqual(['shared side 6.000', 'side 1.800', 'side 1.800', 'side 6.000', 'side 6.000']);
  });

  it('runs past ten ends: the short sides do not end in the middle', () => {
    expect(ends(sawn({ loops }))).toBe(10);
  });

  // (15.6 + 6) m of slot; 2 · (15.6 + 12) m of wire
  it('is filled but for its wires, four of them in the middle', () => {
    const found = taken({ loops });
    expect(linesOf(found, 'L1', 'sealant')[0]!.amount).toBeCloseTo(21.6 * 0.0004 - 55.2 * WIRE, 12);
    expect(amount(found, 'L1', 'loop wire')).toBeCloseTo(55.2, 9);
  });

  it('has six holes: four corners, and where the middle meets the short sides', () => {
    const cored = taken({ loops, estimate: { coreHoles: true } });
    expect(amount(cored, 'L1', 'core hole')).toBe(6);
    // 4 corners with two slots each, 2 with three: 14 strips of 19 mm · 8 mm in holes of 38 mm
    const hole = (Math.PI * 0.038 ** 2) / 4;
    const wanted = (6 * hole - 14 * 0.019 * 0.008) * 0.05;
    expect(linesOf(cored, 'L1', 'sealant')[1]!.amount).toBeCloseTo(wanted, 12);
  });
});

describe('a diagonal of 3 m × 4 m', () => {
  const loops = [loop('L1', shape('diagonal', { width: 3, length: 4 }), { turns: 1 })];

  it('is five cuts of 14 m and 5 m together, the shared one across', () => {
    const { pieces } = sawn({ loops });
    expect(pieces.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(19, 9);
    expect(pieces.filter(({ kind }) => kind === 'shared side').map(({ length }) => length)).toEqual([
      near(5)
    ]);
    expect(ends(sawn({ loops }))).toBe(10);
  });
});

describe('corner cuts', () => {
  it('of 0.3 m leave sides of 1.2 m, are 0.3 · √2 m long, and every end of the eight cuts runs on', () => {
    const loops = [loop('L1', { ...square(0, 0), cornerCut: 0.3 })];
    const { pieces } = sawn({ loops });
    for (const { kind, length } of pieces)
      expect(length).toBeCloseTo(kind === 'side' ? 1.2 : 0.3 * Math.SQRT2, 9);
    expect(pieces.filter(({ kind }) => kind === 'corner cut')).toHaveLength(4);
    expect(ends(sawn({ loops }))).toBe(16);
  });
});

describe('other shapes', () => {
  it('saw a polygon’s side in one go where a point lies in the middle of it', () => {
    const points = [[0, 0], [1, 0], [3, 0], [3, 2], [0, 2]]; // prettier-ignore
    const { pieces } = sawn({ loops: [loop('L1', { kind: 'polygon', points })] });
    expect(pieces.map(({ length }) => length).sort()).toEqual([2, 2, 3, 3].map((length) => near(length))); // prettier-ignore
  });

  it('do not take the sides of a polygon of 36 for one slot, though they hardly bend', () => {
    const points = Array.from({ length: 36 }, (_, k) => [Math.cos((k * Math.PI) / 18), Math.sin((k * Math.PI) / 18)]); // prettier-ignore
    const { pieces } = sawn({ loops: [loop('L1', { kind: 'polygon', points })] });
    expect(pieces).toHaveLength(36);
    expect(pieces.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(72 * Math.sin(Math.PI / 36), 9);
  });

  // at a bend of 2° a blade of 122 mm past the end is 4.3 mm beside the next side: within the slot of 8 mm
  it('run past no end where the bend is so slight that the blade stays in the slot', () => {
    const points = Array.from({ length: 180 }, (_, k) => [3 * Math.cos((k * Math.PI) / 90), 3 * Math.sin((k * Math.PI) / 90)]); // prettier-ignore
    expect(ends(sawn({ loops: [loop('L1', { kind: 'polygon', points })] }))).toBe(0);
  });

  // at 10° it is 21 mm beside it, past the edge of the slot
  it('run past every end of a polygon of 36', () => {
    const points = Array.from({ length: 36 }, (_, k) => [3 * Math.cos((k * Math.PI) / 18), 3 * Math.sin((k * Math.PI) / 18)]); // prettier-ignore
    expect(ends(sawn({ loops: [loop('L1', { kind: 'polygon', points })] }))).toBe(72);
  });

  it('saw a circle round, with no end; its home run begins with one', () => {
    const round = shape('circle', { diameter: 2 });
    expect(ends(sawn({ loops: [loop('L1', round)] }))).toBe(0);
    const drawn = sawn({
      marks: [box('m1', [5, 0])],
      loops: [loop('L1', round, drawnTail('m1'))]
    });
    expect(drawn.pieces.map(({ kind, length }) => [kind, length])).toEqual([
      ['home run', near(4)],
      ['round', near(2 * Math.PI)]
    ]);
    expect(ends(drawn)).toBe(1);
  });

  it('leave out a loop that cannot be wound', () => {
    const site = siteOf({ loops: [loop('L1', square(0, 0)), loop('L2', square(5, 0))] });
    const broken = { ...site, loops: site.loops.map((each) => (each.id === 'L2' ? { ...each, wire: 'gone' } : each)) }; // prettier-ignore
    expect(sawnOn(broken).wound.map(({ loop: { id } }) => id)).toEqual(['L1']);
  });
});

/**
 * Two squares of 1.8 m side by side, at 0 and at 1.8 m, with one slot between them: 14.4 m drawn, 12.6 m sawn. L1 wants
 * 50 mm × 8 mm and L2 80 mm × 10 mm, so the slot between is 80 mm × 10 mm, and counts with L1, which was drawn first.
 */
describe('two loops that share a slot', () => {
  const loops = [
    loop('L1', square(0, 0)),
    loop('L2', square(1.8, 0), { slot: { depth: 0.08, width: 0.01 }, turns: 4 })
  ];
  const found = taken({ loops });

  it('saw it once, as deep and as wide as the larger', () => {
    const cuts = (id: string) =>
      linesOf(found, id, 'loop saw cut').map(({ item, amount: run }) => [item, run]);
    expect(cuts('L1')).toEqual([
      ['saw:50x8', near(5.4)],
      ['saw:80x10', near(1.8)]
    ]);
    expect(cuts('L2')).toEqual([['saw:80x10', near(5.4)]]);
    expect(total(found, 'loop saw cut')).toBeCloseTo(12.6, 9);
  });

  it('say with whom', () => {
    const [, shared] = linesOf(found, 'L1', 'loop saw cut');
    expect(shared).toMatchObject({
      id: 'L1/loop saw cut/saw:80x10',
      how: { key: 'sawCutShared', values: { others: 'L2', shared: { value: near(1.8) } } }
    });
    expect(linesOf(found, 'L2', 'loop saw cut')[0]!.how).toMatchObject({
      key: 'sawCutRest',
      values: { others: 'L1', drawn: { value: near(7.2) } }
    });
  });

  // L1: left side both ends, top and bottom at the left; the shared slot both ends; L2: the right side, top and bottom
  // and L2's top and bottom at the left: L1's go on there, but 30 mm less deep
  it('run past twelve ends: the shallow cuts go on in the deep ones, the deep ones do not end at theirs', () => {
    expect(ends(sawn({ loops }))).toBe(12);
    const [shallow, deep] = [Math.sqrt(0.05 * 0.3), Math.sqrt(0.08 * 0.27)];
    expect(total(found, 'overcut')).toBeCloseTo(4 * shallow + 8 * deep, 9);
  });

  it('have of an end in a shallower slot only to seal what is deeper than that', () => {
    // half a segment of a circle of 350 mm: 80 mm high at four free ends, 30 mm high at two, 10 mm wide
    const half = (height: number) => {
      const run = Math.sqrt(height * (0.35 - height));
      return (0.175 ** 2 * Math.asin(run / 0.175) - (0.175 - height) * run) / 2;
    };
    const [, atEnds] = linesOf(found, 'L2', 'sealant');
    expect(atEnds!.amount).toBeCloseTo((4 * half(0.08) + 2 * half(0.03)) * 0.01, 12);
  });

  it('run on in a slot as deep as they are', () => {
    const even = loops.map((each) => ({ ...each, slot: { depth: 0.08, width: 0.01 } }));
    expect(ends(sawn({ loops: even }))).toBe(10);
  });

  it('take wire for both, and sealant for what all seven wires leave', () => {
    expect(amount(found, 'L1', 'loop wire')).toBeCloseTo(21.6, 9);
    expect(amount(found, 'L2', 'loop wire')).toBeCloseTo(28.8, 9);
    const ofL1 = 5.4 * 0.05 * 0.008 + 1.8 * 0.08 * 0.01 - (5.4 * 3 + 1.8 * 7) * WIRE;
    expect(linesOf(found, 'L1', 'sealant')[0]!.amount).toBeCloseTo(ofL1, 12);
    expect(linesOf(found, 'L2', 'sealant')[0]!.amount).toBeCloseTo(5.4 * 0.08 * 0.01 - 5.4 * 4 * WIRE, 12);
  });

  it('are two slots again where a wall is left between them', () => {
    const apart = (gap: number): number =>
      total(taken({ loops: [loop('L1', square(0, 0)), loop('L2', square(1.8 + gap, 0))] }), 'loop saw cut');
    expect(apart(0.007)).toBeCloseTo(12.6, 9);
    expect(apart(0.009)).toBeCloseTo(14.4, 9);
  });

  // slots of 8 mm and 20 mm: half of both together is 14 mm, whichever was drawn first
  it('of different widths are one as long as no wall is left', () => {
    const wide = { slot: { depth: 0.05, width: 0.02 } };
    type Fields = Readonly<Record<string, unknown>>;
    const apart = (gap: number, first: Fields, second: Fields): number =>
      total(taken({ loops: [loop('L1', square(0, 0), first), loop('L2', square(1.8 + gap, 0), second)] }), 'loop saw cut'); // prettier-ignore
    for (const [first, second] of [
      [{}, wide],
      [wide, {}]
    ] as const) {
      expect(apart(0.013, first, second)).toBeCloseTo(12.6, 9);
      expect(apart(0.015, first, second)).toBeCloseTo(14.4, 9);
    }
  });

  it('share only as far as they lie beside each other: half a side', () => {
    const found_ = taken({ loops: [loop('L1', square(0, 0)), loop('L2', square(1.8, 0.9))] });
    expect(total(found_, 'loop saw cut')).toBeCloseTo(14.4 - 0.9, 9);
  });

  it('in the very same slot leave the second nothing to saw', () => {
    const twice = taken({ loops: [loop('L1', square(0, 0)), loop('L2', square(0, 0))] });
    expect(total(twice, 'loop saw cut')).toBeCloseTo(7.2, 9);
    expect(linesOf(twice, 'L2', 'loop saw cut')).toEqual([]);
    expect(total(twice, 'loop wire')).toBeCloseTo(43.2, 9);
    const round = shape('circle', { diameter: 2 });
    const circles = taken({ loops: [loop('L1', round), loop('L2', round)] });
    expect(total(circles, 'loop saw cut')).toBeCloseTo(2 * Math.PI, 9);
  });
});

/**
 * L1's home run goes 5 m to (3.9, −4.9), then 20 m along y = −4.9 to the box; L2's comes 5 m down to (13.9, −4.9) and lies
 * in L1's slot for the last 10 m. Drawn 40 m, sawn 30 m.
 */
describe('two home runs in one slot', () => {
  const site = {
    marks: [box('m1', [23.9, -4.9])],
    loops: [
      loop('L1', square(0, 0), drawnTail('m1', [[3.9, -4.9]], 1)),
      loop('L2', square(10, 0), drawnTail('m1', [[13.9, -4.9]], 1))
    ],
    circuits: [circuit('C1', ['L1', 'L2'])]
  };
  const found = taken({ ...site });

  it('are sawn once where they run together', () => {
    expect(amount(found, 'L1', 'home run saw cut')).toBeCloseTo(25, 9);
    expect(amount(found, 'L2', 'home run saw cut')).toBeCloseTo(5, 9);
    expect(linesOf(found, 'L1', 'home run saw cut')[0]!.how).toMatchObject({
      key: 'sawCutShared',
      values: { shared: { value: near(10) }, others: 'L2' }
    });
  });

  it('have wire each', () => {
    expect(amount(found, 'L1', 'tail wire')).toBeCloseTo(50, 9);
    expect(amount(found, 'L2', 'tail wire')).toBeCloseTo(30, 9);
  });

  // four wires in the last 10 m: they all count with L1, whose slot it is
  it('leave their slot less to fill', () => {
    const ofL1 = (7.2 + 25) * 0.0004 - (21.6 + 50 + 20) * WIRE;
    expect(linesOf(found, 'L1', 'sealant')[0]!.amount).toBeCloseTo(ofL1, 12);
    expect(linesOf(found, 'L2', 'sealant')[0]!.amount).toBeCloseTo(12.2 * 0.0004 - 31.6 * WIRE, 12);
  });

  // sides 8 each; L1: beginning, and both cuts at the bend; L2: beginning, and where it meets L1's slot
  it('run past 21 ends, none of them in the box or along the common way', () => {
    expect(ends(sawn({ ...site, circuits: [] }))).toBe(21);
  });
});

describe('a home run that leaves in line with a side', () => {
  // down from the corner (0.9, −0.9) in the line of the right side: that side needs no overcut there, the bottom does
  it('runs past seven ends', () => {
    const fields = { marks: [box('m1', [0.9, -4.9])], loops: [loop('L1', square(0, 0), drawnTail('m1'))] };
    expect(ends(sawn(fields))).toBe(7);
    expect(amount(taken(fields), 'L1', 'home run saw cut')).toBeCloseTo(4, 9);
  });
});

describe('a home run along a side of its own loop', () => {
  // from (0.9, −0.9) up the right side to (0.9, 0.9) and 3 m on: 1.8 m of it lie in the loop's slot
  const fields = {
    marks: [box('m1', [0.9, 3.9])],
    loops: [loop('L1', square(0, 0), drawnTail('m1', [[0.9, -0.9]]))]
  };

  it('is sawn beyond it only, and says where the rest lies', () => {
    const found = taken(fields);
    expect(total(found, 'loop saw cut')).toBeCloseTo(7.2, 9);
    expect(linesOf(found, 'L1', 'home run saw cut')).toMatchObject([
      { amount: near(3), how: { key: 'sawCutRest', values: { drawn: { value: near(4.8) }, others: 'L1' } } }
    ]);
    expect(amount(found, 'L1', 'tail wire')).toBeCloseTo(9.6, 9);
  });
});

describe('a way with a point twice', () => {
  it('runs past no end in the box', () => {
    const way = [[3.9, -4.9], [3.9, -4.9]]; // prettier-ignore
    const fields = {
      marks: [box('m1', [3.9, -4.9])],
      loops: [loop('L1', square(0, 0), drawnTail('m1', way))]
    };
    expect(ends(sawn(fields))).toBe(9);
  });
});
