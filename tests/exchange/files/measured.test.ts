/** The file of measured readings of a site whose every name and note would do harm. */
import Papa from 'papaparse';
import readWorkbook from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';
import type { Exported } from '#exchange/files/exported';
import { measuredCsv, measuredXlsx } from '#exchange/files/measured';
import { unwatched } from '#exchange/job';
import { clean } from '#exchange/sheet/text/clean';
import type { Site } from '#plan/schema';
import { checkedAsIf, checkedSite } from '../../support/field-check';
import { HOSTILE, siteNamed } from '../../support/hostile-names';
import { sourceOf } from '../sheet/sites';

function harmful(name: string): Site {
  const site = checkedSite(siteNamed(name));
  return {
    ...site,
    readings: site.readings.map((reading) => ({ ...reading, by: name, note: name, at: name })),
    fieldCheck: {
      instruments: [{ id: 'i1', name, accuracies: [] }],
      record: {
        date: name,
        testedBy: name,
        circuits: [{ circuit: site.circuits[0]!.id, verdict: 'refused', remarks: name }]
      }
    }
  };
}

const made = (exporter: typeof measuredCsv, site: Site): Promise<Exported> => {
  const surroundings = {
    typeface: () => Promise.reject(new Error('no paper is asked for')),
    reckon: () => Promise.resolve(checkedAsIf(site) as never)
  };
  return exporter(sourceOf(site), surroundings, unwatched());
};

const NUMBER = /^-?\d+(\.\d+)?$/;
const runs = (cell: string) => !NUMBER.test(cell) && /^[\s\p{C}]*[=+\-@]/u.test(cell);

describe.each(HOSTILE)('with %j wherever a text may stand', (name) => {
  const shown = clean(name);

  test('the text file is text and numbers', async () => {
    const { content } = await made(measuredCsv, harmful(name));
    const { data, errors } = Papa.parse<string[]>(content as string, { delimiter: ',', newline: '\r\n' });
    expect(errors).toEqual([]);
    const cells = data.slice(0, -1).flat();
    expect(new Set(data.slice(0, -1).map(({ length }) => length)).size).toBe(1);
    expect(cells.filter(runs)).toEqual([]);
    expect(cells.filter((cell) => /[\p{Cf}\p{Cc}]/u.test(cell))).toEqual([]);
    expect(cells.some((cell) => cell.replace(/^'/, '').endsWith(shown.replace(/^'/, '')))).toBe(true);
    expect(cells).toContain('0.41');
  });

  test('the workbook is text and numbers', async () => {
    const { content } = await made(measuredXlsx, harmful(name));
    const sheets = await readWorkbook(Buffer.from(content as Uint8Array<ArrayBuffer>), { trim: false });
    const cells = sheets.flatMap(({ data }) => data.flat());
    expect(cells.filter((cell) => !['string', 'number'].includes(typeof cell) && cell !== null)).toEqual([]);
    expect(cells).toContain(shown);
    expect(cells).toContain(0.41);
  });
});
