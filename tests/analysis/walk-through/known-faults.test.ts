import { describe, expect, test } from 'vitest';
import { heldFor } from '#analysis/walk-through/paths/drops-standing';
import { gateDistance, lastRead } from '#analysis/walk-through/figures/drawn';
import { insulationLimitOf, spanOf } from '#analysis/walk-through/figures/spans';
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { WalkWish } from '#analysis/walk-through/results';
import { walkInSteps } from '#analysis/walk-through/walk';
import type { Site } from '#plan/schema';
import { channel, circuit, lane, loop, siteOf, square, unit } from '../support/sites';
import { beating, gated, highLorry, insensitive, outOfRange } from './built-sites';
import { keysOf, next, numberIn, walk } from './support';

describe('calls with nobody there', () => {
  test('end at the beat with the neighbour that is tuned alike, and a setting that clears it', () => {
    const asked = walk(beating, 'calls with nobody there', 'C1');
    // the far one on another frequency is not worth a look
    expect(next(asked).answers.map(({ id }) => id)).toEqual(['beat:C2', 'beat:goes-on']);
    const { end } = walk(beating, 'calls with nobody there', 'C1', 'beat:C2');
    expect(end!.id).toBe('end-beat');
    expect(end!.verdict.values).toEqual({ other: 'Right', circuit: 'Left' });
    const setting = end!.remedies.find(({ key }) => key === 'remedy.setting')!;
    expect(numberIn(setting, 'before')).toBe(2);
    expect(numberIn(setting, 'setting')).not.toBe(2);
    // what is left is clear: under a quarter of the threshold
    expect(numberIn(setting, 'share')).toBeLessThan(0.25);
    expect(numberIn(setting, 'apart')).toBeGreaterThan(1_000);
  });

  test('leave the beat out where nothing runs at the same time, and say so', () => {
    const { ruledOut } = next(walk(insensitive, 'calls with nobody there', 'C1'));
    expect(keysOf(ruledOut)).toEqual(['beat.none', 'beside.none', 'nobody.gate.none']);
  });

  test('ask for the lane beside where its traffic reaches half of the threshold', () => {
    const after = walk(gated, 'calls with nobody there', 'C1', 'beat:goes-on');
    const step = next(after);
    expect(step.id).toBe('beside');
    expect(numberIn(step.facts[0]!, 'share')).toBeGreaterThan(0.5);
    expect(step.facts[0]!.values['lane']).toBe('B');
    const { end } = walk(gated, 'calls with nobody there', 'C1', 'beat:goes-on', 'beside:yes');
    expect(end!.id).toBe('end-beside');
  });

  test('ask about the gate only where it is near', () => {
    const here = walk(gated, 'calls with nobody there', 'C1', 'beat:goes-on', 'beside:no');
    expect(next(here).id).toBe('gate');
    // from the loop's far side, 1.3 m along the lane, to the gate at 2 m
    expect(numberIn(next(here).facts[0]!, 'distance')).toBeCloseTo(0.7, 9);
  });

  test('in the rain end at the side that leaks', () => {
    const answers = ['beat:goes-on', 'beside:no', 'gate:no', 'weather:yes'];
    const bad = [...answers, 'insulation:bad'];
    const ends = ['loop', 'lead-in', 'splice'].map(
      (side) => walk(gated, 'calls with nobody there', 'C1', ...bad, `leak-where:${side}`).end!.id
    );
    expect(ends).toEqual(['end-leak-loop', 'end-leak-lead-in', 'end-leak-splice']);
  });
});

describe('misses motorcycles', () => {
  test('ends at once where none can reach the threshold, with one that it reaches', () => {
    const { steps, end } = walk(insensitive, 'misses motorcycles', 'C1');
    expect(steps).toEqual([]);
    expect(end!.id).toBe('end-never');
    const [found] = end!.ruledOut;
    const best = numberIn(found!, 'best');
    expect(best).toBeLessThan(0.01);
    const lower = numberIn(end!.remedies[0]!, 'threshold');
    expect(lower).toBeLessThan(best);
    expect(lower).toBeGreaterThan(0);
  });

  test('asks where they ride where only some paths are seen', () => {
    const step = next(walk(beating, 'misses motorcycles', 'C1'));
    expect(step.id).toBe('where');
    const { end } = walk(beating, 'misses motorcycles', 'C1', 'where:there');
    expect(end!.id).toBe('end-path');
  });

  test('compares the delay with the time that a pass takes', () => {
    const step = walk(gated, 'misses motorcycles', 'C1', 'where:elsewhere', 'set:yes').steps.at(-1)!;
    expect(step.id).toBe('delay');
    const [fact] = step.facts;
    // 30 km/h
    expect(numberIn(fact!, 'time')).toBeCloseTo((numberIn(fact!, 'length') * 3.6) / 30, 9);
    expect(numberIn(fact!, 'time')).toBeLessThan(2);
  });
});

