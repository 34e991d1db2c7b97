/** The cutting plan and the quantities in all forms of the report. */
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { onlySection, reportJson, reportOf } from '#exchange/report';
import { reportCsv } from '#exchange/report-csv';
import { reportText } from '#exchange/report-text';
import { circuit, lane, loop, siteOf, square, unit } from '../analysis/support/sites';

const site = siteOf({
  name: 'Kiln Lane',
  lanes: [lane('lane1', 0, { name: 'Northbound' })],
  loops: [loop('L1', square(0, -5)), loop('L2', square(1.8, -5), { tail: { length: 4 } })],
  circuits: [circuit('C1', ['L1', 'L2'])],
  units: [unit('U1')],
  estimate: { currency: 'EUR', contingency: 0.2, prices: [{ item: 'saw:50x8', price: 10 }] }
});
const report = reportOf(site, 'kiln.json', createAssessor().assess(site, 'prepared'), []);
const rowsOf = (section: 'cutting' | 'quantities'): string[][] =>
  Papa.parse<string[]>(reportCsv([onlySection(report, section)]).trimEnd()).data;
const valueOf = (rows: string[][], subject: string, quantity: string): string | undefined =>
  rows.find((row) => row[2] === subject && row[3] === quantity)?.[4];

// 12.6 m for two squares side by side and 4 m of home run; ten ends at √(0.05 · 0.30)
const OVERCUT = 10 * Math.sqrt(0.05 * 0.3);

describe('the cutting plan in the report', () => {
  it('is a document with units in its names', () => {
    const { cutting } = JSON.parse(reportJson(report, 2)) as typeof report;
    expect(cutting.baseline).toBe('Northbound');
    expect(cutting.cuts).toHaveLength(7);
    expect(cutting.cuts.filter(({ sharedWith }) => sharedWith.length > 0)).toMatchObject([
      { loop: 'L1', sharedWith: ['L2'], kind: 'side', depth_m: 0.05, width_m: 0.008 }
    ]);
    const [first] = cutting.cuts;
    expect(first).toMatchObject({ id: 'L1/cut/1', order: 1, from: [-0.9, -5.9], to: [0.9, -5.9] });
    expect(first!.length_m).toBeCloseTo(1.8, 9);
    expect(first!.setOutFrom!.station_m).toBeCloseTo(14.1, 9);
    expect(first!.setOutFrom!.offset_m).toBeCloseTo(0.9, 9);
    expect(cutting.unplaced).toEqual([{ loop: 'L2', length_m: 4, depth_m: 0.05, width_m: 0.008 }]);
    expect(cutting.totals[0]!.length_m).toBeCloseTo(16.6, 9);
    expect(cutting.totals[0]!.overcut_m).toBeCloseTo(OVERCUT, 9);
  });

  it('is rows of a table', () => {
    const rows = rowsOf('cutting');
    expect(Number(valueOf(rows, 'L1/cut/1', 'cuts.setOutFrom.station_m'))).toBeCloseTo(14.1, 9);
    expect(valueOf(rows, 'L1/cut/1', 'cuts.kind')).toBe('side');
    expect(Number(valueOf(rows, '1', 'totals.length_m'))).toBeCloseTo(16.6, 9);
  });

  it('is read by people', () => {
    const text = reportText(onlySection(report, 'cutting'), 'metric');
    expect(text).toContain('Cutting plan, station / offset from Northbound');
    expect(text).toMatch(/^ {2}1 +L1 +side +14\.10 m \/ 0\.90 m +14\.10 m \/ −0\.90 m +1\.80 m/m);
    expect(text).toMatch(/^ {2}50 mm × 8 mm +16\.60 m +1\.225 m +17\.825 m/m);
    expect(text).toMatch(/^ {2}L2 +4\.00 m +50 mm × 8 mm/m);
    // 14.1 m / 0.3048 = 46.25984 ft
    expect(reportText(onlySection(report, 'cutting'), 'imperial')).toContain('46\'-3.118"');
  });

  // a lone loop on a plan without a lane still has to be found
  it('says the places of the plan where there is no line to measure from, and what to mind', () => {
    const bare = siteOf({ loops: [loop('L1', square(2, 5)), loop('L2', square(2, 6.9)), loop('L3', { kind: 'circle', centre: [8, 3], diameter: 1.8 })] }); // prettier-ignore
    const of = reportOf(bare, 'f', createAssessor().assess(bare, 'prepared'), []);
    const text = reportText(onlySection(of, 'cutting'), 'metric');
    expect(text).toContain('Cutting plan, x / y of the plan');
    expect(text).toMatch(/^ {2}1 +L1 +side +1\.10 m \/ 4\.10 m +2\.90 m \/ 4\.10 m +1\.80 m/m);
    expect(text).toMatch(/L3 +round +8\.00 m \/ 3\.00 m +radius 0\.90 m/);
    expect(of.cutting.cautions).toEqual([{ code: 'reach', message: expect.stringMatching(/: 4 \(L1, L2\)/) as unknown }]); // prettier-ignore
    expect(text).toMatch(/^ {2}! .*: 4 \(L1, L2\)/m);
    expect(report.cutting.cautions).toEqual([]);
  });

  it('is not broken, and no terminal is commanded, by what a site or a lane is called', () => {
    const harm = 'Quay\u001b[2J\r\n  !\u2028\u202Ewest';
    const named = { ...site, name: harm, lanes: site.lanes.map((each) => ({ ...each, name: harm })) };
    const of = reportOf(named, 'f', createAssessor().assess(site, 'prepared'), []);
    const lines = (each: typeof report) => reportText(onlySection(each, 'cutting'), 'metric').split('\n');
    expect(lines(of)).toHaveLength(lines(report).length);
    expect(lines(of)[0]).toBe('Quay [2J    ! west  (f)');
    expect(lines(of).join('')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}]/u);
  });

  it('of a site without anything to cut says so', () => {
    const empty = siteOf({});
    const none = reportOf(empty, 'f', createAssessor().assess(empty, 'prepared'), []);
    expect(reportText(onlySection(none, 'cutting'), 'metric')).toMatch(
      /without a baseline\n {2}nothing to cut/
    );
  });
});

