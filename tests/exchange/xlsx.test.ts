/** Workbooks, read back by a library other than what wrote them. */
import readWorkbook from 'read-excel-file/node';
import { describe, expect, test } from 'vitest';
import { unwatched } from '#exchange/job';
import type { Cell, Table } from '#exchange/tables/table';
import { sheetNames, workbookOf } from '#exchange/xlsx/workbook';
import { columnLetters, worksheetXml } from '#exchange/xlsx/worksheet';
import { HOSTILE } from '../support/hostile-names';

const table = (rows: Table['rows'], more: Partial<Table> = {}): Table => ({
  title: 'Things',
  columns: [
    { head: 'Name', kind: 'text' },
    { head: 'Length (m)', kind: 'number', digits: 2 }
  ],
  rows,
  ...more
});

/** What the reader finds, sheet by sheet. */
async function read(tables: readonly Table[]) {
  const bytes = await workbookOf(tables, unwatched());
  return readWorkbook(Buffer.from(bytes), { trim: false });
}

describe('a workbook', () => {
  test('has a sheet for each table and one for notes, with the same cells', async () => {
    const rows: readonly (readonly Cell[])[] = [
      ['a', 1.5],
      ['b', -2.25],
      ['c', null],
      ['d', 1e-7],
      ['e', 123456.789]
    ];
    const sheets = await read([table(rows, { totals: ['Sum', 9], notes: ['First.', 'Second.'] })]);
    expect(sheets).toEqual([
      { sheet: 'Things', data: [['Name', 'Length (m)'], ...rows, ['Sum', 9]] },
      {
        sheet: 'Notes',
        data: [
          ['Table', 'Note'],
          ['Things', 'First.'],
          ['Things', 'Second.']
        ]
      }
    ]);
  });

  test.each(HOSTILE)('keeps a name as the text that it is: %j', async (name) => {
    const [things] = await read([table([[name, 1]], { title: name })]);
    expect(things!.data[1]).toEqual([name, 1]);
  });

  test('has texts as strings, numbers as numbers, no formula, and the head in sight', async () => {
    const xml = await worksheetXml(table([['=1+1', -3]]), unwatched(), [0, 1]);
    expect(xml).not.toMatch(/<f[ >]/);
    expect(xml).toContain('<c r="A2" s="2" t="inlineStr"><is><t xml:space="preserve">=1+1</t></is></c>');
    expect(xml).toMatch(/<c r="B2" s="\d+"><v>-3<\/v><\/c>/);
    expect(xml).toContain('ySplit="1"');
    expect(xml.match(/<col /g)).toHaveLength(2);
  });

  test('of the same tables has the same bytes', async () => {
    const make = () => workbookOf([table([['a', 1]])], unwatched());
    expect(Buffer.from(await make()).equals(Buffer.from(await make()))).toBe(true);
  });

  test('of many rows is whole, says how far it is, and can be ended', async () => {
    const rows = Array.from({ length: 12_000 }, (_, k) => [`Name of row ${k}`, k / 4]);
    const shares: number[] = [];
    const job = { ...unwatched(), onShare: (share: number) => shares.push(share) };
    const [things] = await readWorkbook(Buffer.from(await workbookOf([table(rows)], job)));
    expect(things!.data.slice(1)).toEqual(rows);
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    const ending = new AbortController();
    const onShare = (share: number) => {
      if (share > 0.3) ending.abort(new Error('enough'));
    };
    await expect(workbookOf([table(rows)], { signal: ending.signal, onShare })).rejects.toThrow('enough');
  });
});

describe('names of sheets', () => {
  test('are what every spreadsheet accepts, no two alike', () => {
    const names = sheetNames([
      'A/B: [x]?',
      "'quoted'",
      'Long '.repeat(20),
      'Long '.repeat(20),
      '',
      'long',
      'LONG'
    ]);
    for (const name of names) {
      expect(name).toMatch(/^[^[\]/\\:*?]{1,31}$/);
      expect(name).not.toMatch(/^'|'$/);
    }
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
  });
});

test.each([
  [0, 'A'],
  [25, 'Z'],
  [26, 'AA'],
  [51, 'AZ'],
  [52, 'BA'],
  [701, 'ZZ'],
  [702, 'AAA']
])('column %d is %s', (index, letters) => {
  expect(columnLetters(index)).toBe(letters);
});
