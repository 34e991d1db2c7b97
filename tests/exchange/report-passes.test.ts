/** Vehicles that pass, heights and calls, as text and as rows. */
import { describe, expect, it } from 'vitest';
import type { CallSummary } from '#analysis/calls/results';
import type { DetectionHeight, PassReadout } from '#analysis/passing/results';
import type { Report } from '#exchange/report';
import { reportCsv } from '#exchange/report-csv';
import { reportText } from '#exchange/report-text';
import { report as ran } from '../cli/command';

const pass: PassReadout = {
  circuit: 'C1',
  vehicle: 'car',
  lane: 'out',
  isServed: true,
  wanted: true,
  offset_m: -0.95,
  response: 0.0123,
  at: [-0.95, 2],
  heading: 90,
  margin: 8.2,
  detections: 2,
  zone: { length_m: 5.25, from: [-0.95, -2], to: [-0.95, 3.25] },
  gaps: [{ at: [-0.95, 0.4], response: 0.0002, length_m: 0.8 }]
};
const beside: PassReadout = {
  ...pass,
  lane: 'in',
  isServed: false,
  wanted: false,
  response: 0.0001,
  margin: null,
  detections: 0,
  zone: null,
  gaps: []
};
const heights: readonly DetectionHeight[] = [
  { circuit: 'C1', loop: 'L1', height_m: 1.57, ruleOfThumb_m: 1.2 },
  { circuit: 'C1', loop: 'L2', height_m: null, ruleOfThumb_m: 0.4 }
];
const calls: readonly CallSummary[] = [
  {
    circuit: 'C1',
    vehicles: 12,
    calls: 11,
    missed: 1,
    merged: 2,
    split: 3,
    false: 4,
    occupancy: 0.25,
    trueOccupancy: 0.231
  }
];
const passes = [pass, beside].map((each) => ({ ...each, deltaLOverL: -each.response }));
const report = { site: 'S', file: 'f', passes, detectionHeights: heights, calls };
const words = (line: string): string[] => line.trim().split(/\s{2,}/);

describe('passes in the text report', () => {
  const lines = reportText(report, 'metric').split('\n');
  const after = (title: string): string[] => lines.slice(lines.indexOf(title) + 2);

  it('stand path by path', () => {
    const [over, next] = after('Vehicles along the lanes, path by path');
    expect(words(over!)).toEqual(['C1', 'car', 'out', '−0.95 m', '1.23 %', '8.20', '2', '5.25 m']);
    expect(words(next!).slice(2)).toEqual(['in (next lane)', '−0.95 m', '0.0100 %', '–', '0', '–']);
  });

  it('name the height of detection beside the rule of thumb', () => {
    const [first, second] = after('Height up to which a plate of a car makes a call');
    expect(words(first!)).toEqual(['C1', 'L1', '1.57 m', '1.20 m']);
    expect(words(second!).slice(2, 3)).toEqual(['none']);
  });

  it('set calls beside what happened', () => {
    const [row] = after('Calls with the traffic of the site');
    expect(words(row!)).toEqual(['C1', '12', '11', '1', '2', '3', '4', '25.0 %', '23.1 %']);
  });

  it('say that there is no traffic', () => {
    expect(reportText({ site: 'S', file: 'f', calls: [] }, 'metric')).toContain('no traffic on this site');
  });
});

describe('passes in the table', () => {
  const csv = reportCsv([report]);

  it('tell every path of every vehicle from the others', () => {
    expect(csv).toContain('f,passes,C1 car out -0.95 m,response,0.0123\r\n');
    expect(csv).toContain('f,passes,C1 car in -0.95 m,response,0.0001\r\n');
    expect(csv).toContain('f,passes,C1 car out -0.95 m,deltaLOverL,-0.0123\r\n');
    expect(csv).toContain('f,passes,C1 car out -0.95 m,zone.length_m,5.25\r\n');
    expect(csv).toContain('f,detectionHeights,C1 L1,height_m,1.57\r\n');
    expect(csv).toContain('f,calls,C1,missed,1\r\n');
  });
});

describe('the report as a document', () => {
  it('carries passes, heights and calls of a whole site, drops negative', async () => {
    const { out } = await ran('samples/calls-that-miscount.kerfline.json');
    const whole = JSON.parse(out.toString()) as Report;
    const twice = whole.passes.filter(({ detections }) => detections > 1);
    expect(new Set(twice.map(({ vehicle }) => vehicle))).toEqual(new Set(['lorry-articulated']));
    for (const each of whole.passes) expect(each.deltaLOverL).toBe(-each.response);
    expect(whole.detectionHeights).toHaveLength(4);
    expect(whole.calls.map(({ circuit }) => circuit)).toEqual(['C1', 'C2', 'C3', 'C4']);
    // the same numbers in the findings
    const c1 = whole.calls[0]!;
    const finding = whole.findings.find(({ code, subject }) => code === 'miscounts' && subject === 'C1')!;
    expect(finding.message).toContain(`${c1.calls} calls for ${c1.vehicles} vehicles: ${c1.split} called`);
  }, 60_000);
});
