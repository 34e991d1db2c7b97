/** The take-off as a file. */
import { takeoffOf } from '#analysis/takeoff/takeoff';
import { t } from '#i18n/message';
import { takeoffTables } from '../tables/takeoff';
import type { ExportSource } from './exported';
import { csvExporter, workbookExporter } from './made';

const part = () => t('exports.file.takeoff');
const tables = ({ site }: ExportSource) => takeoffTables(site, takeoffOf(site));

export const takeoffCsv = csvExporter(part, tables);
export const takeoffXlsx = workbookExporter(part, tables);
