/**
 * Tables as a workbook, a sheet each, and a last sheet with their notes: ECMA-376, "Office Open XML". Numbers are numbers in
 * the unit that their head names, texts are strings, and nothing is computed by whoever opens it.
 */
import { t } from '#i18n/message';
import { breathe, type Job } from '../job';
import type { Table } from '../tables/table';
import { stylesXml } from './styles';
import { worksheetXml } from './worksheet';
import { escaped } from './xml';
import { zipOf } from './zip';

export const WORKBOOK_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const KINDS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
/** Characters of a sheet's name. */
const LONGEST_NAME = 31;
/** The rest is packing. */
const WRITTEN = 0.9;

/** Names that every spreadsheet accepts, no two alike. */
export function sheetNames(titles: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return titles.map((title) => {
    const plain = title.replace(/[[\]/\\:*?\p{C}]/gu, ' ').replace(/^[' ]+|[' ]+$/g, '') || '–';
    let name = plain.slice(0, LONGEST_NAME).trimEnd();
    for (let k = 2; taken.has(name.toLowerCase()); k++)
      name = `${plain.slice(0, LONGEST_NAME - 5).trimEnd()} (${k})`;
    taken.add(name.toLowerCase());
    return name;
  });
}

const contentTypes = (count: number): string =>
  [
    DECLARATION,
    '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">',
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>',
    '<Default Extension="xml" ContentType="application/xml"/>',
    `<Override PartName="/xl/workbook.xml" ContentType="${TYPES}.sheet.main+xml"/>`,
    `<Override PartName="/xl/styles.xml" ContentType="${TYPES}.styles+xml"/>`,
    ...Array.from(
      { length: count },
      (_, at) =>
        `<Override PartName="/xl/worksheets/sheet${at + 1}.xml" ContentType="${TYPES}.worksheet+xml"/>`
    ),
    '</Types>'
  ].join('');

const relation = (id: number, kind: string, target: string): string =>
  `<Relationship Id="rId${id}" Type="${KINDS}/${kind}" Target="${target}"/>`;

const relations = (all: readonly string[]): string =>
  `${DECLARATION}<Relationships xmlns="${RELATIONS}">${all.join('')}</Relationships>`;

const workbookXml = (names: readonly string[]): string =>
  [
    DECLARATION,
    `<workbook xmlns="${MAIN}" xmlns:r="${KINDS}"><sheets>`,
    ...names.map((name, at) => `<sheet name="${escaped(name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`),
    '</sheets></workbook>'
  ].join('');

function notesOf(tables: readonly Table[]): Table {
  return {
    title: t('tables.notes'),
    columns: [
      { head: t('tables.table'), kind: 'text' },
      { head: t('tables.note'), kind: 'text' }
    ],
    rows: tables.flatMap(({ title, notes = [] }) => notes.map((note) => [title, note]))
  };
}

/** Rejects with the signal's reason for a job that was ended. */
export async function workbookOf(tables: readonly Table[], job: Job): Promise<Uint8Array<ArrayBuffer>> {
  const sheets = [...tables, notesOf(tables)];
  const names = sheetNames(sheets.map(({ title }) => title));
  const written: string[] = [];
  for (const [at, sheet] of sheets.entries()) {
    const share = (k: number): number => (WRITTEN * k) / sheets.length;
    written.push(await worksheetXml(sheet, job, [share(at), share(at + 1)]));
  }
  await breathe(job, WRITTEN);
  const archive = await zipOf([
    { name: '[Content_Types].xml', text: contentTypes(sheets.length) },
    { name: '_rels/.rels', text: relations([relation(1, 'officeDocument', 'xl/workbook.xml')]) },
    { name: 'xl/workbook.xml', text: workbookXml(names) },
    {
      name: 'xl/_rels/workbook.xml.rels',
      text: relations([
        ...names.map((_, at) => relation(at + 1, 'worksheet', `worksheets/sheet${at + 1}.xml`)),
        relation(names.length + 1, 'styles', 'styles.xml')
      ])
    },
    { name: 'xl/styles.xml', text: stylesXml() },
    ...written.map((text, at) => ({ name: `xl/worksheets/sheet${at + 1}.xml`, text }))
  ]);
  await breathe(job, 1);
  return archive;
}
