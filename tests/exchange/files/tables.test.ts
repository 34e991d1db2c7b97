/** Files of tables of a site whose every name would do harm. */
import Papa from 'papaparse';
import readWorkbook from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { EXPORTERS } from '#exchange/files/index';
import type { Exported } from '#exchange/files/exported';
import { unwatched } from '#exchange/job';
import { clean } from '#exchange/sheet/text/clean';
import { HOSTILE, siteNamed } from '../../support/hostile-names';

const assessment = createAssessor().assess(siteNamed('any'), 'complete');
const surroundings = { typeface: () => Promise.reject(new Error('no paper is asked for')) };

async function exported(kind: keyof typeof EXPORTERS, name: string): Promise<Exported> {
  const make = await EXPORTERS[kind]();
  return make({ site: siteNamed(name), assessment, file: name }, surroundings, unwatched());
}

const NUMBER = /^-?\d+(\.\d+)?$/;
/** What a spreadsheet takes for the beginning of a formula; hidden characters and white space in front count for nothing. */
const runs = (cell: string) => !NUMBER.test(cell) && /^[\s\p{C}]*[=+\-@]/u.test(cell);

describe.each(HOSTILE)('in a site called %j', (name) => {
  const shown = clean(name);

  test.each(['takeoff-csv', 'readings-csv', 'cutting-csv'] as const)(
    '%s is text and numbers',
    async (kind) => {
      const { content } = await exported(kind, name);
      const { data, errors } = Papa.parse<string[]>(content as string, { delimiter: ',', newline: '\r\n' });
      expect(errors).toEqual([]);
      const records = data.slice(0, -1);
      expect(new Set(records.map(({ length }) => length)).size).toBe(1);
      const cells = records.flat();
      expect(cells.filter(runs)).toEqual([]);
      expect(cells.filter((cell) => /[\p{Cf}\p{Cc}]/u.test(cell))).toEqual([]);
      // the name is there, whole, at most with an apostrophe before it
      expect(cells.some((cell) => cell.replace(/^'/, '').endsWith(shown.replace(/^'/, '')))).toBe(true);
      if (kind === 'cutting-csv') expect(cells.some((cell) => /^-\d/.test(cell))).toBe(true);
    }
  );

  test.each(['takeoff-xlsx', 'readings-xlsx', 'cutting-xlsx'] as const)(
    '%s is text and numbers',
    async (kind) => {
      const { content } = await exported(kind, name);
      const sheets = await readWorkbook(Buffer.from(content as Uint8Array<ArrayBuffer>), { trim: false });
      const cells = sheets.flatMap(({ data }) => data.flat());
      expect(cells.filter((cell) => !['string', 'number'].includes(typeof cell) && cell !== null)).toEqual(
        []
      );
      expect(cells).toContain(shown);
    }
  );

  test('files have names that every system accepts', async () => {
    for (const kind of ['takeoff-csv', 'readings-xlsx', 'report-json'] as const) {
      const file = (await exported(kind, name)).name;
      expect(file).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}.-]*\.(csv|xlsx|json)$/u);
      expect(new TextEncoder().encode(file).length).toBeLessThan(256);
    }
  });
});

test('both files of a kind have the same rows', async () => {
  const [text, book] = [await exported('takeoff-csv', 'Depot'), await exported('takeoff-xlsx', 'Depot')];
  const records = Papa.parse<string[]>((text.content as string).trimEnd(), { newline: '\r\n' }).data.slice(1);
  const sheets = await readWorkbook(Buffer.from(book.content as Uint8Array<ArrayBuffer>));
  for (const { sheet, data } of sheets.slice(0, -1)) {
    const own = records.filter(([table]) => table === sheet);
    expect(own.length, sheet).toBe(data.length - 1);
    own.forEach((record, row) => {
      const cells = data[row + 1]!.filter((cell) => cell !== null);
      const written = record.slice(1).filter((cell) => cell !== '');
      expect(written.length).toBe(cells.length);
      // both in the order of size: a file of several tables has its columns in another one
      const numbers = cells.filter((cell) => typeof cell === 'number').toSorted((a, b) => a - b);
      const back = written.filter((cell) => NUMBER.test(cell)).map(Number);
      expect(back.length).toBe(numbers.length);
      back
        .toSorted((a, b) => a - b)
        .forEach((value, k) => {
          // two places after the point
          expect(Math.abs(value - numbers[k]!)).toBeLessThanOrEqual(0.005001);
        });
    });
  }
});

test('the report as a file is the report', async () => {
  const { content, name } = await exported('report-json', 'Depot');
  expect(name).toBe('Depot-report.json');
  expect((JSON.parse(content as string) as { loops: unknown }).loops).toEqual(
    JSON.parse(JSON.stringify(assessment.loops))
  );
});
