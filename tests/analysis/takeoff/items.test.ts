/** What lines come to: packs, prices, contingency, weights, lines of the user's own, conduits. */
import { describe, expect, it } from 'vitest';
import { copperPerMetre } from '#analysis/takeoff/items';
import type { TakeoffItem } from '#analysis/takeoff/results';
import { circuit, loop, square } from '../support/sites';
import { amount, cabinet, box, linesOf, near, taken, total } from './lines';

const loops = [loop('L1', square(0, 0), { tail: { length: 4 } })];
const circuits = [circuit('C1', ['L1'])];
const item = ({ items }: ReturnType<typeof taken>, name: string): TakeoffItem =>
  items.find((each) => each.item === name)!;

// 21.6 m in the slot and 8 m of tail; no twisting; 5 % waste: 31.08 m
describe('wire by the roll', () => {
  const estimate = { twistsPerMetre: 0, waste: { wire: 0.05 } };

  it('is 29.6 m, with waste 31.08 m, and paid for as it is where no packs are asked for', () => {
    const wire = item(taken({ loops, circuits, estimate: { ...estimate, prices: [{ item: 'wire:awg14', price: 2 }] } }), 'wire:awg14'); // prettier-ignore
    expect(wire).toMatchObject({ pack: 100, packs: null, price: 2 });
    expect(wire.amount).toBeCloseTo(29.6, 9);
    expect(wire.gross).toBeCloseTo(31.08, 9);
    expect(wire.cost!).toBeCloseTo(62.16, 9);
  });

  it('is seven rolls of 5 m where they are: 35 m, 70', () => {
    const packs = [{ item: 'wire:awg14', size: 5 }];
    const prices = [{ item: 'wire:awg14', price: 2 }];
    const wire = item(taken({ loops, circuits, estimate: { ...estimate, packs, prices, wholePacks: true } }), 'wire:awg14'); // prettier-ignore
    expect(wire).toMatchObject({ pack: 5, packs: 7, bought: 35, cost: 70 });
  });

  it('is no roll more for what rounding leaves over: 29.6 m of two rolls of 14.8 m', () => {
    const packs = [{ item: 'wire:awg14', size: 14.8 }];
    const exact = { twistsPerMetre: 0, waste: { wire: 0 }, packs, wholePacks: true };
    expect(item(taken({ loops, circuits, estimate: exact }), 'wire:awg14').packs).toBe(2);
    // 31.08 m of 10.36 m, which as doubles is a little more than three
    const three = { ...estimate, packs: [{ item: 'wire:awg14', size: 10.36 }], wholePacks: true };
    expect(item(taken({ loops, circuits, estimate: three }), 'wire:awg14').packs).toBe(3);
  });

  it('sealant by the cartridge of 0.3 L: 4.144 L and 15 % are 4.766 L, 16 cartridges', () => {
    const found = taken({ loops, circuits, estimate: { overcuts: false, wholePacks: true } });
    expect(item(found, 'sealant').packs).toBe(16);
  });
});

/**
 * Copper by its density, 8.96 g/cm³ (handbook value, from memory): 14 AWG is 1.628 mm across (ASTM B258), 2.0816 mm², so
 * 18.651 g a metre, and a pair twice as much. Independent of it, from memory of common wire tables: 12.43 lb per 1000 ft of
 * bare 14 AWG, 18.50 g a metre, by the 8.89 g/cm³ that such tables use.
 */
describe('the weight of copper', () => {
  it('is 18.65 g a metre of 14 AWG, twice that of its pair', () => {
    const site = { wires: [], cables: [] };
    expect(copperPerMetre(site, 'wire:awg14')! * 1000).toBeCloseTo(18.651, 3);
    expect(copperPerMetre(site, 'cable:pair-14')! * 1000).toBeCloseTo(37.302, 3);
    const byTable = ((12.43 * 0.45359237) / 304.8) * (8.96 / 8.89);
    expect(copperPerMetre(site, 'wire:awg14')!).toBeCloseTo(byTable, 4);
  });

  it('follows the amount with waste, and is not known of what is no copper', () => {
    const found = taken({ loops, circuits });
    const wire = item(found, 'wire:awg14');
    expect(wire.copper_kg).toBeCloseTo(wire.gross * 0.0186512, 6);
    expect(item(found, 'sealant').copper_kg).toBeNull();
    expect(item(found, 'crew').copper_kg).toBeNull();
  });

  it('is not guessed for a cable that does not state its conductors', () => {
    const cables = [
      { id: 'own', resistancePerMetre_ohm: 0.01, inductancePerMetre_H: 7e-7, capacitancePerMetre_F: 8e-11 }
    ];
    const led = [circuit('C1', ['L1'], { leadIn: { cable: 'own', length: 10 } })];
    expect(item(taken({ loops, cables, circuits: led }), 'cable:own').copper_kg).toBeNull();
  });
});

