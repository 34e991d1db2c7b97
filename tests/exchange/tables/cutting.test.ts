import { describe, expect, test } from 'vitest';
import { namedCuttingPlan } from '#exchange/sheet/parts/cutting-plan';
import { cuttingFileTables, cuttingTables } from '#exchange/tables/cutting';
import type { Site } from '#plan/schema';
import { loop, siteOf, square } from '../../analysis/support/sites';
import { sample } from '../sheet/sites';

const tablesOf = (site: Site) => cuttingTables(site, namedCuttingPlan(site));

describe('the cutting plan as tables', () => {
  // its kerb begins eight metres before the plan on the sheet does: the gate, 16 m on, is found all the same
  test('says where the things of the site lie on the line that is measured from', () => {
    const tables = tablesOf(sample('driveway-gate.kerfline.json'));
    expect(tables.map(({ title }) => title)).toEqual([
      'Cutting plan',
      'Reference points',
      'Way of the blade'
    ]);
    const { columns, rows } = tables[1]!;
    expect(columns.map(({ head }) => head)).toEqual(['Reference point', 'Start, station (m)', 'Start, offset (m)', 'End, station (m)', 'End, offset (m)']); // prettier-ignore
    const gate = rows.find(([name]) => name === 'Gate')!;
    expect(gate[1]).toBeCloseTo(16, 9);
    expect(gate[3]).toBeCloseTo(16, 9);
    const box = rows.find(([name]) => name === 'Pull box')!;
    expect(box.slice(3)).toEqual([null, null]);
    const stations = rows.map(([, station]) => station as number);
    expect(stations).toEqual(stations.toSorted((a, b) => a - b));
  });

  test('has none of them where there is no line to measure from', () => {
    const site = { ...sample('driveway-gate.kerfline.json'), lanes: [], circuits: [] };
    const bare = { ...site, marks: site.marks.filter(({ kind }) => kind === 'pull-box') };
    expect(tablesOf(bare).map(({ title }) => title)).toEqual(['Cutting plan', 'Way of the blade']);
  });

  // 4 m are sawn for each; a file that left them out would say less than the blade travels
  test('has in a file the home runs that nobody drew, and what to mind', () => {
    const site = siteOf({ loops: [loop('L1', square(0, 0), { name: 'Front', tail: { length: 4 } }), loop('L2', square(0, 1.9), { tail: { length: 3 } })] }); // prettier-ignore
    const tables = cuttingFileTables(site, namedCuttingPlan(site));
    expect(tables.map(({ title }) => title)).toEqual(['Cutting plan', 'Home runs that are not drawn', 'Way of the blade']); // prettier-ignore
    const [cuts, runs, blade] = tables;
    expect(runs!.rows).toEqual([['Front', 4, 50, 8], ['L2', 3, 50, 8]]); // prettier-ignore
    const at = (head: string) => cuts!.columns.findIndex((column) => column.head === head);
    const drawn = cuts!.rows.reduce((sum, row) => sum + (row[at('Length of the cut (m)')] as number), 0);
    expect(blade!.rows[0]![2]).toBeCloseTo(drawn + 7, 9);
    expect(blade!.notes).toEqual([expect.stringContaining('4 (Front, L2)')]);
    // on a sheet they are sentences
    expect(tablesOf(site).map(({ title }) => title)).toEqual(['Cutting plan', 'Way of the blade']);
  });
});
