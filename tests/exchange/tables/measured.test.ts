import { describe, expect, it } from 'vitest';
import { acceptanceTable, measuredTable, measuredTables } from '#exchange/tables/measured';
import type { Table } from '#exchange/tables/table';
import { demoSite } from '#plan/demo';
import { acceptCircuit } from '#plan/edits/record';
import { checkedAsIf, checkedSite } from '../../support/field-check';

const site = checkedSite();
const table = measuredTable(site, checkedAsIf(site));

const at = (from: Table, head: string) => {
  const place = from.columns.findIndex((column) => column.head === head);
  if (place < 0) throw new Error(`there is no column ${head}`);
  return place;
};
const rowOf = (quantity: string, when: string, place: string) =>
  table.rows.find(
    (row) =>
      row[at(table, 'Quantity')] === quantity &&
      row[at(table, 'When')] === when &&
      row[at(table, 'Where')] === place
  )!;
const cell = (row: readonly unknown[], head: string) => row[at(table, head)];

describe('the table of measured readings', () => {
  it('has a row for every figure that was read', () => {
    const figures = site.circuits.length * (3 + 4 + 2);
    expect(table.rows).toHaveLength(figures);
  });

  it('names the unit of its row, beside what was expected and the verdict', () => {
    const row = rowOf('Inductance at 20 kHz', '2031-05-04 10:20', 'Cabinet');
    expect(cell(row, 'Unit of figures')).toBe('µH');
    expect(cell(row, 'Measured')).toBe(99);
    expect(cell(row, 'Expected')).toBe(100);
    expect(cell(row, 'Expected, from')).toBe(95);
    expect(cell(row, 'Expected, to')).toBe(105);
    expect(cell(row, 'Verdict')).toBe('fits');
    expect(cell(row, 'Initials')).toBe('RM');
    expect(cell(row, 'Weather')).toBe('dry');
    expect(cell(row, 'Instruments')).toBe('Bridge 12, Insulation tester 3');
  });

  it('says of a figure beyond the range of the meter that it was, and gives none', () => {
    const row = rowOf('Insulation to ground', '2031-05-04 10:20', 'Cabinet');
    expect(cell(row, 'Measured')).toBeNull();
    expect(cell(row, 'Over range')).toBe('yes');
    expect(cell(row, 'Limit')).toBe('at least 50 MΩ');
  });

  it('keeps the kilohms of a bad leak, in megohms like any other insulation', () => {
    const [circuit] = site.circuits;
    const bad = { circuit: circuit!.id, testPoint: 'cabinet' as const, insulation_ohm: 4_200 };
    const leaky = { ...demoSite(), readings: [bad] };
    const leaks = measuredTable(leaky, checkedAsIf(leaky));
    const [row] = leaks.rows;
    expect([row![at(leaks, 'Measured')], row![at(leaks, 'Unit of figures')]]).toEqual([0.0042, 'MΩ']);
  });

  it('tells the drift against the commissioning reading, at the temperature of then', () => {
    const row = rowOf('Direct-current resistance', '2032-06-11 08:05', 'Cabinet');
    // copper: 1 + 0.00393 (t − 20 °C); 2.6 Ω at 24 °C is less at 18 °C
    const then = (2.6 * (1 + 0.00393 * (18 - 20))) / (1 + 0.00393 * (24 - 20));
    expect(cell(row, 'Drift since commissioning')).toBeCloseTo(then - 0.93, 2);
    expect(cell(row, 'Drift, share (%)')).toBeCloseTo((100 * (then - 0.93)) / 0.93, 0);
    expect(cell(row, 'Commissioning')).toBe('no');
    expect(cell(row, 'Verdict')).toBe('high');
    const commissioned = rowOf('Direct-current resistance', '2031-05-04 10:20', 'Cabinet');
    expect(cell(commissioned, 'Drift since commissioning')).toBeNull();
  });

  it('turns a stored change of −3 % into a drop of 3 %, its range with it', () => {
    const [circuit] = site.circuits;
    const dropped = {
      ...demoSite(),
      readings: [
        {
          circuit: circuit!.id,
          testPoint: 'unit' as const,
          vehicle: circuit!.detect[0]!,
          deltaLOverL: -0.031
        }
      ]
    };
    const checked = checkedAsIf(dropped).map((each) => ({
      ...each,
      measured: each.measured.map((figure) => ({
        ...figure,
        expected: each.figures.find(({ vehicle }) => vehicle === circuit!.detect[0])!
      }))
    }));
    const drops = measuredTable(dropped, checked);
    const [row] = drops.rows;
    const of = (head: string) => row![at(drops, head)];
    expect([of('Measured'), of('Expected'), of('Expected, from'), of('Expected, to')]).toEqual([
      3.1, 3, 2.7, 3.3
    ]);
    expect(of('Unit of figures')).toBe('%');
    expect(of('Quantity')).toBe('−ΔL/L, Car');
  });

  it('is followed by how circuits were accepted, where that was decided', () => {
    expect(measuredTables(site, checkedAsIf(site)).map(({ title }) => title)).toEqual([
      'Measured',
      'Acceptance'
    ]);
    expect(measuredTables(demoSite(), checkedAsIf(demoSite()))).toHaveLength(1);
    const accepted = acceptanceTable(acceptCircuit(site, site.circuits[1]!.id, 'refused'));
    expect(accepted.rows.map((row) => [row[0], row[1]])).toEqual([
      [site.circuits[0]!.name, 'accepted with remarks'],
      [site.circuits[1]!.name, 'refused']
    ]);
  });
});
