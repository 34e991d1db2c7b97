/** The tables of a sheet, from those that other files are made of too. */
import { takeoffOf } from '#analysis/takeoff/takeoff';
import type { CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { cuttingTables } from '../../tables/cutting';
import { loopsTable } from '../../tables/loops';
import { cabinetReadings, loopReadings, vehicleReadings } from '../../tables/readings';
import { settingsTable } from '../../tables/settings';
import type { Table } from '../../tables/table';
import { itemsTable } from '../../tables/takeoff';
import type { ExportSource } from '../../files/exported';
import type { Block } from '../layout/block';
import { tableBlock } from '../layout/table-block';
import { cuttingFigures, notPlaced } from './cutting';
import { recordTable } from './record';
import { withRangesMerged } from './merged-ranges';

const blocks = (tables: readonly Table[]): readonly Block[] =>
  tables.filter(({ rows }) => rows.length > 0).map((table) => tableBlock(withRangesMerged(table)));

export const loops = (source: ExportSource): readonly Block[] => blocks([loopsTable(source)]);

/** Of vehicles those that must be detected; and a form for what was read. */
export const readings = (source: ExportSource): readonly Block[] => [
  ...blocks([loopReadings(source), cabinetReadings(source), vehicleReadings(source, { onlyWanted: true })]),
  ...(source.site.circuits.length > 0 ? [tableBlock(recordTable(source.site), true)] : [])
];

/** What is needed, without prices and hours: a sheet goes to the road. */
export function quantities({ site }: ExportSource): readonly Block[] {
  const takeoff = takeoffOf(site);
  const items = takeoff.items
    .filter(({ group }) => group !== 'crew' && group !== 'extra')
    .map((item) => ({ ...item, price: null, cost: null }));
  const table = itemsTable(site, { ...takeoff, items, unpriced: [] });
  return blocks([{ ...table, title: t('sheet.quantities'), notes: [] }]);
}

export const cutting = (site: Site, plan: CuttingPlan): readonly Block[] => [
  ...blocks(cuttingTables(site, plan)),
  notPlaced(site, plan),
  cuttingFigures(site, plan)
];

export const settings = (source: ExportSource): readonly Block[] => blocks([settingsTable(source)]);
