/** In which order, from which line, and where: places worked out by hand. */
import { describe, expect, it } from 'vitest';
import { cuttingPlanOf } from '#analysis/takeoff/cutting-plan';
import type { CuttingPlan } from '#analysis/takeoff/results';
import { lane, loop, siteOf, square } from '../support/sites';
import { box, drawnTail, near } from './lines';

const planOf = (fields: Readonly<Record<string, unknown>>): CuttingPlan => cuttingPlanOf(siteOf(fields));
const line = (id: string, kind: string, ...points: readonly (readonly number[])[]): object => ({ id, kind, points }); // prettier-ignore

describe('the line that is measured from', () => {
  const loops = [loop('L1', square(0, -5))];
  const stop = line('m1', 'stop-line', [-1.7, 0], [1.7, 0]);
  const kerb = line('m2', 'kerb', [-2, -20], [-2, 20]);
  const lanes = [lane('lane1', 0, { name: 'Northbound' })];

  it('is a stop line, else a kerb, else the first lane, else none', () => {
    expect(planOf({ loops, lanes, marks: [kerb, stop] }).baseline?.name).toBe('m1');
    expect(planOf({ loops, lanes, marks: [kerb] }).baseline?.name).toBe('m2');
    expect(planOf({ loops, lanes }).baseline?.name).toBe('Northbound');
    const without = planOf({ loops });
    expect(without.baseline).toBeNull();
    expect(without.cuts.every(({ setOut }) => setOut === null)).toBe(true);
    expect(without.cuts).toHaveLength(4);
  });

  it('is the one that the sheet names, as long as it is there', () => {
    const chosen = (baseline: object): string | undefined =>
      planOf({ loops, lanes, marks: [kerb, stop], sheet: { baseline } }).baseline?.name;
    expect(chosen({ kind: 'lane', lane: 'lane1' })).toBe('Northbound');
    expect(chosen({ kind: 'mark', mark: 'm2' })).toBe('m2');
  });

  // square to a stop line of 3.4 m nobody sets out what lies 60 m before it
  it('has every loop within a tape of 30 m to its side, if any line has', () => {
    const far = [...loops, loop('L2', square(0, -60))];
    expect(planOf({ loops: far, lanes, marks: [kerb, stop] }).baseline?.name).toBe('m2');
    expect(planOf({ loops: far, lanes, marks: [stop] }).baseline?.name).toBe('Northbound');
    expect(planOf({ loops: far, marks: [stop] }).baseline?.name).toBe('m1');
    const near30 = [loop('L1', square(0, -29.1))];
    expect(planOf({ loops: near30, lanes, marks: [stop] }).baseline?.name).toBe('m1');
    expect(planOf({ loops: [loop('L1', square(0, -29.2))], lanes, marks: [stop] }).baseline?.name).toBe('Northbound'); // prettier-ignore
    const chosen = { baseline: { kind: 'mark', mark: 'm1' } };
    expect(planOf({ loops: far, lanes, marks: [stop], sheet: chosen }).baseline?.name).toBe('m1');
  });

  it('is no mark without a length', () => {
    expect(planOf({ loops, lanes, marks: [line('m1', 'stop-line', [0, 0])] }).baseline?.name).toBe('Northbound'); // prettier-ignore
  });
});

describe('setting out', () => {
  // the lane runs up along x = 0 from y = −20: a point (x, y) has station y + 20, and left of it is −x
  const { cuts, holes } = planOf({
    lanes: [lane('lane1', 0)],
    loops: [loop('L1', square(0.5, -5))],
    estimate: { coreHoles: true }
  });

  it('tells station and offset, positive to the left', () => {
    for (const { from, to, setOut } of cuts) {
      expect(setOut!.from.station).toBeCloseTo(from[1] + 20, 9);
      expect(setOut!.from.offset).toBeCloseTo(-from[0], 9);
      expect(setOut!.to.station).toBeCloseTo(to[1] + 20, 9);
      expect(setOut!.to.offset).toBeCloseTo(-to[0], 9);
    }
    // the near left corner, (0.5 − 0.9, −5 − 0.9)
    expect(cuts[0]!.setOut!.from).toEqual({
      station: near(14.1),
      offset: near(0.4)
    });
  });

  it('tells it of holes too', () => {
    expect(holes).toHaveLength(4);
    for (const { at, setOut } of holes) expect(setOut!.station).toBeCloseTo(at[1] + 20, 9);
  });

  it('goes on before the start of a line and beyond its end', () => {
    const stop = line('m1', 'stop-line', [0, 0], [1, 0]);
    const plan = planOf({ marks: [stop], loops: [loop('L1', square(-5, 3))] });
    const stations = plan.cuts.map(({ setOut }) => setOut!.from.station);
    expect(Math.min(...stations)).toBeCloseTo(-5.9, 9);
    expect(plan.cuts[0]!.setOut!.from.offset).toBeCloseTo(2.1, 9);
  });

  // up 10 m, then to the left: past the bend at (0, 10) a point to the right of both legs is nearest to the bend itself
  it('measures from the bend what lies outside it', () => {
    const bent = { id: 'lane1', name: '', centreline: [[0, 0], [0, 10], [-10, 10]], width: 3 }; // prettier-ignore
    const plan = planOf({ lanes: [bent], loops: [loop('L1', { ...square(4, 14), width: 2, length: 2 })] });
    const [near_, far] = [[3, 13], [5, 15]].map(([x, y]) => plan.cuts.find(({ from }) => from[0] === x && from[1] === y)!.setOut!.from); // prettier-ignore
    expect(near_).toEqual({ station: near(10), offset: near(-Math.hypot(3, 3)) });
    expect(far).toEqual({ station: near(10), offset: near(-Math.hypot(5, 5)) });
  });

  it('sets a round cut out from its middle', () => {
    const circle = { kind: 'circle', centre: [1, -8], diameter: 2 };
    const [cut] = planOf({ lanes: [lane('lane1', 0)], loops: [loop('L1', circle)] }).cuts;
    expect(cut).toMatchObject({ kind: 'round', circle: { radius: 1 } });
    expect(cut!.setOut!.from).toEqual({ station: near(12), offset: near(-1) });
  });
});

