import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { reportCsv } from '#exchange/report-csv';
import type { PartialReport } from '#exchange/report';

const withFinding = (message: string): PartialReport => ({
  site: 'S',
  file: '=cmd|x',
  findings: [{ severity: 'note', code: 'x', subject: 'L1', selects: ['L1', 'L2'], message, advice: '' }]
});

describe('reportCsv', () => {
  it.each(['=1+1', '+1', '-1', '@x', ' =1+1', '\n=1+1', '\u202E=1+1', '\uFF1D1+1'])(
    'defuses text that begins with a formula sign: %j',
    (text) => {
      const rows = Papa.parse<string[]>(reportCsv([withFinding(text)]).trimEnd()).data;
      const message = rows.find((row) => row[3] === 'message')!;
      expect(message[4]).toBe(`'${text}`);
      expect(message[0]).toBe("'=cmd|x");
    }
  );

  it('leaves negative numbers numbers', () => {
    const csv = reportCsv([
      { site: 'S', file: 'f', couplings: [{ a: 'L1', b: 'L2', mutual_H: -2.5e-7, k: -0.003 }] }
    ]);
    expect(csv).toContain('f,couplings,L1 + L2,mutual_H,-2.5e-7\r\n');
  });

  it('quotes commas, quotes and line breaks as RFC 4180 says', () => {
    const text = 'a, "b"\nc';
    const csv = reportCsv([withFinding(text)]);
    expect(csv).toContain('"a, ""b""\nc"');
    expect(Papa.parse<string[]>(csv).data.find((row) => row[3] === 'message')![4]).toBe(text);
  });

  it('names what a nested row is about', () => {
    const csv = reportCsv([
      {
        site: 'S',
        file: 'f',
        probes: [
          {
            vehicle: 'car',
            at: [1, 2],
            circuits: [{ id: 'C1', deltaL_H: -1e-6, deltaLOverL: -0.01, deltaF_Hz: 200, detected: true }],
            loops: []
          }
        ]
      }
    ]);
    expect(csv).toContain('f,probes,car #1 C1,circuits.deltaLOverL,-0.01\r\n');
    expect(csv).toContain('f,probes,car #1,at,1 2\r\n');
  });
});
