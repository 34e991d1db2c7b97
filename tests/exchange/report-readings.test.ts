import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readingsReportInSteps, type VisitReport } from '#analysis/fault-finding/readings-report';
import type { Diagnosis } from '#analysis/fault-finding/results';
import { createAssessor } from '#analysis/assess';
import { finish } from '#analysis/steps';
import { onlySection, reportOf } from '#exchange/report';
import { reportCsv } from '#exchange/report-csv';
import { readingsOfReport } from '#exchange/report-readings';
import { reportText } from '#exchange/report-text';
import { demoSite } from '#plan/demo';
import { checkedAsIf, checkedSite } from '../support/field-check';

const site = checkedSite();
const [circuit] = site.circuits;
/** Places of the first circuit's readings: two of the day, one of a year later. */
const DAY = [1, 0];

const diagnosis: Diagnosis = {
  circuit: circuit!.id,
  figures: checkedAsIf(site)[0]!
    .measured.filter(({ reading }) => DAY.includes(reading))
    .map((figure) => ({ ...figure, meterDeviation: 0.01, doubt: null })),
  causes: [
    {
      faults: [
        {
          kind: 'short in lead-in',
          subject: circuit!.id,
          estimates: [{ name: 'distance_m', value: 12, low: 10, high: 14 }]
        },
        { kind: 'wet splice', subject: null, estimates: [] }
      ],
      probability: 0.75,
      evidence: [
        { figure: 0, told: { key: 'doubt.meant', values: { value: 'a', other: 'b' } }, weight: 2.5 }
      ],
      predicted: [],
      remedy: { key: 'doubt.under', values: { value: 'a', other: 'b' } }
    }
  ],
  next: [],
  distances: [
    {
      from: 'resistance',
      distance_m: 12,
      low: 10,
      high: 14,
      total_m: 20,
      told: { key: 'doubt.over', values: { value: 'a', other: 'b' } }
    }
  ],
  fits: false,
  assumptions: []
};
const visits: readonly VisitReport[] = [
  { circuit: circuit!.id, day: '2031-05-04', readings: DAY, diagnosis }
];
const report = onlySection(
  reportOf(site, '=site.json', createAssessor().assess(site, 'prepared'), visits),
  'readings'
);

describe('readings in the report', () => {
  const [visit] = readingsOfReport(site, visits);

  it('stand by circuit and visit under the name of their quantity, with its unit', () => {
    expect(visit).toMatchObject({ circuit: circuit!.id, day: '2031-05-04', fits: false });
    const [cabinet, loop] = visit!.readings;
    expect(cabinet).toMatchObject({ id: 'R1b', testPoint: 'cabinet', loop: null, isCommissioning: true });
    expect(cabinet!.inductance_H).toMatchObject({ measured: 9.9e-5, expected: 1e-4, verdict: 'fits' });
    expect(cabinet!.insulation_ohm).toMatchObject({ measured: null, expected: null, deviations: null });
    expect(loop).toMatchObject({ id: 'R1a', testPoint: 'loop', temperature_C: 18 });
  });

  it('name their causes with estimates, and the evidence in words', () => {
    const [cause] = visit!.causes;
    expect(cause!.probability).toBe(0.75);
    expect(cause!.faults).toEqual([
      { kind: 'short in lead-in', subject: circuit!.id, distance_m: { value: 12, low: 10, high: 14 } },
      { kind: 'wet splice', subject: null }
    ]);
    expect(cause!.evidence[0]).toMatchObject({
      testPoint: 'loop',
      quantity: 'resistanceDc_ohm',
      weight: 2.5,
      text: 'a does not fit, b would. Was that meant?'
    });
    expect(visit!.distances).toEqual([
      { from: 'resistance', distance_m: { value: 12, low: 10, high: 14 }, leadIn_m: 20 }
    ]);
  });

  it('are one block of figures and one of causes for people', () => {
    const text = reportText(report, 'metric');
    expect(text).toMatch(/C1 +2031-05-04 +cabinet +L +99\.00 µH +100\.0 µH +95\.00 µH … 105\.0 µH/);
    expect(text).toMatch(/75\.0 % +short in lead-in \(C1\) and wet splice/);
    expect(text).toMatch(/resistance +12\.00 m +10\.00 m … 14\.00 m +20\.00 m/);
    expect(text).not.toContain('Was that meant');
  });

  it('are rows of the long table, without sentences', () => {
    const rows = Papa.parse<string[]>(reportCsv([report]).trimEnd()).data;
    const value = (subject: string, quantity: string) =>
      rows.find((row) => row[2] === subject && row[3] === quantity)?.[4];
    expect(value('C1 2031-05-04 R1b', 'readings.inductance_H.measured')).toBe('0.000099');
    expect(value('C1 2031-05-04 1', 'causes.probability')).toBe('0.75');
    expect(rows.some((row) => row[3]?.includes('evidence') || row[3]?.includes('remedy'))).toBe(false);
    expect(rows.slice(1).every(([file]) => file === "'=site.json")).toBe(true);
  });

  it('are none on a site on which nothing was read', () => {
    const bare = demoSite();
    expect(finish(readingsReportInSteps(bare))).toEqual([]);
    const none = reportOf(bare, 'f', createAssessor().assess(bare, 'prepared'), []);
    expect(none.readings).toEqual([]);
    expect(reportText(onlySection(none, 'readings'), 'metric')).toMatch(/Readings\n {2}none/);
  });
});