describe('the order of sawing', () => {
  const marks = [box('m1', [8, -3]), line('m2', 'stop-line', [-4, 0], [4, 0])];

  it('goes from loop to loop along the baseline, whatever was drawn first', () => {
    const loops = [loop('L1', square(3, -4)), loop('L2', square(-3, -4)), loop('L3', square(0, -4))];
    const order = planOf({ marks, loops }).cuts.map((cut) => cut.loop);
    expect([...new Set(order)]).toEqual(['L2', 'L3', 'L1']);
    expect(order).toEqual([...order].sort((a, b) => ['L2', 'L3', 'L1'].indexOf(a) - ['L2', 'L3', 'L1'].indexOf(b))); // prettier-ignore
  });

  it('takes the nearer one first where two are met together', () => {
    const loops = [loop('L1', square(0, -9)), loop('L2', square(0, -4))];
    expect(planOf({ marks, loops }).cuts[0]!.loop).toBe('L2');
  });

  it('goes by the drawing where there is nothing to measure from', () => {
    const loops = [loop('L2', square(3, -4)), loop('L1', square(-3, -4))];
    expect(planOf({ loops }).cuts[0]!.loop).toBe('L2');
  });

  it('saws sides, then what halves share, then corner cuts, then the home run, and counts through', () => {
    const quadrupole = { kind: 'quadrupole', centre: [0, -6], width: 1.8, length: 4 };
    const plan = planOf({ marks, loops: [loop('L1', quadrupole, drawnTail('m1'))] });
    expect(plan.cuts.map(({ kind }) => kind)).toEqual(['side', 'side', 'side', 'side', 'shared side', 'home run']); // prettier-ignore
    const cut = planOf({ marks, loops: [loop('L1', { ...square(0, -4), cornerCut: 0.3 }, drawnTail('m1'))] });
    const kinds = cut.cuts.map(({ kind }) => kind);
    expect(kinds).toEqual([...Array<string>(4).fill('side'), ...Array<string>(4).fill('corner cut'), 'home run']); // prettier-ignore
    expect(cut.cuts.map(({ order }) => order)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });
});

describe('what runs past the ends', () => {
  // √(0.05 · 0.30), backwards from the corner; the other end comes up in the box
  it('of a home run is at the loop, and not in the box', () => {
    const plan = planOf({ marks: [box('m1', [8, -3])], loops: [loop('L1', square(0, 0), drawnTail('m1'))] });
    const run = plan.cuts.find(({ kind }) => kind === 'home run')!;
    expect(run.from[0]).toBeCloseTo(0.9, 9);
    expect(run.overcut).toEqual({ from: near(Math.sqrt(0.05 * 0.3)), to: 0 });
  });
});

describe('totals', () => {
  it('are the blade’s way by depth and width, the deepest first', () => {
    const slot = { depth: 0.08, width: 0.01 };
    const plan = planOf({
      loops: [loop('L1', square(0, 0)), loop('L2', square(9, 0), { slot, tail: { length: 4 } })]
    });
    expect(plan.totals).toEqual([
      // 7.2 m and a home run of 4 m that is not drawn
      { depth: 0.08, width: 0.01, length: near(11.2), overcut: near(8 * Math.sqrt(0.08 * 0.27)) }, // prettier-ignore
      { depth: 0.05, width: 0.008, length: near(7.2), overcut: near(8 * Math.sqrt(0.05 * 0.3)) } // prettier-ignore
    ]);
    expect(plan.unplaced).toEqual([{ loop: 'L2', length: 4, depth: 0.08, width: 0.01 }]);
  });

  it('say with whom a slot is shared', () => {
    const plan = planOf({ loops: [loop('L1', square(0, 0)), loop('L2', square(1.8, 0))] });
    const shared = plan.cuts.filter(({ sharedWith }) => sharedWith.length > 0);
    expect(shared).toMatchObject([{ loop: 'L1', sharedWith: ['L2'], length: near(1.8) }]);
    expect(plan.cuts).toHaveLength(7);
  });

  it('of nothing are none', () => {
    expect(planOf({})).toMatchObject({ baseline: null, cuts: [], holes: [], totals: [], cautions: [] });
  });
});
