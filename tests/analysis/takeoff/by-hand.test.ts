/**
 * One loop with everything that belongs to it, worked out by hand.
 *
 * 1.8 m × 1.8 m about the origin, 3 turns of 14 AWG (3.8 mm with insulation), slot 50 mm × 8 mm. The pull box stands at
 * (3.9, −4.9): from the corner (0.9, −0.9) that is 3 m across and 4 m down, 5 m. 1 m of slack. The cabinet stands 30 m
 * further, with 2 m of slack, and 7 m of another cable follow.
 */
import { describe, expect, it } from 'vitest';
import { circuit, loop, square } from '../support/sites';
import { amount, box, cabinet, drawnTail, linesOf, taken, WIRE } from './lines';

const site = {
  marks: [box('m1', [3.9, -4.9]), cabinet('m2', [33.9, -4.9])],
  loops: [loop('L1', square(0, 0), drawnTail('m1', [], 1))],
  circuits: [
    circuit('C1', ['L1'], {
      leadIn: {
        cable: 'pair-14',
        length: 0,
        route: { from: 'm1', to: 'm2', allowance: 2 },
        further: [{ cable: 'pair-16', length: 7 }]
      }
    })
  ],
  estimate: { twistsPerMetre: 10, bladeDiameter_m: 0.35 }
};
const found = taken(site);

describe('a loop of 1.8 m × 1.8 m, three turns', () => {
  it('takes 3 · 7.2 m of wire, 2 · 5 m of tail and 2 · 1 m of slack', () => {
    expect(amount(found, 'L1', 'loop wire')).toBeCloseTo(21.6, 9);
    expect(amount(found, 'L1', 'tail wire')).toBeCloseTo(10, 9);
    expect(amount(found, 'L1', 'tail slack')).toBeCloseTo(2, 9);
  });

  it('takes up 0.0852 m by twisting: 12 m · (√(1 + (π · 10 · 0.0038)²) − 1) = 12 m · 0.0071006', () => {
    expect(amount(found, 'L1', 'twist take-up')).toBeCloseTo(0.085207, 5);
  });

  it('has 30 m and 7 m of lead-in, and 2 m of slack in the first cable', () => {
    const [first, second] = linesOf(found, 'C1', 'lead-in');
    expect([first!.item, second!.item]).toEqual(['cable:pair-14', 'cable:pair-16']);
    expect(first!.amount).toBeCloseTo(30, 9);
    expect(second!.amount).toBeCloseTo(7, 9);
    expect(linesOf(found, 'C1', 'lead-in slack')).toMatchObject([{ item: 'cable:pair-14', amount: 2 }]);
  });

  it('is sawn over 7.2 m and 5 m, 50 mm deep and 8 mm wide', () => {
    expect(linesOf(found, 'L1', 'loop saw cut')).toMatchObject([{ item: 'saw:50x8' }]);
    expect(amount(found, 'L1', 'loop saw cut')).toBeCloseTo(7.2, 9);
    expect(amount(found, 'L1', 'home run saw cut')).toBeCloseTo(5, 9);
  });

  // two ends of each side and the beginning of the home run, which comes up in the box: 9 · √(0.05 · 0.30) = 9 · 0.1224745
  it('runs past nine ends by 122.47 mm', () => {
    expect(amount(found, 'L1', 'overcut')).toBeCloseTo(1.10227, 5);
    expect(linesOf(found, 'L1', 'overcut')[0]!.places).toHaveLength(9);
  });

  // outwards from the loop, whose corners are 0.9 m from its middle
  it('shows what runs past the sides outside the loop', () => {
    const shown = linesOf(found, 'L1', 'overcut')[0]!.places.flatMap((place) =>
      place.kind === 'line' ? [place.points] : []
    );
    const square = shown.filter(([from, to]) => from![0] === to![0] || from![1] === to![1]);
    expect(square).toHaveLength(8);
    for (const [, to] of square)
      expect(Math.max(Math.abs(to![0]), Math.abs(to![1]))).toBeCloseTo(0.9 + 0.1224745, 6);
  });

  // 12.2 m · 50 mm · 8 mm = 4.88 L, less (21.6 + 10) m · 11.3411 mm² = 0.35838 L
  it('is filled with 4.5216 L', () => {
    const [slots] = linesOf(found, 'L1', 'sealant');
    expect(slots!.amount).toBeCloseTo(12.2 * 0.05 * 0.008 - 31.6 * WIRE, 12);
    expect(slots!.amount * 1000).toBeCloseTo(4.5216, 4);
  });

  // half a segment: acos(0.125/0.175) = 0.775193; (0.175² · 0.775193 − 0.125 · 0.1224745)/2 = 0.00421551 m²; · 8 mm · 9
  it('and its overcuts with 0.3035 L', () => {
    const [, ends] = linesOf(found, 'L1', 'sealant');
    expect(ends!.id).toBe('L1/sealant/ends');
    expect(ends!.amount * 1000).toBeCloseTo(0.30352, 4);
  });

  it('is held down by 21 pieces: 12.2 m / 0.6 m = 20.3', () => {
    expect(amount(found, 'L1', 'backer')).toBe(21);
  });

  it('is joined to its lead-in once, and the cables once; both ends of each get a label', () => {
    expect(amount(found, 'L1', 'splice kit')).toBe(1);
    expect(amount(found, 'C1', 'splice kit')).toBe(1);
    expect(amount(found, 'L1', 'label')).toBe(2);
    expect(amount(found, 'C1', 'label')).toBe(4);
  });

  it('takes the crew as long as the rates say', () => {
    const metres = 12.2 + 9 * Math.sqrt(0.05 * 0.3);
    expect(amount(found, '', 'setting up')).toBeCloseTo(1, 9);
    expect(amount(found, 'L1', 'preparing')).toBeCloseTo(0.5, 9);
    // twice as deep as 25 mm, 30 m an hour
    expect(amount(found, 'L1', 'sawing')).toBeCloseTo((2 * metres) / 30, 9);
    expect(amount(found, 'L1', 'laying')).toBeCloseTo(31.6 / 120, 9);
    expect(amount(found, 'L1', 'sealing')).toBeCloseTo(metres / 60, 9);
    expect(amount(found, 'C1', 'pulling')).toBeCloseTo(39 / 60, 9);
    expect(amount(found, 'L1', 'splicing') + amount(found, 'C1', 'splicing')).toBeCloseTo(2 / 3, 9);
    expect(amount(found, 'L1', 'testing') + amount(found, 'C1', 'testing')).toBeCloseTo(0.5, 9);
    // 1 + 0.5 + 0.88682 + 0.26333 + 0.22170 + 0.65 + 0.66667 + 0.5
    expect(found.hours).toBeCloseTo(4.68852, 4);
  });

  it('has a box and a cabinet', () => {
    expect(amount(found, 'm1', 'pull box')).toBe(1);
    expect(amount(found, 'm2', 'cabinet')).toBe(1);
  });

  it('shows where each line is, but for what is of the whole site', () => {
    for (const { what, places } of found.lines) expect([what, places.length > 0]).toEqual([what, what !== 'setting up']); // prettier-ignore
  });
});

