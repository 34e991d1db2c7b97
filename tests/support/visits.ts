/** What two visits to a circuit brought: on the day of the handing over, and a year later. Needs no module of the product. */
import type { FieldCheck, Reading } from '#plan/schema';

const COMMISSIONED = '2031-05-04T10:20';
const LATER = '2032-06-11T08:05';

/** As readings of a circuit come in on one visit. */
export function visitOf(circuit: string, loop: string, number: number): readonly Reading[] {
  const common = {
    circuit,
    at: COMMISSIONED,
    by: 'RM',
    temperature_C: 18,
    weather: 'dry',
    isCommissioning: true
  } as const;
  return [
    {
      ...common,
      id: `R${number}a`,
      loop,
      testPoint: 'loop',
      resistanceDc_ohm: 0.41,
      inductance_H: 76e-6,
      insulation_ohm: 4.2e8,
      instruments: ['i1', 'i2'],
      insulationVoltage_V: 500
    },
    {
      ...common,
      id: `R${number}b`,
      testPoint: 'cabinet',
      resistanceDc_ohm: 0.93,
      inductance_H: 9.9e-5,
      q: 14.2,
      overRange: ['insulation_ohm'],
      instruments: ['i1', 'i2']
    },
    {
      circuit,
      at: LATER,
      by: 'J. T.',
      temperature_C: 24,
      weather: 'wet',
      id: `R${number}c`,
      testPoint: 'cabinet',
      resistanceDc_ohm: 2.6,
      insulation_ohm: 8e5,
      instruments: ['i1'],
      note: 'Rain since Tuesday.'
    }
  ];
}

export const INSTRUMENTS: NonNullable<FieldCheck['instruments']> = [
  { id: 'i1', name: 'Bridge 12', accuracies: [], testFrequency_Hz: 20_000 },
  { id: 'i2', name: 'Insulation tester 3', accuracies: [] }
];
