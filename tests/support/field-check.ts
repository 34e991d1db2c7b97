/** A site on which meters were read: on the day of the handing over, and once more a year later. */
import type { CheckedCircuit, CheckedFigure } from '#analysis/fault-finding/checked';
import { judge } from '#analysis/fault-finding/judge';
import type { ExpectedFigure, Limit } from '#analysis/fault-finding/results';
import { circuitOfReading, figuresOfReading, placeOfReading } from '#analysis/fault-finding/visits';
import { accuracyOf } from '#plan/catalogue/instruments';
import { demoSite } from '#plan/demo';
import type { Site } from '#plan/schema';
import { loopsIn } from '#plan/wiring';
import { INSTRUMENTS, visitOf } from './visits';

export function checkedSite(base: Site = demoSite()): Site {
  const [first] = base.circuits;
  return {
    ...base,
    readings: base.circuits.flatMap((circuit, index) => {
      const loop = loopsIn(circuit)[0];
      return loop === undefined ? [] : visitOf(circuit.id, loop, index + 1);
    }),
    fieldCheck: {
      instruments: INSTRUMENTS,
      record: {
        date: '2031-05-04',
        installedBy: 'Gravel & Sons',
        testedBy: 'R. Marten',
        witnessedBy: 'P. Osei',
        remarks: 'Handed over with the gate closed.\nKeys with the porter.',
        circuits: first
          ? [{ circuit: first.id, verdict: 'conditional', remarks: 'Seal the pull box lid.' }]
          : []
      }
    }
  };
}

type Figure = Partial<ExpectedFigure> & Pick<ExpectedFigure, 'testPoint' | 'quantity' | 'value'>;

const figure = (given: Figure): ExpectedFigure => ({
  loop: null,
  low: given.value === null ? null : 0.95 * given.value,
  high: given.value === null ? null : 1.05 * given.value,
  contributions: [],
  frequency_Hz: null,
  vehicle: null,
  limits: [],
  ...given
});

const INSULATION: readonly Limit[] = [{ id: 'wac-296-46b-300-insulation', least: 50e6, most: null }];

/** Invented expectations, for what only looks at how they are written: none of these figures is computed. */
export const checkedAsIf = (site: Site): readonly CheckedCircuit[] =>
  site.circuits.map((circuit) => {
    const figures = [
      ...loopsIn(circuit).flatMap((loop) => [
        figure({ testPoint: 'loop', loop, quantity: 'resistanceDc_ohm', value: 0.4 }),
        figure({ testPoint: 'loop', loop, quantity: 'inductance_H', value: 7.5e-5, frequency_Hz: 2e4 }),
        figure({ testPoint: 'loop', loop, quantity: 'insulation_ohm', value: null, limits: INSULATION })
      ]),
      figure({
        testPoint: 'cabinet',
        quantity: 'resistanceDc_ohm',
        value: 0.95,
        limits: [{ id: 'wsdot-8-20-resistance', least: null, most: 5 }]
      }),
      figure({ testPoint: 'cabinet', quantity: 'inductance_H', value: 1e-4, frequency_Hz: 2e4 }),
      figure({ testPoint: 'cabinet', quantity: 'q', value: 14, frequency_Hz: 2e4 }),
      figure({ testPoint: 'cabinet', quantity: 'insulation_ohm', value: null, limits: INSULATION }),
      figure({ testPoint: 'unit', quantity: 'frequency_Hz', value: 48_200 }),
      ...circuit.detect.map((vehicle) =>
        figure({
          testPoint: 'unit',
          quantity: 'deltaLOverL',
          value: -0.03,
          low: -0.033,
          high: -0.027,
          vehicle
        })
      )
    ];
    const measured = site.readings.flatMap((reading, place) => {
      if (circuitOfReading(site, reading) !== circuit.id) return [];
      const at = placeOfReading(site, reading);
      return figuresOfReading(reading).map(({ quantity, value }): CheckedFigure => {
        const expected =
          figures.find(
            (each) => each.quantity === quantity && each.testPoint === at.testPoint && each.loop === at.loop
          ) ?? null;
        const { verdict, deviations } = judge(quantity, value, expected, accuracyOf(site, reading, quantity));
        return { ...at, reading: place, quantity, value, expected, verdict, deviations };
      });
    });
    return { circuit: circuit.id, figures, measured };
  });
