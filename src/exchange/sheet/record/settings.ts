/** How the channel of one circuit is set, in a line. */
import { t } from '#i18n/message';
import type { Circuit } from '#plan/schema';
import { settingsTable } from '../../tables/settings';
import type { ExportSource } from '../../files/exported';
import { cellText } from '../layout/table-columns';

/** Heads and values of the table of settings; empty for a circuit without a channel. */
export function settingsText({ site, assessment }: ExportSource, circuit: Circuit): string {
  const { columns, rows } = settingsTable({ site: { ...site, circuits: [circuit] }, assessment });
  const [row] = rows;
  if (!row) return '';
  const parts = columns.flatMap((column, at) => {
    const cell = row[at];
    if (cell === null || cell === undefined || cell === '' || column.head === t('tables.circuit')) return [];
    return [t('record.setting', { what: column.head, value: cellText(cell, column) })];
  });
  return t('record.settings', { settings: parts.join('; ') });
}