test('never calling ends at a threshold that nothing asked for reaches', () => {
  const { end } = walk(outOfRange, 'never calling', 'C1', 'alive:runs');
  expect(end!.id).toBe('end-threshold');
});

test('always calling ends at an inductance that the unit does not accept', () => {
  const { end } = walk(outOfRange, 'always calling', 'C1', 'occupied:no', 'shown:fault');
  expect(end!.id).toBe('end-range');
  expect(keysOf(end!.remedies)).toEqual(['always.end.range.more']);
});

test('always calling goes on to the meter where the design is within the unit’s range', () => {
  const step = next(walk(beating, 'always calling', 'C1', 'occupied:no', 'shown:fault'));
  expect(step.id).toBe('resistance');
  expect(keysOf(step.ruledOut)).toEqual(['always.range.inside']);
  expect(step.measure).toEqual({ testPoint: 'cabinet', quantity: 'resistanceDc_ohm' });
  expect(step.hazards).toContain('mains');
});

test('two lanes: channels that one unit scans in turn cannot beat', () => {
  const both = siteOf({
    lanes: [lane('A', 0), lane('B', 3.5)],
    loops: [loop('L1', square(0, 0)), loop('L2', square(3.5, 0))],
    units: [unit('U1')],
    circuits: [circuit('C1', ['L1']), circuit('C2', ['L2'], { channel: channel('U1', 2) })]
  });
  const step = next(walk(both, 'two lanes call together', 'C1', 'who:nobody'));
  expect(step.id).toBe('outputs');
  expect(keysOf(step.ruledOut)).toEqual(['lanes.beat.never']);
});

describe('drops a standing vehicle', () => {
  test('ends at the output that gives a pulse', () => {
    const { steps, end } = walk(gated, 'drops a standing vehicle', 'C1');
    expect(steps).toEqual([]);
    expect(end!.id).toBe('end-pulse');
    // common practice: 125 ms
    expect(numberIn(end!.verdict, 'pulse')).toBe(0.125);
  });

  test('ends at the high lorry that is lost between its axles', () => {
    const { end } = walk(highLorry, 'drops a standing vehicle', 'C1', 'which:high');
    expect(end!.id).toBe('end-gap');
    const [found] = end!.ruledOut;
    expect(numberIn(found!, 'response')).toBeLessThan(numberIn(found!, 'release'));
    expect(numberIn(found!, 'release')).toBeCloseTo(0.004 * 0.9, 12);
  });

  test('offers the longest presence where one is set', () => {
    const { end } = walk(gated, 'drops a standing vehicle', 'C2', 'which:all', 'how-long:longest');
    expect(numberIn(end!.verdict, 'longest')).toBe(240);
  });

  test('holds a vehicle for the time constant times the logarithm of response over release', () => {
    // the header of catalogue/timings.ts: 30 min · ln(20/0.6) = 1 h 45 min
    expect(heldFor(20, 0.6, 1_800) / 60).toBeCloseTo(105, 0);
    expect(heldFor(0.5, 0.6, 1_800)).toBe(0);
  });
});

test('works until it rains: says how far the wet road moves the frequency', () => {
  const step = next(walk(beating, 'works until it rains', 'C1'));
  const [pavement] = step.facts;
  const [dry, wet] = [numberIn(pavement!, 'dry'), numberIn(pavement!, 'wet')];
  expect(wet).toBeLessThan(dry);
  // f goes with 1/√L, so that ΔL/L is twice Δf/f
  expect(numberIn(pavement!, 'change')).toBeCloseTo((2 * (dry - wet)) / ((dry + wet) / 2), 5);
});

describe('the meter in hand', () => {
  const means = createMeans();
  const instruments = [
    { id: 'I1', name: 'Fine', floor: 0 },
    { id: 'I2', name: 'Coarse', floor: 0.5 }
  ].map(({ floor, ...named }) => ({
    ...named,
    accuracies: [{ quantity: 'resistanceDc_ohm' as const, share: 0, floor }]
  }));
  const readings = [
    { circuit: 'C1', at: '2025-02-01', instruments: ['I2'] },
    { circuit: 'C1', at: '2025-01-01', instruments: ['I1'] },
    { circuit: 'C1', at: '2025-03-01' },
    { circuit: 'C2', at: '2025-04-01', instruments: ['I1'] }
  ];
  /** What is said of the resistance that is expected, and half of how much it leaves open. */
  const expectedOf = (read: Site['readings'], inHand?: readonly string[]) => {
    const wish: WalkWish = {
      complaint: 'always calling',
      circuit: 'C1',
      answers: ['occupied:no', 'shown:fault'],
      ...(inHand ? { instruments: inHand } : {})
    };
    const site = { ...beating, fieldCheck: { instruments }, readings: read };
    const step = next(finish(walkInSteps(site, wish, means))!);
    expect(step.id).toBe('resistance');
    const [fact] = step.facts;
    const half = (numberIn(fact!, 'high') - numberIn(fact!, 'low')) / 2;
    // what is told is what can be answered
    expect(step.answers[0]!.label.values).toEqual({ low: fact!.values['low'], high: fact!.values['high'] });
    return { fact: fact!, half };
  };

  test('is the one ticked on the form; else the one with which the circuit was read last; else a usual one', () => {
    const [usual, fine, last] = [expectedOf([]), expectedOf(readings, ['I1']), expectedOf(readings)];
    expect(usual.fact.key).toBe('loop.expected');
    expect(fine.fact.values['meter']).toBe('Fine');
    expect(last.fact.values['meter']).toBe('Coarse');
    expect(expectedOf(readings, []).fact.values['meter']).toBe('Coarse');
    // the fine one leaves the tolerances alone; squares add up
    expect(last.half).toBeGreaterThan(0.5);
    expect(Math.sqrt(last.half ** 2 - fine.half ** 2)).toBeCloseTo(0.5, 2);
    expect(fine.half).toBeLessThan(usual.half);
  });
});

