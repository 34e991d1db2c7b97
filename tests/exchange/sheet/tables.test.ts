import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Column as TableColumn, Table } from '#exchange/tables/table';
import type { Column } from '#exchange/sheet/layout/block';
import { flow } from '#exchange/sheet/layout/flow';
import { tableBlock } from '#exchange/sheet/layout/table-block';
import { columnWidths, writtenTable } from '#exchange/sheet/layout/table-columns';
import { recordTable } from '#exchange/sheet/parts/record';
import { bigSite } from '../../support/big-site';
import { withRangesMerged } from '#exchange/sheet/parts/merged-ranges';
import type { TextDrawing } from '#scenes/drawing';
import { t } from '#i18n/message';
import { overlap, textExtent } from './extent';

const word = fc.string({ unit: fc.constantFrom(...'abcdefghWMil19-'), minLength: 1, maxLength: 14 });
const words = fc.array(word, { maxLength: 8 }).map((parts) => parts.join(' '));
const column: fc.Arbitrary<TableColumn> = fc.record({
  head: words,
  kind: fc.constantFrom('text' as const, 'number' as const),
  digits: fc.integer({ min: 0, max: 3 })
});
const number = fc.oneof(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constant(null));

const table: fc.Arbitrary<Table> = fc.array(column, { minLength: 1, maxLength: 14 }).chain((columns) => {
  const row = fc.tuple(...columns.map(({ kind }) => (kind === 'number' ? number : words)));
  return fc.record(
    { title: words, columns: fc.constant(columns), rows: fc.array(row, { maxLength: 20 }), totals: row },
    { requiredKeys: ['title', 'columns', 'rows'] }
  );
});

const columnAt = (width: number, height: number) => (index: number): Column => ({
  page: index,
  left: 10,
  top: 10,
  width,
  height
}); // prettier-ignore

function textsByPage(made: Table, width: number, height: number): TextDrawing[][] {
  const pages: TextDrawing[][] = [];
  for (const { page, drawings } of flow([tableBlock(made)], columnAt(width, height), height))
    for (const drawing of drawings) if (drawing.kind === 'text') (pages[page] ??= []).push(drawing);
  return pages;
}