describe('the quantities in the report', () => {
  it('have lines that say what, of which item, how much, with waste and what it costs', () => {
    const line = report.quantities.lines.find(({ id }) => id === 'L1/loop saw cut')!;
    expect(Object.keys(line)).toEqual(['id', 'subject', 'what', 'item', 'amount', 'unit', 'gross', 'cost']);
    expect(line).toMatchObject({ subject: 'L1', what: 'loop saw cut', item: 'saw:50x8', unit: 'm' });
    expect(line.amount).toBeCloseTo(7.2, 9);
    // its share of what all cuts cost, which is to the hundredth
    expect(line.cost).toBeCloseTo(72, 2);
    expect(report.quantities.lines.find(({ item }) => item === 'wire:awg14')!.cost).toBeNull();
  });

  it('count a shared slot once, and cost what has a price: 10 a metre of cut, overcuts too', () => {
    expect(report.quantities.sawCut_m).toBeCloseTo(16.6, 9);
    expect(report.quantities.cost).toBeCloseTo(Math.round(1000 * (16.6 + OVERCUT)) / 100, 9);
    expect(report.quantities.costWithContingency).toBeCloseTo(12 * (16.6 + OVERCUT), 1);
  });

  it('are read by people, with the currency', () => {
    const text = reportText(onlySection(report, 'quantities'), 'metric');
    expect(text).toMatch(/^ {2}L1 +loop saw cut +saw:50x8 +7\.20 m +7\.20 m +72\.00 EUR$/m);
    expect(text).toMatch(/^ {2}L1 +loop wire +wire:awg14 +21\.60 m +22\.68 m +no price$/m);
    expect(text).toMatch(/^ {2}total +saw cut +16\.60 m$/m);
    expect(text).toMatch(/^ {2}total +with 20(\.0+)? % contingency +213\.90 EUR$/m);
  });

  it('are rows of a table, one subject a line', () => {
    const rows = rowsOf('quantities');
    expect(Number(valueOf(rows, 'L1/loop saw cut', 'lines.amount'))).toBeCloseTo(7.2, 9);
    expect(valueOf(rows, 'L1/loop saw cut', 'lines.subject')).toBe('L1');
    expect(valueOf(rows, '', 'currency')).toBe('EUR');
  });
});