test('an answer given before an edit counts only for its own step', () => {
  const { steps } = walk(insensitive, 'calls with nobody there', 'C1', 'beat:C2', 'weather:no');
  expect(steps.map(({ id, given }) => [id, given])).toEqual([
    ['weather', 'weather:no'],
    ['joint', null]
  ]);
});

test('a circuit on no channel says that first', () => {
  const bare = siteOf({
    loops: [loop('L1', square(0, 0))],
    circuits: [circuit('C1', ['L1'], { channel: null })]
  });
  expect(walk(bare, 'no power', 'C1').end!.id).toBe('no-channel');
});

describe('figures', () => {
  const site = siteOf({
    marks: [
      {
        id: 'g',
        kind: 'gate',
        points: [
          [-3, 5],
          [3, 5]
        ]
      }
    ],
    loops: [loop('L1', square(0, 0, 2))],
    units: [unit('U1')],
    circuits: [circuit('C1', ['L1'])],
    readings: [
      { circuit: 'C1', testPoint: 'cabinet', at: '2024-05-02T10:00', resistanceDc_ohm: 2 },
      { circuit: 'C1', testPoint: 'cabinet', at: '2025-05-02T10:00', overRange: ['resistanceDc_ohm'] },
      { circuit: 'C1', testPoint: 'unit', at: '2026-05-02T10:00', resistanceDc_ohm: 9 }
    ]
  });

  test('the newest reading at that place', () => {
    expect(lastRead(site, 'C1', 'cabinet', 'resistanceDc_ohm')).toEqual({ value: null, day: '2025-05-02' });
    expect(lastRead(site, 'C1', 'cabinet', 'inductance_H')).toBeNull();
  });

  test('the way to the gate', () => {
    expect(gateDistance(site, site.loops)).toBe(4);
    expect(gateDistance({ marks: [] }, site.loops)).toBeNull();
  });

  test('tolerance and meter add as squares', () => {
    // 3 Ω off by tolerance, 1 % of 300 Ω + 0.1 Ω by the meter
    const span = spanOf(
      300,
      { low: 297, high: 303, method: 'linear', contributions: [] },
      'resistanceDc_ohm',
      { site: {}, instruments: [] }
    );
    expect(span.meter).toBeNull();
    expect(span.high - 300).toBeCloseTo(Math.hypot(3, 3.1), 9);
    expect(300 - span.low).toBeCloseTo(Math.hypot(3, 3.1), 9);
  });

  test('a site’s own instrument counts in the place of a usual one, for what it states', () => {
    const coarse = {
      id: 'I1',
      name: 'Coarse meter',
      accuracies: [{ quantity: 'resistanceDc_ohm' as const, share: 0, floor: 4 }]
    };
    const metered = { site: { fieldCheck: { instruments: [coarse] } }, instruments: ['I1'] };
    const range = { low: 297, high: 303, method: 'linear' as const, contributions: [] };
    const span = spanOf(300, range, 'resistanceDc_ohm', metered);
    expect(span.high - 300).toBeCloseTo(5, 9);
    expect(span.meter).toBe('Coarse meter');
    expect(spanOf(300, range, 'q', metered).meter).toBeNull();
    expect(spanOf(300, range, 'resistanceDc_ohm', { ...metered, instruments: [] }).meter).toBeNull();
  });

  test('the strictest insulation that is asked for', () => {
    // WAC 296-46B-300: 50 MΩ; California section 86, from memory: 100 MΩ
    expect(insulationLimitOf({})).toBe(50e6);
    expect(insulationLimitOf({ fieldCheck: { limits: ['california-86-insulation'] } })).toBe(100e6);
    expect(insulationLimitOf({ fieldCheck: { limits: [], insulationLimit_ohm: 1e6 } })).toBe(1e6);
  });
});
