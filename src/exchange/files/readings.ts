/** The expected readings, and the settings that they hold for, as a file. */
import { t } from '#i18n/message';
import { readingTables } from '../tables/readings';
import { settingsTable } from '../tables/settings';
import type { ExportSource } from './exported';
import { csvExporter, workbookExporter } from './made';

const part = () => t('exports.file.readings');
const tables = (source: ExportSource) => [...readingTables(source), settingsTable(source)];

export const readingsCsv = csvExporter(part, tables);
export const readingsXlsx = workbookExporter(part, tables);
