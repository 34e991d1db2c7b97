import { afterEach, describe, expect, test } from 'vitest';
import type { Takeoff, TakeoffItem, TakeoffLine } from '#analysis/takeoff/results';
import { unwatched } from '#exchange/job';
import { csvOf } from '#exchange/tables/csv';
import type { Cell, Table } from '#exchange/tables/table';
import { costTable, itemsTable, takeoffTable } from '#exchange/tables/takeoff';
import { speakWhole } from '#i18n/whole';
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';

const metric = demoSite();
const imperial: Site = { ...metric, displayUnits: 'imperial' };
const [loop] = metric.loops;

const line = (more: Partial<TakeoffLine>): TakeoffLine => ({
  id: 'x',
  subject: loop!.id,
  what: 'loop wire',
  group: 'wire',
  item: 'wire:awg14',
  amount: 24,
  unit: 'm',
  waste: 0.05,
  gross: 25.2,
  how: {
    key: 'loopWire',
    values: { turns: { value: 3, kind: 'count' }, turn: { value: 8, kind: 'length' } }
  },
  places: [],
  ...more
});
const bought = (more: Partial<TakeoffItem>): TakeoffItem => ({
  item: 'wire:awg14',
  group: 'wire',
  unit: 'm',
  amount: 24,
  gross: 25.2,
  pack: 100,
  packs: null,
  bought: 25.2,
  price: 0.85,
  cost: 21.42,
  copper_kg: 2,
  ...more
});
const takeoff = (more: Partial<Takeoff> = {}): Takeoff => ({
  lines: [line({})],
  items: [bought({})],
  currency: 'EUR',
  cost: 21.42,
  contingency: 0.1,
  costWithContingency: 23.562,
  unpriced: [],
  hours: 0,
  cautions: [],
  ...more
});

/** The cell of a row under a head. */
function under(table: Table, head: string, row: readonly Cell[] | undefined = table.rows[0]): Cell {
  const at = table.columns.findIndex((column) => column.head === head);
  expect(at, `${head} in ${table.columns.map((column) => column.head).join(', ')}`).toBeGreaterThanOrEqual(0);
  return row?.[at] ?? null;
}

afterEach(() => {
  speakWhole('en');
});

describe('the take-off', () => {
  test('names what a line is for and says how it came about', () => {
    const table = takeoffTable(metric, takeoff());
    expect(under(table, 'For')).toBe(loop!.name);
    expect(under(table, 'What')).toBe('Wire in the loop');
    expect(under(table, 'Amount')).toBe(24);
    expect(under(table, 'With waste')).toBe(25.2);
    expect(under(table, 'Waste (%)')).toBe(5);
    expect(under(table, 'Unit of amounts')).toBe('m');
    expect(under(table, 'How it came about')).toBe('3 × 8.00 m: turns in the slot');
  });

  // 0.3048 m to a foot, 231 in³ of 25.4 mm to a gallon
  test.each([
    [metric, 'm', 24, 'm'],
    [imperial, 'm', 24 / 0.3048, 'ft'],
    [metric, 'm3', 24_000, 'L'],
    [imperial, 'm3', 24 / (231 * 0.0254 ** 3), 'gal'],
    [imperial, 'each', 24, 'pieces'],
    [metric, 'h', 24, 'h'],
    [metric, 'day', 24, 'days']
  ] as const)('shows amounts in the units shown: %#', (site, unit, amount, symbol) => {
    const table = takeoffTable(site, takeoff({ lines: [line({ unit })] }));
    expect(under(table, 'Amount')).toBeCloseTo(amount, 9);
    expect(under(table, 'Unit of amounts')).toBe(symbol);
  });

  test.each([
    ['', 'the whole site'],
    [metric.circuits[0]!.id, metric.circuits[0]!.name],
    ['gone', 'gone']
  ])('is for %j: %s', (subject, name) => {
    expect(under(takeoffTable(metric, takeoff({ lines: [line({ subject })] })), 'For')).toBe(name);
  });

  test('tells boxes without a name apart, as the plan and the cutting plan do', () => {
    const box = (id: string) => ({ id, kind: 'pull-box' as const, points: [[9, 9]] as [number, number][] });
    const site = { ...metric, marks: [box('m1'), box('m2'), { ...box('m3'), text: 'North' }] };
    const named = (subject: string) => under(takeoffTable(site, takeoff({ lines: [line({ subject })] })), 'For'); // prettier-ignore
    expect(['m1', 'm2', 'm3'].map(named)).toEqual(['Pull box 1', 'Pull box 2', 'North']);
  });

  test('speaks German', () => {
    speakWhole('de');
    const table = takeoffTable(metric, takeoff());
    expect(table.title).toBe('Mengenermittlung');
    expect(under(table, 'Wie es zustande kam')).toMatch(/^3 × 8,00 m: Windungen/);
  });
});

