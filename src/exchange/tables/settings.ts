/** How each channel of each unit is to be set. */
import { t } from '#i18n/message';
import { timingsOf } from '#plan/catalogue/timings';
import type { Channel, Circuit, Output, Unit } from '#plan/schema';
import type { ExportSource } from '../files/exported';
import { exact, number, quantity, tableOf, text, withoutEmpty } from './fields';
import type { MeasureName } from './measures';
import { nameOf } from './names';
import type { Table } from './table';

interface Row {
  readonly unit: Unit | undefined;
  readonly circuit: Circuit;
  readonly channel: Channel;
  readonly output: Output;
  readonly frequency: number | undefined;
}

export function settingsTable({ site, assessment }: Pick<ExportSource, 'site' | 'assessment'>): Table {
  const { displayUnits: system } = site;
  const place = ({ id }: Pick<Unit, 'id'>): number => site.units.findIndex((unit) => unit.id === id);
  const rows = site.circuits
    .flatMap((circuit): Row[] => {
      const { channel } = circuit;
      if (!channel) return [];
      return [
        {
          circuit,
          channel,
          unit: site.units.find(({ id }) => id === channel.unit),
          output: channel.output,
          frequency: assessment.circuits.find(({ id }) => id === circuit.id)?.frequency_Hz
        }
      ];
    })
    .toSorted(
      (a, b) =>
        place({ id: a.channel.unit }) - place({ id: b.channel.unit }) || a.channel.number - b.channel.number
    );
  // a given frequency stands for no setting
  const setting = ({ channel }: Row): number | null =>
    channel.frequency_Hz === null ? channel.frequencySetting : null;
  /** Somebody sets it: a half is not a whole. */
  const stated = (head: string, measure: MeasureName, cell: (row: Row) => number | null | undefined) =>
    exact(quantity<Row>(head, measure, system, cell));
  const fields = [
    text<Row>(t('tables.unit'), ({ unit, channel }) => (unit ? nameOf(unit) : channel.unit)),
    number<Row>(t('tables.channel'), 0, ({ channel }) => channel.number),
    text<Row>(t('tables.circuit'), ({ circuit }) => nameOf(circuit)),
    number<Row>(t('tables.setting'), 0, setting),
    stated(t('tables.capacitance'), 'capacitance', (row) => {
      const chosen = setting(row);
      return chosen === null ? null : row.unit?.settings_F[chosen - 1];
    }),
    quantity<Row>(t('tables.frequency'), 'frequency', system, ({ frequency }) => frequency),
    stated(t('tables.threshold'), 'response', ({ channel }) => channel.tripThreshold),
    stated(t('tables.release'), 'share', ({ channel }) => channel.releaseRatio),
    text<Row>(t('tables.output'), ({ output }) => t(`tables.output.${output.mode}`)),
    stated(t('tables.delay'), 'duration', ({ output }) => output.delay_s),
    stated(t('tables.extension'), 'duration', ({ output }) =>
      output.mode === 'presence' ? output.extension_s : null
    ),
    stated(t('tables.pulse'), 'pulse', ({ output }) =>
      output.mode === 'pulse' ? timingsOf(output).pulse_s : null
    ),
    stated(t('tables.longestPresence'), 'duration', ({ output }) =>
      output.mode === 'presence' ? output.longestPresence_s : null
    )
  ];
  return tableOf({
    title: t('tables.settings'),
    rows,
    fields: withoutEmpty(fields, rows),
    notes: [t('tables.settingsNote')]
  });
}
