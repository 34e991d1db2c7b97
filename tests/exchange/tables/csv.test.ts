import Papa from 'papaparse';
import { afterEach, describe, expect, test } from 'vitest';
import { unwatched } from '#exchange/job';
import { csvOf, defused } from '#exchange/tables/csv';
import type { Table } from '#exchange/tables/table';
import { speakWhole } from '#i18n/whole';
import { HOSTILE } from '../../support/hostile-names';

const table = (rows: Table['rows'], more: Partial<Table> = {}): Table => ({
  title: 'T',
  columns: [
    { head: 'Name', kind: 'text' },
    { head: 'Length (m)', kind: 'number', digits: 2 }
  ],
  rows,
  ...more
});
const csv = (tables: readonly Table[], wish = {}) => csvOf(tables, wish, unwatched());
const rowsOf = (text: string, delimiter = ',') =>
  Papa.parse<string[]>(text, { delimiter, newline: '\r\n', skipEmptyLines: true }).data;

/** By hand, as RFC 4180 2.5 to 2.7 say: fields split at commas outside quotes, records at CR LF outside quotes. */
function readByHand(text: string): string[][] {
  const records: string[][] = [[]];
  let field = '';
  let isQuoted = false;
  for (let k = 0; k < text.length; k++) {
    const sign = text[k]!;
    if (isQuoted) {
      if (sign !== '"') field += sign;
      else if (text[k + 1] === '"') field += text[++k]!;
      else isQuoted = false;
    } else if (sign === '"' && field === '') isQuoted = true;
    else if (sign === ',' || text.startsWith('\r\n', k)) {
      records.at(-1)!.push(field);
      field = '';
      if (sign !== ',') {
        k++;
        records.push([]);
      }
    } else field += sign;
  }
  return records.slice(0, -1);
}

afterEach(() => {
  speakWhole('en');
});

describe('CSV', () => {
  test('has CR LF after every record, the last too, and no mark at the beginning', async () => {
    expect(await csv([table([['a', 1.5]])])).toBe('Table,Name,Length (m)\r\nT,a,1.50\r\n');
  });

  test('gets a mark at the beginning only for a spreadsheet', async () => {
    const text = await csv([table([['a', 1]])], { forSpreadsheet: true });
    expect(text.charCodeAt(0)).toBe(0xfeff);
    expect(text.slice(1)).toBe(await csv([table([['a', 1]])]));
  });

  test('has semicolons and a decimal comma where the language has one', async () => {
    speakWhole('de');
    expect(await csv([table([['a;b', 1234.5]])])).toBe('Tabelle;Name;Length (m)\r\nT;"a;b";1234,50\r\n');
  });

  test.each([
    [-1.25, '-1.25'],
    [-0.001, '0.00'],
    [0, '0.00'],
    [1e6, '1000000.00']
  ])('leaves the number %d a number', async (value, written) => {
    expect(rowsOf(await csv([table([['a', value]])]))[1]![2]).toBe(written);
  });

  test('leaves empty what is no number', async () => {
    expect(rowsOf(await csv([table([['a', null], ['b', Number.NaN], ['c', Infinity]])])).slice(1).map((row) => row[2])).toEqual(['', '', '']); // prettier-ignore
  });

  test.each(HOSTILE)('keeps and defuses a name: %j', async (name) => {
    const text = await csv([table([[name, 1]])]);
    for (const records of [rowsOf(text), readByHand(text)]) {
      expect(records).toHaveLength(2);
      expect(records[1]).toEqual(['T', defused(name), '1.00']);
    }
  });

  test.each(['=1', '+1', '-1', '@A1', '\t=1', '\r=1', '\n=1', ' =1', '\u202E=1', '\uFF1D1', '\uFF0B1'])(
    'a spreadsheet takes %j for text',
    (name) => {
      expect(defused(name)).toBe(`'${name}`);
    }
  );

  test.each(['a=1', '1 + 1', 'Loop-1', '', '“=”', '−1'])('%j stays as it is', (name) => {
    expect(defused(name)).toBe(name);
  });

  test('of several tables has one head: what a table does not have stays empty', async () => {
    const other: Table = {
      title: 'U',
      columns: [
        { head: 'Length (m)', kind: 'number', digits: 1 },
        { head: 'Note', kind: 'text' }
      ],
      rows: [[2, 'b']],
      totals: [2, null]
    };
    expect(rowsOf(await csv([table([['a', 1]]), other]))).toEqual([
      ['Table', 'Name', 'Length (m)', 'Note'],
      ['T', 'a', '1.00', ''],
      ['U', '', '2.0', 'b'],
      ['U', '', '2.0', '']
    ]);
  });

  test('in parts is the same as in one, says how far it is, and can be ended', async () => {
    const rows = Array.from({ length: 5_000 }, (_, k) => [`n${k}`, k]);
    const shares: number[] = [];
    const text = await csvOf([table(rows)], {}, { ...unwatched(), onShare: (share) => shares.push(share) });
    expect(rowsOf(text)).toHaveLength(5_001);
    expect(shares.at(-1)).toBe(1);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    const ending = new AbortController();
    const onShare = (share: number) => {
      if (share > 0) ending.abort(new Error('enough'));
    };
    await expect(csvOf([table(rows)], {}, { signal: ending.signal, onShare })).rejects.toThrow('enough');
  });
});