describe('money', () => {
  it('is the sum of what has a price, with contingency on top; the rest is named', () => {
    const prices = [
      { item: 'saw:50x8', price: 10 },
      { item: 'crew', price: 100 }
    ];
    const found = taken({ loops, circuits, estimate: { prices, contingency: 0.2, currency: 'EUR', overcuts: false } }); // prettier-ignore
    // 11.2 m of cut
    expect(found.cost).toBeCloseTo(112 + Math.round(10_000 * found.hours) / 100, 9);
    expect(found.costWithContingency).toBeCloseTo(1.2 * found.cost, 2);
    expect(found.currency).toBe('EUR');
    expect(found.unpriced).toContain('wire:awg14');
    expect(found.unpriced).not.toContain('crew');
  });

  it('buys whole pieces, and adds up to what each item shows', () => {
    const prices = [
      { item: 'backer', price: 0.333 },
      { item: 'saw:50x8', price: 9.999 }
    ];
    // 11.2 m of slot, one every 0.6 m, a tenth more for waste
    const found = taken({ loops, circuits, estimate: { prices, overcuts: false, waste: { backer: 0.1 } } });
    const backer = item(found, 'backer');
    expect(backer.bought).toBe(Math.ceil(backer.gross));
    expect(backer.gross).not.toBe(backer.bought);
    expect(backer.cost).toBeCloseTo(Math.round(33.3 * backer.bought) / 100, 9);
    expect(item(found, 'saw:50x8').cost).toBe(111.99);
    expect(found.cost).toBeCloseTo(111.99 + backer.cost!, 9);
  });

  it('counts lines of the user’s own, by their own price or by the price book', () => {
    const extras = [
      { id: 'X1', name: 'Closing the lane', amount: 2, unit: 'day', price: 300 },
      { id: 'X2', name: 'Permit', amount: 1, unit: 'each' }
    ];
    const found = taken({ estimate: { extras, prices: [{ item: 'extra:X2', price: 80 }] } });
    expect(item(found, 'extra:X1')).toMatchObject({ amount: 2, unit: 'day', cost: 600, group: 'extra' });
    expect(found.cost).toBe(680);
    expect(found.unpriced).toEqual([]);
  });

  it('without any loop is nothing, not even setting up', () => {
    expect(taken({})).toMatchObject({ lines: [], items: [], cost: 0, hours: 0 });
  });
});

describe('conduits', () => {
  // cabinet 20 m from the box, lead-ins straight
  const marks = [box('m1', [0, 0]), cabinet('m2', [20, 0])];
  const route = { from: 'm1', to: 'm2', allowance: 0 };
  const led = (id: string, of: string): object =>
    circuit(id, [of], { leadIn: { cable: 'pair-14', length: 0, route }, channel: null });
  const two = {
    loops: [loop('L1', square(0, 9)), loop('L2', square(4, 9))],
    circuits: [led('C1', 'L1'), led('C2', 'L2')]
  };
  const drawn = { id: 'm3', kind: 'conduit', points: [[0, 0.1], [12, 0.1]] }; // prettier-ignore
  const conduit = { id: 'D1', circuits: ['C1', 'C2'], length: 20 };

  it('count as long as they are given, and as long as they are drawn', () => {
    expect(amount(taken({ ...two, marks, conduits: [conduit] }), 'D1', 'conduit')).toBe(20);
    expect(amount(taken({ ...two, marks: [...marks, drawn] }), 'm3', 'conduit')).toBeCloseTo(12, 9);
  });

  it('count once where both say the same: 12 m drawn and the 8 m that are left', () => {
    const found = taken({ ...two, marks: [...marks, drawn], conduits: [conduit] });
    expect(amount(found, 'm3', 'conduit')).toBeCloseTo(12, 9);
    expect(amount(found, 'D1', 'conduit')).toBeCloseTo(8, 9);
    expect(linesOf(found, 'D1', 'conduit')[0]!.how).toMatchObject({ key: 'conduitRest' });
  });

  // two pipes in one trench, of which one is drawn: 12 m drawn, 8 m of the first beyond them, 20 m of the second
  it('of which one is drawn count the other whole', () => {
    const each = (id: string, circuit: string) => ({ id, circuits: [circuit], length: 20 });
    const found = taken({ ...two, marks: [...marks, drawn], conduits: [each('D1', 'C1'), each('D2', 'C2')] });
    expect(['m3', 'D1', 'D2'].map((id) => amount(found, id, 'conduit'))).toEqual([12, 8, 20].map(near));
    const both = taken({
      ...two,
      marks: [...marks, drawn, { ...drawn, id: 'm4' }],
      conduits: [each('D1', 'C1'), each('D2', 'C2')]
    });
    expect(total(both, 'conduit')).toBeCloseTo(40, 9);
  });

  it('are cut to length: 20 m and 5 % are 21 m', () => {
    const [line] = linesOf(taken({ ...two, marks, conduits: [conduit], estimate: { waste: { conduit: 0.05 } } }), 'D1', 'conduit'); // prettier-ignore
    expect(line!.gross).toBeCloseTo(21, 9);
  });

  it('count twice where they are two: the drawn one is elsewhere', () => {
    const elsewhere = { ...drawn, points: [[0, 5], [12, 5]] }; // prettier-ignore
    const found = taken({ ...two, marks: [...marks, elsewhere], conduits: [conduit] });
    expect(amount(found, 'D1', 'conduit')).toBe(20);
  });
});