describe('holes in place of overcuts', () => {
  const cored = taken({ ...site, estimate: { ...site.estimate, coreHoles: true, coreDiameter_m: 0.038 } });

  it('stand at the four corners, one of which the home run leaves', () => {
    expect(amount(cored, 'L1', 'core hole')).toBe(4);
    expect(amount(cored, 'L1', 'overcut')).toBe(0);
    expect(amount(cored, 'L1', 'coring')).toBeCloseTo((4 * 300) / 3600, 9);
  });

  // each π/4 · 38² · 50 mm³ less a strip of 19 mm · 8 mm · 50 mm for each slot: 2 at three corners, 3 at the fourth
  it('take what the slots in them do not hold: 4 · 56.706 mL − 9 · 7.6 mL = 158.42 mL', () => {
    const [, ends] = linesOf(cored, 'L1', 'sealant');
    expect(ends!.amount * 1e6).toBeCloseTo(158.42, 1);
  });
});

describe('a blade that does not reach', () => {
  it('leaves overcuts out, and says so with both figures', () => {
    const short = taken({ ...site, estimate: { bladeDiameter_m: 0.1 } });
    expect(amount(short, 'L1', 'overcut')).toBe(0);
    expect(short.cautions).toMatchObject([
      { key: 'blade', values: { blade: { value: 0.1 }, depth: { value: 0.05 } } }
    ]);
    expect(found.cautions).toEqual([]);
  });

  it('says so of a round cut too, and of any where no overcuts are wanted: it is not that deep', () => {
    const round = { loops: [loop('L1', { kind: 'circle', centre: [0, 0], diameter: 1.8 })] };
    const blade = { key: 'blade', values: { depth: { value: 0.05 } } };
    for (const fields of [round, site])
      expect(
        taken({ ...fields, estimate: { bladeDiameter_m: 0.1, overcuts: false } }).cautions
      ).toMatchObject([blade]);
    expect(taken({ ...round, estimate: { bladeDiameter_m: 0.101 } }).cautions).toEqual([]);
  });
});

