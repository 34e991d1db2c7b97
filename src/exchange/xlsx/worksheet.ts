/** A table as a worksheet: ECMA-376 part 1, 18.3. Texts are strings in the cell itself; there is no formula anywhere. */
import { breathe, type Job } from '../job';
import { columnAt, type Cell, type Column, type Table } from '../tables/table';
import { HEAD, numberStyle, textStyle } from './styles';
import { escaped } from './xml';

/** Characters that a cell may hold. */
const LONGEST_TEXT = 32_767;
/** In characters. */
const WIDTH = { least: 9, most: 60, spare: 2 } as const;
const AT_ONCE = 1_000;

/** "A" to "Z", "AA" and on. */
export const columnLetters = (index: number): string =>
  (index >= 26 ? columnLetters(Math.floor(index / 26) - 1) : '') + String.fromCharCode(65 + (index % 26));

function stringCell(at: string, text: string, style: number): string {
  // _xHHHH_ stands for a character; a carriage return of its own would be read as a line feed
  const kept = text
    .slice(0, LONGEST_TEXT)
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replaceAll('\r', '_x000D_');
  return `<c r="${at}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${escaped(kept)}</t></is></c>`;
}

function cellXml(cell: Cell | undefined, at: string, { digits }: Column, isTotal: boolean): string {
  if (typeof cell === 'number' && Number.isFinite(cell))
    return `<c r="${at}" s="${numberStyle(isTotal, digits)}"><v>${String(cell + 0)}</v></c>`;
  if (typeof cell === 'string' && cell !== '') return stringCell(at, cell, textStyle(isTotal));
  return isTotal ? `<c r="${at}" s="${textStyle(true)}"/>` : '';
}

const rowXml = (cells: readonly Cell[], row: number, columns: readonly Column[], isTotal: boolean): string =>
  `<row r="${row}">${columns
    .map((column, at) => cellXml(cells[at], `${columnLetters(at)}${row}`, column, isTotal))
    .join('')}</row>`;

const shownLength = (cell: Cell | undefined, { digits }: Column): number =>
  typeof cell === 'number' ? cell.toFixed(digits ?? 2).length : (cell?.length ?? 0);

function widths({ columns, rows, totals }: Table): readonly number[] {
  const all = totals ? [...rows, totals] : rows;
  return columns.map((column, at) => {
    const words = column.head.split(' ').map(({ length }) => length);
    const needed = all.reduce(
      (most, row) => Math.max(most, shownLength(row[at], column)),
      Math.max(...words)
    );
    return Math.min(WIDTH.most, Math.max(WIDTH.least, needed + WIDTH.spare));
  });
}

/** The head in the first row, which stays in sight. `share`: where in the whole work it begins and ends. */
export async function worksheetXml(
  table: Table,
  job: Job,
  [begin, end]: readonly [number, number]
): Promise<string> {
  const { columns, rows, totals } = table;
  const head = columns.map((column, at) => stringCell(`${columnLetters(at)}1`, column.head, HEAD)).join('');
  const parts: string[] = [];
  for (let from = 0; from < rows.length; from += AT_ONCE) {
    await breathe(job, begin + ((end - begin) * from) / rows.length);
    rows.slice(from, from + AT_ONCE).forEach((row, k) => {
      const own = table.places ? columns.map((_, at) => columnAt(table, from + k, at)) : columns;
      parts.push(rowXml(row, from + k + 2, own, false));
    });
  }
  if (totals) parts.push(rowXml(totals, rows.length + 2, columns, true));
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>',
    '<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">',
    '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>',
    '<sheetFormatPr defaultRowHeight="15"/>',
    '<cols>',
    ...widths(table).map(
      (width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`
    ),
    '</cols>',
    `<sheetData><row r="1">${head}</row>`,
    ...parts,
    '</sheetData>',
    '<pageSetup orientation="landscape" fitToHeight="0"/>',
    '</worksheet>'
  ].join('');
}