describe('a table on a sheet', () => {
  it('is never wider than its column, and no cell lies on another', () => {
    fc.assert(
      fc.property(table, fc.constantFrom(165, 190), (made, width) => {
        const total = columnWidths(writtenTable(made), width).reduce((sum, each) => sum + each, 0);
        expect(total).toBeLessThanOrEqual(width + 1e-9);
        for (const texts of textsByPage(made, width, 150))
          for (const [k, one] of texts.entries()) {
            const extent = textExtent(one);
            expect(extent.left).toBeGreaterThanOrEqual(10 - 1e-9);
            expect(extent.right).toBeLessThanOrEqual(10 + width + 1e-9);
            expect(extent.bottom).toBeLessThanOrEqual(160 + 1e-9);
            for (const other of texts.slice(k + 1))
              if (overlap(extent, textExtent(other)))
                expect.unreachable(`“${one.text}” lies on “${other.text}”`);
          }
      }),
      { numRuns: 150 }
    );
  });

  // two names without a blank on A4: 21.60 in two lines is read as 21.6 and 0
  it('parts long words rather than numbers, the longest first', () => {
    const made: Table = {
      title: 'Loops',
      columns: [
        { head: 'Loop', kind: 'text' },
        { head: 'Circuit', kind: 'text' },
        { head: 'Shape', kind: 'text' },
        ...['Width', 'Length', 'Wire in the slot', 'Tail', 'Depth', 'Saw cut'].map((head) => ({ head, kind: 'number', digits: 2 }) as const) // prettier-ignore
      ],
      rows: [['x'.repeat(60), 'y'.repeat(60), 'Quadrupole', 1.8, 10.8, 121.6, 14, 50, 107.2]]
    };
    const texts = textsByPage(made, 165, 150)
      .flat()
      .map(({ text }) => text);
    for (const whole of ['1.80', '10.80', '121.60', '14.00', '50.00', '107.20', 'Quadrupole', 'Length'])
      expect(texts).toContain(whole);
    expect(texts.filter((text) => /^x+$/.test(text)).join('')).toHaveLength(60);
  });

  it('repeats its head on every page and shows every row once', () => {
    const rows = Array.from({ length: 60 }, (_, k) => [`row${k}`, k / 4]);
    const made: Table = {
      title: 'Cuts',
      columns: [
        { head: 'Name', kind: 'text' },
        { head: 'Length (m)', kind: 'number', digits: 2 }
      ],
      rows,
      totals: ['Together', 442.5],
      notes: ['Without waste.']
    };
    const pages = textsByPage(made, 120, 100).map((texts) => texts.map(({ text }) => text));
    expect(pages.length).toBeGreaterThan(2);
    for (const texts of pages) {
      expect(texts.filter((text) => text === 'Name')).toHaveLength(1);
      expect(texts.filter((text) => text === 'Length (m)')).toHaveLength(1);
    }
    expect(pages.flat().filter((text) => text.startsWith('row'))).toEqual(rows.map(([name]) => name));
    expect(pages.flat().filter((text) => text.startsWith('Cuts'))).toEqual([
      'Cuts',
      ...Array.from({ length: pages.length - 1 }, () => 'Cuts (continued)')
    ]);
    const last = pages.at(-1)!;
    expect(last.slice(-3)).toEqual(['Together', '442.50', 'Without waste.']);
    expect(last).toContain('row59');
  });

  it('writes numbers with the places of their column, ranged right, and a dash for none', () => {
    const made: Table = {
      title: 'Readings',
      columns: [{ head: 'L (µH)', kind: 'number', digits: 1 }],
      rows: [[101.25], [7], [null], [Number.NaN]]
    };
    const texts = textsByPage(made, 100, 100)[0]!.slice(2);
    expect(texts.map(({ text }) => text)).toEqual(['101.3', '7.0', '–', '–']);
    const ends = texts.map((drawing) => textExtent(drawing).right);
    for (const end of ends) expect(end).toBeCloseTo(ends[0]!, 9);
  });
});

describe('a form to be filled in by hand', () => {
  it('has room for handwriting in every cell, over the whole width', () => {
    const form = recordTable(bigSite(3));
    const { pieces } = tableBlock(form, true)(180, 200);
    const rows = pieces.slice(2);
    expect(rows).toHaveLength(3);
    for (const row of rows) {
      expect(row.height).toBeGreaterThanOrEqual(8);
      const edges = row.draw(0, 0).filter((drawing) => drawing.kind === 'line');
      expect(Math.max(...edges.flatMap(({ points }) => points.map(([x]) => x)))).toBeCloseTo(180, 6);
      const upright = edges.map(({ points }) => points[0]![0]).filter((x) => x > 0).sort((a, b) => a - b); // prettier-ignore
      upright.slice(1).forEach((x, k) => {
        expect(x - upright[k]!).toBeGreaterThan(14);
      });
    }
    expect(form.rows.map(([name]) => name)).toEqual(['Circuit 1', 'Circuit 2', 'Circuit 3']);
  });
});

describe('a figure with its range', () => {
  const what = 'Inductance';
  const made: Table = {
    title: 'At the cabinet',
    columns: [
      { head: 'Circuit', kind: 'text' },
      { head: `${what} (µH)`, kind: 'number', digits: 1 },
      { head: `${t('tables.from', { what })} (µH)`, kind: 'number', digits: 1 },
      { head: `${t('tables.to', { what })} (µH)`, kind: 'number', digits: 1 },
      { head: 'Q', kind: 'number', digits: 0 }
    ],
    rows: [
      ['Exit', 98.24, 95.1, 101, 32],
      ['Gate', 88, null, null, 20]
    ]
  };

  it('is one column, and alone where no range is known', () => {
    const merged = withRangesMerged(made);
    expect(merged.columns.map(({ head }) => head)).toEqual(['Circuit', 'Inductance (µH)', 'Q']);
    expect(merged.rows).toEqual([
      ['Exit', '98.2 (95.1–101.0)', 32],
      ['Gate', '88.0', 20]
    ]);
  });
});
