import { describe, expect, test } from 'vitest';
import { namedCuttingPlan } from '#exchange/sheet/parts/cutting-plan';
import { cuttingTables } from '#exchange/tables/cutting';
import type { Site } from '#plan/schema';
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
});
