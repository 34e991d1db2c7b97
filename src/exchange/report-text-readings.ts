/** Readings, and what explains them, in the report for people. */
import { READING_QUANTITIES, type Quantity } from '#plan/schema';
import type { QuantityKind } from '#units/kind';
import type { ReportedVisit } from './report-readings';
import type { Say } from './report-text-model';
import { block, blockIfAny } from './text-table';

const SHOWN: Readonly<Record<Quantity, { readonly name: string; readonly kind: QuantityKind }>> = {
  resistanceDc_ohm: { name: 'R dc', kind: 'resistance' },
  inductance_H: { name: 'L', kind: 'inductance' },
  q: { name: 'Q', kind: 'plain' },
  frequency_Hz: { name: 'f', kind: 'frequency' },
  insulation_ohm: { name: 'insulation', kind: 'insulation' },
  insulationBetween_ohm: { name: 'insulation between', kind: 'insulation' },
  deltaLOverL: { name: 'ΔL/L', kind: 'ratio' }
};

const percent = (share: number, say: Say): string => say(share, 'ratio');

export function readingsBlock(visits: readonly ReportedVisit[], say: Say): string[] {
  const day = (visit: ReportedVisit): string => visit.day ?? 'undated';
  const figures = visits.flatMap((visit) =>
    visit.readings.flatMap((reading) =>
      READING_QUANTITIES.flatMap((quantity) => {
        const figure = reading[quantity];
        if (!figure) return [];
        const { name, kind } = SHOWN[quantity];
        const { measured, expected, low, high, deviations, verdict } = figure;
        const place = reading.loop === null ? reading.testPoint : `${reading.testPoint} ${reading.loop}`;
        return [
          [
            visit.circuit,
            day(visit),
            place,
            name,
            measured === null ? 'over range' : say(measured, kind),
            expected === null ? '–' : say(expected, kind),
            low === null || high === null ? '–' : `${say(low, kind)} … ${say(high, kind)}`,
            deviations === null ? '–' : say(deviations, 'plain'),
            verdict
          ]
        ];
      })
    )
  );
  const causes = visits.flatMap((visit) =>
    visit.causes.map(({ probability, faults }) => [
      visit.circuit,
      day(visit),
      percent(probability, say),
      faults.map(({ kind, subject }) => (subject === null ? kind : `${kind} (${subject})`)).join(' and ')
    ])
  );
  return [
    ...block(
      'Readings',
      [
        ['circuit', 'visit', 'where', 'what', 'measured', 'expected', 'plausible', 'deviations', 'verdict'],
        ...figures
      ],
      'none'
    ),
    ...blockIfAny('What explains the readings', [['circuit', 'visit', 'probability', 'cause'], ...causes]),
    ...blockIfAny('How far along the lead-in a short lies, from the cabinet', [
      ['circuit', 'visit', 'from', 'distance', 'low … high', 'of'],
      ...visits.flatMap((visit) =>
        visit.distances.map(({ from, distance_m, leadIn_m }) => [
          visit.circuit,
          day(visit),
          from,
          say(distance_m.value, 'length'),
          `${say(distance_m.low, 'length')} … ${say(distance_m.high, 'length')}`,
          say(leadIn_m, 'length')
        ])
      )
    ])
  ];
}