// 350 mm across and 50 mm deep: √(0.05 · 0.30) = 0.1225 m beyond each corner
describe('overcuts that reach into the slot of another loop', () => {
  const cautions = (second: Parameters<typeof loop>[1], more: object = {}) =>
    taken({ loops: [loop('L1', square(0, 0)), loop('L2', second)], ...more }).cautions;
  const said = (ends: number, others: string) => [
    { key: 'reach', values: { ends: { value: ends }, others } }
  ];

  it('are told: two ends of each square that is 0.1 m from the next', () => {
    expect(cautions(square(0, 1.9))).toMatchObject(said(4, 'L1, L2'));
    expect(cautions(square(0, 1.94))).toEqual([]);
    // a blade of 200 mm runs on √(0.05 · 0.15) = 0.0866 m
    expect(cautions(square(0, 1.9), { estimate: { bladeDiameter_m: 0.2 } })).toEqual([]);
    expect(cautions(square(0, 1.9), { estimate: { coreHoles: true } })).toEqual([]);
    expect(cautions(square(0, 1.9), { estimate: { overcuts: false } })).toEqual([]);
  });

  it('in a round slot as in a straight one, on whichever side they come from', () => {
    // its lowest point 0.06 m above the corner at (0.9, 0.9), of which the overcut of one side alone runs upwards
    const round = { kind: 'circle', centre: [0.9, 0.9 + 0.06 + 0.6], diameter: 1.2 };
    expect(cautions(round)).toMatchObject(said(1, 'L2'));
    expect(cautions({ ...round, centre: [0.9, 0.9 + 0.14 + 0.6] })).toEqual([]);
    // a large one round the whole square, 0.09 m from its corners
    expect(cautions({ kind: 'circle', centre: [0, 0], diameter: 2 * (0.9 * Math.SQRT2 + 0.06) })).toMatchObject(said(8, 'L2')); // prettier-ignore
    expect(cautions({ kind: 'circle', centre: [0, 0], diameter: 5 })).toEqual([]);
  });

  it('not where loops share the slot in which the cut ends', () => {
    expect(cautions(square(0, 1.8))).toEqual([]);
    // narrower, on the upper side of the other: its sides run on past the slot that both lie in
    expect(cautions(square(0, 1.4, 1))).toEqual([]);
  });

  it('on a large site too, each where it is', () => {
    const places = Array.from({ length: 60 }, (_, k) =>
      loop(`A${k}`, square((k % 3) * 5, Math.floor(k / 3) * 5))
    );
    const found = taken({ loops: [...places, loop('B', square(5, 46.9))] }).cautions;
    // A28 stands at (5, 45)
    expect(found).toMatchObject(said(4, 'A28, B'));
  });
});

describe('a tail that is only a typed length', () => {
  it('has a saw cut and wire of that length, and no place', () => {
    const typed = taken({ loops: [loop('L1', square(0, 0), { tail: { length: 4 } })] });
    const [homeRun] = linesOf(typed, 'L1', 'home run saw cut');
    expect(homeRun).toMatchObject({ amount: 4, places: [], item: 'saw:50x8' });
    expect(amount(typed, 'L1', 'tail wire')).toBe(8);
    expect(amount(typed, 'L1', 'tail slack')).toBe(0);
    // eight ends of the sides alone
    expect(linesOf(typed, 'L1', 'overcut')[0]!.places).toHaveLength(8);
    expect(linesOf(typed, 'L1', 'sealant')[0]!.amount).toBeCloseTo(11.2 * 0.0004 - 29.6 * WIRE, 12);
  });
});
