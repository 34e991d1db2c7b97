/** Files made of tables. */
import { csvOf } from '../tables/csv';
import type { Table } from '../tables/table';
import { workbookOf, WORKBOOK_TYPE } from '../xlsx/workbook';
import type { Job } from '../job';
import type { Exporter, ExportSource, Surroundings } from './exported';
import { fileNameFor } from './file-name';

/** What the file is called beside its site, in the language spoken; asked for when the file is made. */
type Part = () => string;
type Tables = (
  source: ExportSource,
  surroundings: Surroundings,
  job: Job
) => readonly Table[] | Promise<readonly Table[]>;

export const csvExporter =
  (part: Part, tables: Tables): Exporter =>
  async (source, surroundings, job) => ({
    name: fileNameFor(source.file, part(), 'csv'),
    mediaType: 'text/csv;charset=utf-8',
    content: await csvOf(await tables(source, surroundings, job), surroundings, job)
  });

export const workbookExporter =
  (part: Part, tables: Tables): Exporter =>
  async (source, surroundings, job) => ({
    name: fileNameFor(source.file, part(), 'xlsx'),
    mediaType: WORKBOOK_TYPE,
    content: await workbookOf(await tables(source, surroundings, job), job)
  });
