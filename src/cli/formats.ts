/** What the command can print, and which of it is a file that the page makes too. */
import type { ExportKind } from '#exchange/files/exported';
import { SECTIONS } from '#exchange/report';

export const FORMATS = ['json', 'text', 'csv', 'netlist', 'xlsx', 'pdf', 'svg', 'dxf'] as const;
export type Format = (typeof FORMATS)[number];

/** Tables for people, by the word that asks for them. */
export const TABLES = ['quantities', 'readings', 'measured', 'cutting', 'designs'] as const;
type Tables = (typeof TABLES)[number];

const CSV: Readonly<Record<Tables, ExportKind>> = {
  quantities: 'takeoff-csv',
  readings: 'readings-csv',
  measured: 'measured-csv',
  cutting: 'cutting-csv',
  designs: 'designs-csv'
};
const XLSX: Readonly<Record<Tables, ExportKind>> = {
  quantities: 'takeoff-xlsx',
  readings: 'readings-xlsx',
  measured: 'measured-xlsx',
  cutting: 'cutting-xlsx',
  designs: 'designs-xlsx'
};
/** Papers, by the word that asks for them. */
export const PAPERS = ['sheet', 'record', 'form'] as const;
type Paper = (typeof PAPERS)[number];

const PDF: Readonly<Record<Paper, ExportKind>> = {
  sheet: 'sheet-pdf',
  record: 'record-pdf',
  form: 'form-pdf'
};
const DRAWN = { svg: 'plan-svg', dxf: 'plan-dxf' } as const;

type Wanted =
  | { readonly kind: 'file'; readonly file: Exclude<ExportKind, 'plan-png'> }
  | { readonly kind: 'report' }
  /** What may stand behind --only instead; empty where nothing may. */
  | { readonly kind: 'refused'; readonly allowed: readonly string[] };

const isTable = (only: string | null): only is Tables =>
  (TABLES as readonly (string | null)[]).includes(only);
const isPaper = (only: string | null): only is Paper => (PAPERS as readonly (string | null)[]).includes(only);
const isSection = (only: string | null): boolean =>
  only === null || (SECTIONS as readonly string[]).includes(only);
const file = (kind: ExportKind): Wanted => ({ kind: 'file', file: kind as Exclude<ExportKind, 'plan-png'> });
const refused = (...allowed: readonly string[]): Wanted => ({ kind: 'refused', allowed });

/**
 * A workbook without `only` is that of the take-off, a PDF without it the sheet; CSV without it is the whole report in one
 * long table. In CSV the name of a table that people read, such as "readings", goes before the section of that name.
 */
export function wantedOf(format: Exclude<Format, 'netlist'>, only: string | null): Wanted {
  switch (format) {
    case 'json':
    case 'text':
      return isSection(only) ? { kind: 'report' } : refused(...SECTIONS);
    case 'csv':
      if (isTable(only)) return file(CSV[only]);
      return isSection(only) ? { kind: 'report' } : refused(...new Set([...SECTIONS, ...TABLES]));
    case 'xlsx':
      if (only === null) return file(XLSX.quantities);
      return isTable(only) ? file(XLSX[only]) : refused(...TABLES);
    case 'pdf':
      if (only === null) return file(PDF.sheet);
      return isPaper(only) ? file(PDF[only]) : refused(...PAPERS);
    default:
      return only === null ? file(DRAWN[format]) : refused();
  }
}
