/** The smallest change that makes a finding go away. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createMeans } from '#analysis/means';
import { seekGoalInSteps } from '#analysis/goal/seek-goal';
import { evaluate } from '#analysis/sweep/figures/index';
import { acceptedSteelCostOf } from '#plan/catalogue/tolerances';
import { experimentOn, rangeOf, valueOf, withValue } from '#plan/variables/index';
import type { Variable } from '#plan/variables/variable';
import type { Site } from '#plan/schema';
import { smallSite, withMat } from '../sweep/support';
import { findingsIn, firstFindingsIn, isGoneAt, refIn, seek } from './support';

const one: Site = {
  ...smallSite(1),
  lanes: smallSite(1).lanes.map((lane) => ({ ...lane, largestVehicle: 'car' }))
};

const withLoop = (site: Site, patch: Partial<Site['loops'][number]>): Site => ({
  ...site,
  loops: site.loops.map((loop, k) => (k === 0 ? { ...loop, ...patch } : loop))
});

const withChannel = (site: Site, patch: object): Site => ({
  ...site,
  circuits: site.circuits.map((circuit, k) =>
    k === 0 && circuit.channel ? { ...circuit, channel: { ...circuit.channel, ...patch } } : circuit
  )
});

describe('what is known beforehand', () => {
  it('a slot as deep as its wires and the cover need', () => {
    // three wires of 3.8 mm, and an inch over them: 36.8 mm
    const shallow = withLoop(one, { slot: { depth: 0.02, width: 0.008, relativePermittivity: 4 } });
    const goal = seek(shallow, { kind: 'slotDepth', subject: 'L1' }, refIn(shallow, 'cover', 'L1'));
    if (goal.kind === 'none') throw new Error(goal.reason);
    expect(goal.from).toBe(0.02);
    expect(goal.to).toBeGreaterThanOrEqual(0.0368 - 1e-9);
    expect(goal.to).toBeLessThanOrEqual(0.0368 + goal.within);
    expect(goal.within).toBeLessThanOrEqual(0.0005 + 1e-9);
    // the wires stood out of a slot of 20 mm no more than the cover: nothing else changes
    expect(goal.clears.filter(({ code }) => code === 'cover')).toEqual([]);
  });

  // 36.8 mm are 1.4488 in; the next round value that is deep enough, in fiftieths of an inch and in half millimetres
  it.each([
    ['imperial', 0.02, 1.46 * 0.0254, 0.02 * 0.0254],
    ['metric', 0.75 * 0.0254, 0.037, 0.0005]
  ] as const)(
    'and round in the unit that is shown, wherever it began: %s',
    (displayUnits, depth, to, step) => {
      const slot = { depth, width: 0.008, relativePermittivity: 4 };
      const shallow = withLoop({ ...one, displayUnits }, { slot });
      const variable: Variable = { kind: 'slotDepth', subject: 'L1' };
      const ref = refIn(shallow, 'cover', 'L1');
      const goal = seek(shallow, variable, ref);
      if (goal.kind === 'none') throw new Error(goal.reason);
      expect(goal.to).toBeCloseTo(to, 12);
      expect(goal.within).toBeCloseTo(step, 12);
      expect(isGoneAt(shallow, variable, ref, goal.to)).toBe(true);
      expect(isGoneAt(shallow, variable, ref, goal.to - goal.within)).toBe(false);
    }
  );

  it('a slot as wide as its wire, from below', () => {
    const narrow = withLoop(one, { slot: { depth: 0.05, width: 0.0035, relativePermittivity: 4 } });
    const goal = seek(narrow, { kind: 'slotWidth', subject: 'L1' }, refIn(narrow, 'slot-width', 'L1'));
    if (goal.kind === 'none') throw new Error(goal.reason);
    expect(goal.to).toBeGreaterThanOrEqual(0.0038);
    expect(goal.to).toBeLessThanOrEqual(0.0038 + goal.within);
  });

  it('turns exactly, and what they bring with them is said', () => {
    const few = withLoop(one, { turns: 1 });
    const variable: Variable = { kind: 'turns', subject: 'L1' };
    const goal = seek(few, variable, refIn(few, 'turns', 'L1'));
    if (goal.kind === 'none') throw new Error(goal.reason);
    expect(goal.within).toBe(1);
    expect(isGoneAt(few, variable, { code: 'turns', subject: 'L1' }, goal.to)).toBe(true);
    expect(isGoneAt(few, variable, { code: 'turns', subject: 'L1' }, goal.to - 1)).toBe(false);
    const there = withValue(experimentOn(few), variable, goal.to)!.site;
    const codes = (site: Site) => findingsIn(site).map(({ code, subject }) => `${code} ${subject}`);
    const text = ({ code, subject }: { code: string; subject: string }) => `${code} ${subject}`;
    const [before, after] = [codes(few), codes(there)];
    expect(goal.brings.map(text)).toEqual(after.filter((each) => !before.includes(each)));
    expect(goal.clears.map(text)).toEqual(
      before.filter((each) => !after.includes(each) && each !== 'turns L1')
    );
  }, 30_000);

  it('a threshold that the vehicle just reaches, to a tenth of a step, however far it is', () => {
    const deaf = withChannel(one, { tripThreshold: 0.08 });
    const variable: Variable = { kind: 'tripThreshold', subject: 'C1' };
    const means = createMeans();
    const goal = seek(deaf, variable, refIn(deaf, 'undetected', 'C1'), means);
    if (goal.kind === 'none') throw new Error(goal.reason);
    const reached = evaluate(
      experimentOn(deaf),
      { kind: 'response', subject: 'C1', vehicle: 'car', path: 'best' },
      means
    )!;
    expect(goal.to).toBeLessThanOrEqual(reached);
    expect(reached - goal.to).toBeLessThanOrEqual(0.000_01 + 1e-9);
  });

  it('and what gets graver counts as brought', () => {
    // one wire fits in 11 mm with too little over it, three of 3.8 mm do not fit
    const shallow = withLoop(one, {
      turns: 1,
      slot: { depth: 0.011, width: 0.008, relativePermittivity: 4 }
    });
    expect(refIn(shallow, 'cover', 'L1').severity).toBe('caution');
    const goal = seek(shallow, { kind: 'turns', subject: 'L1' }, refIn(shallow, 'turns', 'L1'));
    if (goal.kind === 'none') throw new Error(goal.reason);
    expect(goal.brings).toContainEqual({ code: 'cover', subject: 'L1', severity: 'problem' });
  });

  it('and another vehicle that is missed beside one that was missed already', () => {
    const shallow = withLoop(one, { slot: { depth: 0.02, width: 0.008, relativePermittivity: 4 } });
    const asked: Site = {
      ...shallow,
      circuits: shallow.circuits.map((circuit) => ({ ...circuit, detect: ['lorry', 'car'] }))
    };
    const means = createMeans();
    const reached = (vehicle: string): number =>
      evaluate(experimentOn(asked), { kind: 'response', subject: 'C1', vehicle, path: 'worst' }, means)!;
    // the lorry's floor is higher; the car is seen only just, and no more from a deeper slot
    expect(reached('lorry')).toBeLessThan(0.9 * reached('car'));
    const site = withChannel(asked, { tripThreshold: 0.999 * reached('car') });
    const goal = seek(site, { kind: 'slotDepth', subject: 'L1' }, refIn(site, 'cover', 'L1'), means);
    if (goal.kind === 'none') throw new Error(goal.reason);
    const missed = (drawn: Site): number =>
      findingsIn(drawn).filter(({ code }) => code === 'undetected').length;
    const there = withValue(experimentOn(site), { kind: 'slotDepth', subject: 'L1' }, goal.to)!.site;
    expect([missed(site), missed(there)]).toEqual([1, 2]);
    expect(goal.brings.filter(({ code }) => code === 'undetected')).toHaveLength(1);
  }, 60_000);

  it('two alike are moved apart until their coupling is a quarter of the threshold', () => {
    const [loop] = one.loops;
    const [circuit] = one.circuits;
    const shape = { ...loop!.shape, centre: [5, 0] as const };
    const near: Site = {
      ...one,
      loops: [loop!, { ...loop!, id: 'L2', shape: shape }],
      circuits: [1, 2].map((number) => ({
        ...circuit!,
        id: `C${number}`,
        strings: [[{ loop: `L${number}`, reversed: false }]],
        channel: { ...circuit!.channel!, number, tripThreshold: 0.002 }
      }))
    };
    const means = createMeans();
    const gap: Variable = { kind: 'gap', subject: 'L1', other: 'L2' };
    const goal = seek(near, gap, refIn(near, 'beating', 'C1 + C2'), means);
    if (goal.kind === 'none') throw new Error(goal.reason);
    expect(goal.to).toBeGreaterThan(goal.from);
    const ratioAt = (value: number): number => {
      const there = withValue(experimentOn(near), gap, value)!;
      return evaluate(there, { kind: 'beatRatio', subject: 'C1', other: 'C2' }, means)!;
    };
    expect(ratioAt(goal.to)).toBeLessThan(0.25);
    expect(ratioAt(goal.to - goal.within)).toBeGreaterThanOrEqual(0.25);
  }, 60_000);
});

describe('where nothing helps', () => {
  it('says that the number has no effect', () => {
    const shallow = withLoop(one, { slot: { depth: 0.02, width: 0.008, relativePermittivity: 4 } });
    const goal = seek(shallow, { kind: 'leadInLength', subject: 'C1' }, refIn(shallow, 'cover', 'L1'));
    expect(goal).toMatchObject({ kind: 'none', reason: 'no effect', from: 31 });
    const beside = seek(shallow, { kind: 'offset', subject: null }, refIn(shallow, 'cover', 'L1'));
    expect(beside).toMatchObject({ kind: 'none', reason: 'no effect' });
  });

  it('says how near it comes', () => {
    const deaf = withChannel(one, { tripThreshold: 0.2 });
    const variable: Variable = { kind: 'slotDepth', subject: 'L1' };
    const goal = seek(deaf, variable, refIn(deaf, 'undetected', 'C1'));
    if (goal.kind === 'found') throw new Error('a loop that answers by a fifth');
    const { least, most } = rangeOf(experimentOn(deaf), variable)!;
    expect(goal).toMatchObject({ reason: 'not enough', least, most });
    // the shallower the nearer to the vehicle
    expect(goal.best!.at).toBe(least);
    expect(goal.best!.told).toContain('%');
    expect(goal.tried).toBeGreaterThan(20);
  }, 60_000);

  it('says that it is not possible', () => {
    const gone = { code: 'cover', subject: 'L1', severity: 'caution' } as const;
    expect(seek(one, { kind: 'turns', subject: 'L1' }, gone)).toMatchObject({ reason: 'not possible' });
    expect(seek(one, { kind: 'turns', subject: 'L9' }, gone)).toMatchObject({
      ...{ reason: 'not possible', from: null, best: null }
    });
  });
});

it('steel is laid so deep that it takes no more of the inductance than is accepted', () => {
  const steel = withMat(one);
  const near: Site = {
    ...steel,
    steel: steel.steel.map((each) => ({ ...each, depth: 0.07 })),
    circuits: steel.circuits.map((circuit) => ({ ...circuit, detect: [] }))
  };
  const variable: Variable = { kind: 'steelDepth', subject: 's1' };
  const means = createMeans();
  const goal = seek(near, variable, { code: 'steel-near', subject: 'C1', severity: 'caution' }, means);
  if (goal.kind === 'none') throw new Error(goal.reason);
  const inductance = (site: Site): number =>
    evaluate(experimentOn(site), { kind: 'inductance', subject: 'C1' }, means)!;
  const taken = (depth: number): number =>
    1 - inductance(withValue(experimentOn(near), variable, depth)!.site) / inductance(one);
  const accepted = acceptedSteelCostOf(near);
  expect(taken(0.07)).toBeGreaterThan(accepted);
  expect(taken(goal.to)).toBeLessThanOrEqual(accepted);
  expect(taken(goal.to - goal.within)).toBeGreaterThan(accepted);
}, 120_000);

it('says how far it is', () => {
  const shallow = withLoop(one, { slot: { depth: 0.02, width: 0.008, relativePermittivity: 4 } });
  const wish = {
    variable: { kind: 'leadInLength', subject: 'C1' },
    finding: refIn(shallow, 'cover', 'L1')
  } as const;
  const shares = [...seekGoalInSteps(shallow, wish, createMeans())].filter(
    (each) => typeof each === 'number'
  );
  expect(shares.at(-1)).toBe(1);
  expect(shares.length).toBeGreaterThan(100);
});

it('says how far it is to the end, also while it looks at what the change brings', () => {
  const shallow = withLoop(one, { slot: { depth: 0.02, width: 0.008, relativePermittivity: 4 } });
  const wish = { variable: { kind: 'slotDepth', subject: 'L1' }, finding: refIn(shallow, 'cover', 'L1') } as const; // prettier-ignore
  const shares = [...seekGoalInSteps(shallow, wish, createMeans())].filter(
    (each) => typeof each === 'number'
  );
  expect(shares.at(-1)).toBe(1);
  expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  // all findings before, and all after
  for (const [from, to] of [
    [0.8, 0.9],
    [0.9, 1]
  ] as const)
    expect(shares.filter((share) => share > from && share < to).length).toBeGreaterThan(3);
}, 30_000);

describe('against every value tried', () => {
  /** A drawing of one loop with as many things wrong as the numbers happen to make. */
  const drawing = fc.record({
    turns: fc.integer({ min: 1, max: 12 }),
    depth: fc.integer({ min: 4, max: 12 }).map((cm) => cm / 100),
    slotWidth: fc.integer({ min: 3, max: 9 }).map((mm) => mm / 1_000),
    side: fc.integer({ min: 4, max: 30 }).map((dm) => dm / 10),
    leadIn: fc.integer({ min: 0, max: 300 }),
    threshold: fc.constantFrom(0.001, 0.01, 0.03, 0.06)
  });
  const build = (given: typeof drawing extends fc.Arbitrary<infer T> ? T : never): Site => {
    const { turns, depth, slotWidth, side, leadIn, threshold } = given;
    const [loop] = one.loops;
    const shape = { ...loop!.shape, kind: 'rectangle' as const, centre: [0, 0] as const, width: side, length: side, rotation: 0, cornerCut: 0 }; // prettier-ignore
    const site = withChannel(
      withLoop(one, { turns, shape, slot: { ...loop!.slot, depth, width: slotWidth } }),
      { tripThreshold: threshold }
    );
    return {
      ...site,
      lanes: site.lanes.slice(0, 1),
      circuits: site.circuits.map((circuit) => ({
        ...circuit,
        leadIn: { ...circuit.leadIn, length: leadIn }
      }))
    };
  };
  const KINDS = ['turns', 'slotDepth', 'wire', 'slotWidth'] as const;
  const CODES = ['cover', 'slot-width', 'turns', 'undetected', 'inductance-range', 'frequency-band', 'low-q'];

  /** Every step of the variable about its present value, and half steps of one that is not whole, nearest first. */
  const bruteForce = (
    site: Site,
    variable: Variable,
    ref: { code: string; subject: string }
  ): number | null => {
    const experiment = experimentOn(site);
    const { least, most, step, isWhole } = rangeOf(experiment, variable)!;
    const from = valueOf(experiment, variable)!;
    const fine = isWhole ? step : step / 2;
    for (let k = 1; k * fine <= Math.max(most - from, from - least); k++)
      for (const value of [from + k * fine, from - k * fine])
        if (value >= least && value <= most && isGoneAt(site, variable, ref, value) === true) return k * fine;
    return null;
  };

  it('nothing nearer helps, and what is found does', () => {
    const found = { some: 0, none: 0 };
    fc.assert(
      fc.property(drawing, fc.constantFrom(...KINDS), fc.nat(), (given, kind, pick) => {
        const site = build(given);
        const findings = firstFindingsIn(site).filter(({ code }) => CODES.includes(code));
        fc.pre(findings.length > 0);
        const { code, subject, severity } = findings[pick % findings.length]!;
        const variable: Variable = { kind, subject: 'L1' };
        const goal = seek(site, variable, { code, subject, severity });
        const nearest = bruteForce(site, variable, { code, subject });
        if (goal.kind === 'none') {
          found.none += 1;
          expect(nearest).toBeNull();
          return;
        }
        found.some += 1;
        const step = rangeOf(experimentOn(site), variable)!.step;
        expect(isGoneAt(site, variable, { code, subject }, goal.to)).toBe(true);
        if (nearest !== null)
          expect(Math.abs(goal.to - goal.from)).toBeLessThanOrEqual(nearest + step + 1e-9);
        else expect(goal.within).toBeLessThan(step);
      }),
      { numRuns: 18, seed: 21 }
    );
    expect(found.some).toBeGreaterThan(2);
    expect(found.none).toBeGreaterThan(2);
  }, 300_000);
});