describe('what is bought', () => {
  test('costs what the price book says, and adds up', () => {
    const table = itemsTable(metric, takeoff());
    expect(under(table, 'Price for one unit (EUR)')).toBe(0.85);
    expect(under(table, 'Cost (EUR)')).toBe(21.42);
    expect(under(table, 'Cost (EUR)', table.totals)).toBe(21.42);
    expect(under(table, 'Copper (kg)', table.totals)).toBe(2);
  });

  test('has prices and weights in the units shown; the cost stays', () => {
    const table = itemsTable(imperial, takeoff());
    expect(under(table, 'Price for one unit (EUR)')).toBeCloseTo(0.85 * 0.3048, 9);
    expect(under(table, 'Copper (lb)')).toBeCloseTo(2 / 0.45359237, 9);
    expect(under(table, 'Cost (EUR)')).toBe(21.42);
  });

  // 24 m and 7.5 % are 25.8 m; and 8 % would be 25.92 m
  test('says a waste of half a percent as it is', async () => {
    const written = async (waste: number) =>
      (await csvOf([takeoffTable(metric, takeoff({ lines: [line({ waste, gross: 24 * (1 + waste) })] }))], {}, unwatched())).split('\r\n')[1]; // prettier-ignore
    expect(await written(0.075)).toContain(',24.00,7.5,25.80,m,');
    expect(await written(0.05)).toContain(',24.00,5,25.20,m,');
  });

  // a cartridge of 300 mL is 0.0792516 gal, 0.85 a metre 0.25908 a foot: 0.08 · 92 would be 7.36 where 7.29 is bought
  test('has factors with as many places as the product needs', async () => {
    const items = [
      bought({ packs: 3, bought: 300, cost: 255 }),
      bought({ item: 'sealant', group: 'sealant', unit: 'm3', pack: 0.3e-3, packs: 92, bought: 92 * 0.3e-3, price: 9_000, cost: 248.4 }) // prettier-ignore
    ];
    const [head, wire, sealant] = (await csvOf([itemsTable(imperial, takeoff({ items }))], {}, unwatched())).split('\r\n').map((row) => row.split(',')); // prettier-ignore
    const of = (row: readonly string[] | undefined, name: string) => row![head!.indexOf(name)];
    expect(of(wire, 'Pack')).toBe('328.08');
    expect(of(wire, 'Price for one unit (EUR)')).toBe('0.25908');
    expect(of(sealant, 'Pack')).toBe('0.079252');
    expect(Number(of(sealant, 'Pack')) * 92).toBeCloseTo(Number(of(sealant, 'To buy')), 2);
    const usual = itemsTable(metric, takeoff({ items: [bought({ packs: 1, bought: 100 })] }));
    expect(await csvOf([usual], {}, unwatched())).toMatch(/,100\.00,1,100\.00,m,0\.850,/);
  });

  test('shows packs only where whole ones are bought', () => {
    const heads = (table: Table) => table.columns.map(({ head }) => head);
    expect(heads(itemsTable(metric, takeoff()))).not.toContain('Packs');
    const table = itemsTable(metric, takeoff({ items: [bought({ packs: 1, bought: 100 })] }));
    expect([under(table, 'Pack'), under(table, 'Packs'), under(table, 'To buy')]).toEqual([100, 1, 100]);
  });

  test('says of every row what is bought where any is rounded up, else of none', () => {
    const pieces = bought({ item: 'backer', group: 'parts', unit: 'each', gross: 82.5, bought: 83 });
    const mixed = itemsTable(metric, takeoff({ items: [bought({}), pieces] }));
    expect(mixed.rows.map((row) => under(mixed, 'To buy', row))).toEqual([25.2, 83]);
    const heads = itemsTable(metric, takeoff()).columns.map(({ head }) => head);
    expect(heads).not.toContain('To buy');
  });

  test('says whole pieces as whole ones, a share of one as it is, and rounds nothing away', async () => {
    const rows = [
      bought({ item: 'backer', group: 'parts', unit: 'each', amount: 75, gross: 82.5, bought: 83 }),
      bought({ amount: 2, gross: 2.1, bought: 2.1 }),
      bought({ item: 'sealant', group: 'sealant', unit: 'm3', amount: 3e-6, gross: 3.4e-6, bought: 3.4e-6 })
    ].map((each) => ({ ...each, price: null, cost: null, copper_kg: null }));
    const csv = await csvOf([itemsTable(metric, takeoff({ items: rows }))], {}, unwatched());
    const cells = csv.split('\r\n').map((record) => record.split(','));
    const from = cells[0]!.indexOf('Amount');
    expect(cells.slice(1, 4).map((record) => record.slice(from, from + 3))).toEqual([
      ['75', '82.50', '83'],
      ['2.00', '2.10', '2.10'],
      ['0.0030', '0.0034', '0.0034']
    ]);
  });

  test('tells how many hours all people in the crew work together', () => {
    const crew = bought({ item: 'crew', group: 'crew', unit: 'h', amount: 4, gross: 4, copper_kg: null });
    const site = { ...metric, estimate: { ...metric.estimate, crewSize: 5 } };
    expect(under(itemsTable(site, takeoff({ items: [crew] })), 'Work of 5 people (h)')).toBe(20);
    const heads = itemsTable(site, takeoff()).columns.map(({ head }) => head);
    expect(heads.filter((head) => head.startsWith('Work'))).toEqual([]);
  });

  test('names what has no price, and then no sum is called whole', () => {
    const unpriced = bought({ item: 'sealant', price: null, cost: null });
    const found = takeoff({ items: [bought({}), unpriced], unpriced: ['sealant'] });
    expect(itemsTable(metric, found).notes!.at(-1)).toBe('Without a price, and in no sum: Sealant.');
    expect(costTable(found, 'metric')!.notes!).toHaveLength(1);
    expect(costTable(takeoff({ items: [unpriced], unpriced: ['sealant'] }), 'metric')).toBeNull();
  });

  test('is summed with and without contingency', () => {
    const { rows, columns } = costTable(takeoff(), 'metric')!;
    expect(columns[1]!.head).toBe('Cost (EUR)');
    expect(rows.map(([, amount]) => amount)).toEqual([21.42, 23.562 - 21.42, 23.562]);
    expect(rows[1]![0]).toBe('Contingency, 10.0 %');
  });
});
