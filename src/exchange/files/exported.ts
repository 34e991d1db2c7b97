/** What can be made of a site for others. */
import type { AnswerTo, Asked } from '#analysis/questions';
import type { Assessment } from '#analysis/results';
import type { Site } from '#plan/schema';
import type { Job } from '../job';

export type ExportKind =
  | 'takeoff-csv'
  | 'takeoff-xlsx'
  | 'readings-csv'
  | 'readings-xlsx'
  | 'measured-csv'
  | 'measured-xlsx'
  | 'cutting-csv'
  | 'cutting-xlsx'
  | 'designs-csv'
  | 'designs-xlsx'
  | 'plan-svg'
  | 'plan-png'
  | 'plan-dxf'
  | 'sheet-pdf'
  | 'record-pdf'
  | 'form-pdf'
  | 'report-json';

export interface Exported {
  /** Proposed name, safe on every system. */
  readonly name: string;
  readonly mediaType: string;
  readonly content: string | Uint8Array<ArrayBuffer>;
}

/** What is made known in a sentence instead of a file, such as a scale that does not fit on the paper. */
export class Unfit extends Error {}

export interface ExportSource {
  readonly site: Site;
  /** Of this very site, with everything that follows an edit. */
  readonly assessment: Assessment;
  /** Name of the file that the site is kept in, or its name. */
  readonly file: string;
}

/** Bytes of the typeface that papers are written in. */
export interface Typeface {
  readonly regular: Uint8Array<ArrayBuffer>;
  readonly bold: Uint8Array<ArrayBuffer>;
}

/** What takes the physics and longer than a figure may: readings and what explains them, and other designs than the present. */
export type Reckoned = 'check-readings' | 'evaluate-readings' | 'compare-designs';

/**
 * A page has its worker do it, a command does it itself. Rejects with `Unfit` where it cannot be had, with the signal's
 * reason for a job that was ended.
 */
export type Reckon = <K extends Reckoned>(
  kind: K,
  asked: Asked<K>,
  site: Site,
  job: Job
) => Promise<AnswerTo<K>>;

/** What only the surroundings can do: a page fetches the typeface, a command reads it; only a page paints pixels. */
export interface Surroundings {
  readonly typeface: () => Promise<Typeface>;
  /** Needed by what is made of readings alone. */
  readonly reckon?: Reckon;
  /** CSV gets a byte order mark, by which spreadsheets know UTF-8. */
  readonly forSpreadsheet?: boolean;
  /** Of a picture: pixels per inch of paper. */
  readonly dotsPerInch?: number;
}

/** Rejects with `Unfit` for what cannot be made, with the signal's reason for a job that was ended. */
export type Exporter = (source: ExportSource, surroundings: Surroundings, job: Job) => Promise<Exported>;
