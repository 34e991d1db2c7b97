/**
 * The report as one long table, RFC 4180: file, section, subject, quantity, value. A quantity carries its unit in its name
 * (`inductance_H`). Text that a spreadsheet would run as a formula is defused.
 */
import Papa from 'papaparse';
import type { PartialReport, Section } from './report';
import { SECTIONS } from './report';
import { defused } from './tables/csv';

type Cell = string | number | boolean | null;

const CSV_HEADER = ['file', 'section', 'subject', 'quantity', 'value'];

const isPlain = (value: unknown): value is Cell => typeof value !== 'object' || value === null;

/** What tells one row of a circuit from the next: several vehicles, paths or loops. */
const furtherOf = (row: Readonly<Record<string, unknown>>): string[] => [
  ...['day', 'vehicle', 'lane', 'loop'].flatMap((key) => {
    const name = row[key];
    return typeof name === 'string' ? [name] : [];
  }),
  ...(typeof row['offset_m'] === 'number' ? [`${row['offset_m'].toFixed(2)} m`] : [])
];

/** What a row is about: its id, its pair, or its place in the list. */
const subjectOf = (row: Readonly<Record<string, unknown>>, index: number): string => {
  if (typeof row['id'] === 'string') return row['id'];
  if (typeof row['a'] === 'string' && typeof row['b'] === 'string') return `${row['a']} + ${row['b']}`;
  if (typeof row['subject'] === 'string') return row['subject'];
  if (typeof row['kind'] === 'string') return `${row['kind']} #${index + 1}`;
  if (typeof row['circuit'] === 'string') return [row['circuit'], ...furtherOf(row)].join(' ');
  if (typeof row['setting'] === 'number') return `setting ${row['setting']}`;
  if (typeof row['vehicle'] === 'string') return `${row['vehicle']} #${index + 1}`;
  return String(index + 1);
};

const NAMES = new Set(['id', 'a', 'b', 'subject', 'vehicle', 'circuit']);

/** Rows of an object; lists of objects inside it become rows of their own with a longer subject. */
const rowsOf = (value: object, subject: string, prefix: string): [string, string, Cell][] =>
  Object.entries(value).flatMap(([key, inner]: [string, unknown]): [string, string, Cell][] => {
    const name = prefix === '' ? key : `${prefix}.${key}`;
    if (isPlain(inner)) return prefix === '' && NAMES.has(key) ? [] : [[subject, name, inner]];
    if (!Array.isArray(inner)) return rowsOf(inner as object, subject, name);
    if (inner.every(isPlain)) return [[subject, name, inner.join(' ')]];
    return inner.flatMap((each, index) =>
      rowsOf(each as object, `${subject} ${subjectOf(each as Record<string, unknown>, index)}`.trim(), name)
    );
  });

/** Why a cause is held likely is told in sentences, which are left to JSON. */
const withoutEvidence = (visits: PartialReport['readings']) =>
  visits?.map(({ causes, ...visit }) => ({
    ...visit,
    causes: causes.map(({ probability, faults }) => ({ probability, faults }))
  }));

const sectionRows = (report: PartialReport, section: Section): [string, string, Cell][] => {
  const content = section === 'readings' ? withoutEvidence(report.readings) : report[section];
  if (content === undefined) return [];
  if (!Array.isArray(content)) return rowsOf(content, '', '');
  return (content as readonly object[]).flatMap((row, index) =>
    rowsOf(row, subjectOf(row as Record<string, unknown>, index), '')
  );
};

export const reportCsv = (reports: readonly PartialReport[]): string => {
  const rows = reports.flatMap((report) =>
    SECTIONS.flatMap((section) =>
      sectionRows(report, section).map(([subject, quantity, value]) => [
        report.file,
        section,
        subject,
        quantity,
        value
      ])
    )
  );
  const cells = rows.map((row) => row.map((cell) => (typeof cell === 'string' ? defused(cell) : cell)));
  return `${Papa.unparse([CSV_HEADER, ...cells], { newline: '\r\n' })}\r\n`;
};
