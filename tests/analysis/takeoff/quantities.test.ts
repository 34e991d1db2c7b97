import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import type { Quantities } from '#analysis/results';
import { circuit, loop, siteOf, square, unit } from '../support/sites';

const quantitiesOf = (loops: readonly object[], circuits: readonly object[] = []): Quantities =>
  createAssessor().assess(siteOf({ loops, circuits, units: [unit('U1')] }), 'prepared').quantities!;
const amount = ({ lines }: Quantities, subject: string, what: string): number | undefined =>
  lines.find((line) => line.subject === subject && line.what === what)?.amount;

describe('what goes into the road', () => {
  const found = quantitiesOf(
    [loop('L1', square(0, 0), { tail: { length: 4 } })],
    [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 30 } })]
  );

  it('for 1.8 × 1.8 m, three turns, a tail of 4 m and a lead-in of 30 m', () => {
    expect(amount(found, 'L1', 'loop wire')).toBeCloseTo(3 * 7.2, 9);
    expect(amount(found, 'L1', 'tail wire')).toBeCloseTo(2 * 4, 9);
    expect(amount(found, 'L1', 'loop saw cut')).toBeCloseTo(7.2, 9);
    expect(amount(found, 'L1', 'home run saw cut')).toBeCloseTo(4, 9);
    expect(amount(found, 'C1', 'lead-in')).toBeCloseTo(30, 9);
  });

  it('is summed up: 29.6 m of wire, 11.2 m of saw cut', () => {
    expect(found.wire_m).toBeCloseTo(29.6, 9);
    expect(found.sawCut_m).toBeCloseTo(11.2, 9);
    expect(found.leadIn_m).toBeCloseTo(30, 9);
  });

  it('fills the slot but for the wires: 11.2 m × 50 mm × 8 mm less 29.6 m of 3.8 mm wire', () => {
    const wanted = 11.2 * 0.05 * 0.008 - 29.6 * Math.PI * 0.0019 ** 2;
    expect(found.sealant_m3).toBeCloseTo(wanted, 9);
    // 4.14 litres
    expect(found.sealant_m3 * 1000).toBeCloseTo(4.144, 3);
  });

  it('has a unit with every line that the totals come from', () => {
    const units = new Map(found.lines.map(({ what, unit: inUnit }) => [what, inUnit]));
    for (const what of ['loop wire', 'tail wire', 'lead-in', 'loop saw cut', 'home run saw cut'] as const)
      expect(units.get(what)).toBe('m');
    expect(units.get('sealant')).toBe('m3');
    expect(units.get('sawing')).toBe('h');
    expect(units.get('splice kit')).toBe('each');
  });

  it('leaves waste, overcuts and what twisting takes up out of the totals, but not out of the lines', () => {
    const line = (what: string) => found.lines.find((each) => each.what === what)!;
    expect(amount(found, 'L1', 'twist take-up')).toBeGreaterThan(0);
    expect(amount(found, 'L1', 'overcut')).toBeGreaterThan(0);
    // 5 % of wire, 15 % of sealant: the usual waste of the catalogue
    expect(line('loop wire').gross).toBeCloseTo(21.6 * 1.05, 9);
    expect(line('sealant').gross).toBeCloseTo(found.sealant_m3 * 1.15, 12);
  });
});

describe('slots that two cells share', () => {
  it('are cut once in a quadrupole and hold both cells’ wire', () => {
    const shape = { kind: 'quadrupole', centre: [0, 0], width: 1.8, length: 6 };
    const found = quantitiesOf([loop('L1', shape, { turns: 2 })]);
    expect(found.sawCut_m).toBeCloseTo(2 * (1.8 + 6) + 6, 9);
    expect(found.wire_m).toBeCloseTo(2 * (2 * (1.8 + 6) + 2 * 6), 9);
  });

  it('are cut once in a diagonal', () => {
    const found = quantitiesOf([
      loop('L1', { kind: 'diagonal', centre: [0, 0], width: 3, length: 4 }, { turns: 1 })
    ]);
    expect(found.sawCut_m).toBeCloseTo(14 + 5, 9);
    expect(found.wire_m).toBeCloseTo(14 + 10, 9);
  });
});

describe('odd drawings', () => {
  it('cut a drawn tail’s way without its slack and depth, and count all cables of a lead-in', () => {
    const site = siteOf({
      marks: [
        { id: 'm1', kind: 'pull-box', points: [[4, 0]] },
        { id: 'm2', kind: 'cabinet', points: [[9, 0]] }
      ],
      loops: [loop('L1', square(0, 0), { tail: { length: 0, route: { to: 'm1', allowance: 1.5 } } })],
      circuits: [
        circuit('C1', ['L1'], {
          leadIn: { cable: 'pair-14', length: 5, further: [{ cable: 'pair-16', length: 7 }] }
        })
      ],
      units: [unit('U1')]
    });
    const found = createAssessor().assess(site, 'prepared').quantities!;
    // from a corner, 3.1 m to the side and 0.9 m up or down, to the box
    const way = Math.hypot(3.1, 0.9);
    expect(amount(found, 'L1', 'home run saw cut')).toBeCloseTo(way, 9);
    expect(amount(found, 'L1', 'tail wire')).toBeCloseTo(2 * way, 6);
    expect(amount(found, 'L1', 'tail slack')).toBeCloseTo(2 * 1.5, 9);
    expect(found.wire_m).toBeCloseTo(3 * 7.2 + 2 * way + 3, 6);
    expect(found.leadIn_m).toBeCloseTo(12, 12);
  });

  it('leave out lines of nothing: no tail, no lead-in', () => {
    const found = quantitiesOf(
      [loop('L1', square(0, 0))],
      [circuit('C1', ['L1'], { leadIn: { cable: 'pair-14', length: 0 } })]
    );
    const kinds = found.lines.map(({ what }) => what);
    expect(kinds).toEqual(expect.arrayContaining(['loop wire', 'loop saw cut', 'sealant']));
    for (const none of ['tail wire', 'tail slack', 'home run saw cut', 'lead-in', 'splice kit', 'pulling'])
      expect(kinds).not.toContain(none);
    expect(found.lines.every((line) => line.amount > 0)).toBe(true);
    expect(found.leadIn_m).toBe(0);
  });

  it('never ask for less than no sealant where the wires fill the slot', () => {
    const found = quantitiesOf([
      loop('L1', square(0, 0), { turns: 20, slot: { depth: 0.02, width: 0.004 } })
    ]);
    expect(found.sealant_m3).toBe(0);
  });

  it('of no loops are nothing', () => {
    const nothing = {
      wire_m: 0,
      sawCut_m: 0,
      sealant_m3: 0,
      leadIn_m: 0,
      crew_h: 0,
      work_h: 0,
      cost: 0,
      lines: []
    };
    expect(quantitiesOf([])).toMatchObject(nothing);
  });
});
