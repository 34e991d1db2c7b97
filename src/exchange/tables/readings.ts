/** What a meter should read, and within which limits, before and after a loop is sealed and at the cabinet. */
import type { CircuitReadout, LoopReadout, VehicleResponse } from '#analysis/results';
import { t } from '#i18n/message';
import { loopsIn } from '#plan/wiring';
import type { Circuit } from '#plan/schema';
import { format } from '#units/format';
import type { ExportSource } from '../files/exported';
import { number, quantity, tableOf, text, withoutEmpty } from './fields';
import { circuitName, loopName, nameOf, vehicleName } from './names';
import { rangedNumber, rangedQuantity } from './ranges';
import type { Table } from './table';

type Source = Pick<ExportSource, 'site' | 'assessment'>;

interface CircuitRow {
  readonly circuit: Circuit;
  readonly readout: CircuitReadout | undefined;
}

const rowsOf = ({ site, assessment }: Source): readonly CircuitRow[] =>
  site.circuits.map((circuit) => ({
    circuit,
    readout: assessment.circuits.find(({ id }) => id === circuit.id)
  }));

const conditions = ({ site }: Source): string =>
  t('tables.conditions', {
    temperature: format(site.temperature_C, 'temperature', site.displayUnits).text
  });

/** At the unit's terminals. */
export function cabinetReadings(source: Source): Table {
  const { displayUnits: system } = source.site;
  type Ranged = 'resistanceDc_ohm' | 'inductance_H' | 'q' | 'frequency_Hz';
  const of =
    (figure: Ranged) =>
    ({ readout }: CircuitRow) => ({ value: readout?.[figure], range: readout?.ranges?.[figure] });
  return tableOf({
    title: t('tables.atCabinet'),
    rows: rowsOf(source),
    fields: [
      text<CircuitRow>(t('tables.circuit'), ({ circuit }) => nameOf(circuit)),
      ...rangedQuantity(t('tables.resistanceDc'), 'resistance', system, of('resistanceDc_ohm')),
      ...rangedQuantity(t('tables.inductance'), 'inductance', system, of('inductance_H')),
      ...rangedNumber(t('tables.q'), 1, of('q')),
      ...rangedQuantity(t('tables.frequency'), 'frequency', system, of('frequency_Hz'))
    ],
    notes: [t('tables.rangeNote'), t('tables.cabinetNote'), conditions(source)]
  });
}

interface LoopRow {
  readonly loop: string;
  readonly circuit: string;
  readonly readout: LoopReadout | undefined;
  readonly readouts: CircuitReadout | undefined;
}

/** At the ends of each loop, before its tail. */
export function loopReadings(source: Source): Table {
  const { site, assessment } = source;
  const { displayUnits: system } = site;
  const rows: readonly LoopRow[] = site.loops.map(({ id }) => {
    const circuit = site.circuits.find((each) => loopsIn(each).includes(id));
    return {
      loop: id,
      circuit: circuit ? circuitName(site, circuit.id) : '',
      readout: assessment.loops.find((each) => each.id === id),
      readouts: assessment.circuits.find((each) => each.id === circuit?.id)
    };
  });
  type Ranged = 'resistanceDc_ohm' | 'inductance_H' | 'selfResonance_Hz';
  const of =
    (figure: Ranged) =>
    ({ loop, readout, readouts }: LoopRow) => ({
      value: readout?.[figure],
      range: readouts?.ranges?.loops.find(({ id }) => id === loop)?.[figure]
    });
  return tableOf({
    title: t('tables.atLoop'),
    rows,
    fields: [
      text<LoopRow>(t('tables.loop'), ({ loop }) => loopName(site, loop)),
      text<LoopRow>(t('tables.circuit'), ({ circuit }) => circuit),
      ...rangedQuantity(t('tables.resistanceDc'), 'resistance', system, of('resistanceDc_ohm')),
      ...rangedQuantity(t('tables.inductance'), 'inductance', system, of('inductance_H')),
      quantity<LoopRow>(
        t('tables.selfResonance'),
        'resonance',
        system,
        ({ readout }) => readout?.selfResonance_Hz
      )
    ],
    notes: [t('tables.rangeNote'), t('tables.loopNote'), conditions(source)]
  });
}

interface VehicleRow extends CircuitRow {
  readonly response: VehicleResponse;
}

/** The weakest path across the lane of every vehicle; of those alone that are asked for where `onlyWanted`. */
export function vehicleReadings(source: Source, { onlyWanted = false } = {}): Table {
  const { site } = source;
  const { displayUnits: system } = site;
  const rows = rowsOf(source).flatMap((row): VehicleRow[] =>
    (row.readout?.responses ?? [])
      .filter(({ wanted }) => wanted || !onlyWanted)
      .map((response) => ({ ...row, response }))
  );
  const drop = ({ response, readout }: VehicleRow) => {
    const range = readout?.ranges?.responses.find(({ vehicle }) => vehicle === response.vehicle)?.worst;
    return { value: -response.worst, range: range && { low: -range.high, high: -range.low } };
  };
  const fields = [
    text<VehicleRow>(t('tables.circuit'), ({ circuit }) => nameOf(circuit)),
    text<VehicleRow>(t('tables.vehicle'), ({ response }) => vehicleName(site, response.vehicle)),
    ...(onlyWanted
      ? []
      : [
          text<VehicleRow>(t('tables.wanted'), ({ response }) =>
            response.wanted ? t('tables.yes') : t('tables.no')
          )
        ]),
    ...rangedQuantity(t('tables.drop'), 'response', system, drop),
    quantity<VehicleRow>(
      t('tables.threshold'),
      'response',
      system,
      ({ circuit }) => circuit.channel?.tripThreshold
    ),
    number<VehicleRow>(t('tables.margin'), 1, ({ response }) => response.margin)
  ];
  return tableOf({
    title: t('tables.vehicles'),
    rows,
    fields: withoutEmpty(fields, rows),
    notes: [t('tables.vehicleNote'), t('tables.rangeNote')]
  });
}

/** All of them, in the order in which they are read. */
export const readingTables = (source: Source): readonly Table[] => [
  loopReadings(source),
  cabinetReadings(source),
  vehicleReadings(source)
];
