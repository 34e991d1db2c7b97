/** The cutting plan as a file. */
import { t } from '#i18n/message';
import { namedCuttingPlan } from '../sheet/parts/cutting-plan';
import { cuttingFileTables } from '../tables/cutting';
import type { ExportSource } from './exported';
import { csvExporter, workbookExporter } from './made';

const part = () => t('exports.file.cutting');
const tables = ({ site }: ExportSource) => cuttingFileTables(site, namedCuttingPlan(site));

export const cuttingCsv = csvExporter(part, tables);
export const cuttingXlsx = workbookExporter(part, tables);
