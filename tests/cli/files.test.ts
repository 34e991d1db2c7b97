/** Files that the page makes too, from the command. */
import { mkdtempSync, readFileSync, existsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import readWorkbook from 'read-excel-file/node';
import { describe, expect, it } from 'vitest';
import { report } from './command';

const SAMPLE = 'samples/driveway-gate.kerfline.json';
const OTHER = 'samples/loading-bay-on-steel.kerfline.json';
const folder = mkdtempSync(join(tmpdir(), 'kerfline-files-'));

describe('files from the command line', () => {
  it.each([
    ['quantities', /^Table,Group,For,/],
    ['readings', /^Table,Loop,Circuit,/],
    ['cutting', /^Table,Cut no\.,Loop,/]
  ])('prints the table of %s, and writes the same bytes', async (only, head) => {
    const { code, out } = await report(SAMPLE, '--format', 'csv', '--only', only);
    expect(code).toBe(0);
    expect(out.toString()).toMatch(head);
    const path = join(folder, `${only}.csv`);
    expect(await report(SAMPLE, '--format', 'csv', '--only', only, '--output', path)).toMatchObject({
      code: 0,
      err: ''
    });
    expect(readFileSync(path).equals(out)).toBe(true);
  });

  it('prints the whole report as CSV without --only, as ever', async () => {
    const { out } = await report(SAMPLE, '--format', 'csv');
    expect(out.toString()).toMatch(/^file,section,subject,quantity,value\r\n/);
  });

  it('writes a workbook, and prints the same one', async () => {
    const path = join(folder, 'readings.xlsx');
    const words = [SAMPLE, '--format=xlsx', '--only=readings'];
    expect(await report(...words, `--output=${path}`)).toMatchObject({ code: 0, err: '' });
    const bytes = readFileSync(path);
    expect((await report(...words)).out.equals(bytes)).toBe(true);
    const sheets = await readWorkbook(bytes);
    expect(sheets.map(({ sheet }) => sheet)).toContain('Expected at the cabinet');
  });

  it('speaks German, with semicolons and a decimal comma', async () => {
    const text = (
      await report(SAMPLE, '--format', 'csv', '--only', 'cutting', '--language', 'de')
    ).out.toString();
    expect(text).toMatch(/^Tabelle;Schnitt Nr\.;Schleife;/);
    expect(text).toMatch(/;\d+,\d\d;/);
  });

  it('makes the sheet as PDF', async () => {
    const { code, out, err } = await report(SAMPLE, '--format', 'pdf');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out.subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('makes record and form as PDF, and the table of what was measured', async () => {
    const site = JSON.parse(readFileSync(SAMPLE, 'utf8')) as { circuits: { id: string }[] };
    const path = join(folder, 'read.kerfline.json');
    const reading = { circuit: site.circuits[0]!.id, testPoint: 'cabinet', resistanceDc_ohm: 1.25 };
    writeFileSync(path, JSON.stringify({ ...site, readings: [reading] }));
    for (const only of ['record', 'form']) {
      const { code, out, err } = await report(path, '--format', 'pdf', '--only', only);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out.subarray(0, 5).toString()).toBe('%PDF-');
    }
    const { code, out } = await report(path, '--format', 'csv', '--only', 'measured');
    expect(code).toBe(0);
    expect(out.toString()).toMatch(/^Table,Circuit,Where,/);
    expect(out.toString()).toMatch(/,Cabinet,.*,Ω,1\.25,/);
  });

  it('tells what was read as JSON and text, and what should be read as CSV', async () => {
    const path = join(folder, 'read.kerfline.json');
    const { out } = await report(path, '--only', 'readings');
    const { readings } = JSON.parse(out.toString()) as {
      readings: { readings: { resistanceDc_ohm: { measured: number; expected: number } }[] }[];
    };
    expect(readings).toHaveLength(1);
    const [figure] = readings[0]!.readings;
    expect(figure!.resistanceDc_ohm.measured).toBe(1.25);
    expect(figure!.resistanceDc_ohm.expected).toBeGreaterThan(0.01);
    expect((await report(path, '--only', 'readings', '--format', 'text')).out.toString()).toContain('1.25 Ω');
    expect((await report(path, '--only', 'readings', '--format', 'csv')).out.toString()).toMatch(
      /^Table,Loop,/
    );
  });

  it('says why a sheet cannot be made, and makes none', async () => {
    const site = JSON.parse(readFileSync(SAMPLE, 'utf8')) as object;
    const path = join(folder, 'too-large.kerfline.json');
    const sheet = { paper: 'A4', orientation: 'portrait', scale: 50 };
    writeFileSync(path, JSON.stringify({ ...site, sheet }));
    const to = join(folder, 'too-large.pdf');
    const { code, out, err } = await report(path, '--format', 'pdf', '--output', to);
    expect(code).toBe(2);
    expect(out).toHaveLength(0);
    expect(err).toMatch(/1:50/);
    expect(existsSync(to)).toBe(false);
  });

  it('refuses several sites for one file, and a place that it cannot write to', async () => {
    const several = await report(SAMPLE, OTHER, '--format', 'xlsx');
    expect(several).toMatchObject({ code: 2 });
    expect(several.out).toHaveLength(0);
    expect(several.err).toContain('found 2 files');
    const nowhere = await report(
      SAMPLE,
      '--format',
      'csv',
      '--only',
      'cutting',
      '--output',
      join(folder, 'no', 'x')
    );
    expect(nowhere).toMatchObject({ code: 2 });
    expect(nowhere.err).toMatch(/cannot be written \(ENOENT\)/);
  });
});
