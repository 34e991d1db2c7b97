/** Readings that the model itself predicts, a test point each: what a diagnosis makes of them is the question, not where they come from. */
import type { ConcreteFault, Prepared } from '#analysis/fault-finding/forward/contract';
import { diagnoseInSteps } from '#analysis/fault-finding/diagnose';
import type { Diagnosis, RankedCause } from '#analysis/fault-finding/results';
import { createMeans, type Means } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { Quantity, Reading, Site, TestPoint } from '#plan/schema';
import { channel, circuit, loop, QUICK_VEHICLES, siteOf, square, unit } from '../../support/sites';
import { figure, preparedOf } from './prepared';

const tuned = (number: number, frequencySetting: number) => ({
  channel: channel('U1', number, { frequency_Hz: null, frequencySetting })
});

/** Two loops in series and one by itself. */
export const site: Site = siteOf({
  loops: [
    loop('L1', square(0, 0), { tail: { length: 4 } }),
    loop('L2', square(0, 2.2), { turns: 4, tail: { length: 6 } }),
    loop('L3', square(6, 0), { turns: 5 })
  ],
  circuits: [
    circuit('C1', ['L1', 'L2'], { leadIn: { cable: 'pair-14', length: 80 }, ...tuned(1, 2) }),
    circuit('C2', ['L3'], tuned(2, 1))
  ],
  units: [unit('U1')],
  vehicles: QUICK_VEHICLES
});

export const prepared: Prepared = preparedOf(site);
const means: Means = createMeans();

export interface Wanted {
  readonly testPoint: TestPoint;
  readonly loop?: string;
  readonly quantities: readonly Quantity[];
}

export const AT_CABINET: Wanted = {
  testPoint: 'cabinet',
  quantities: ['resistanceDc_ohm', 'inductance_H', 'q', 'insulation_ohm']
};
export const AT_UNIT: Wanted = { testPoint: 'unit', quantities: ['frequency_Hz'] };
const AT_LOOPS: readonly Wanted[] = ['L1', 'L2'].map((name) => ({
  testPoint: 'loop',
  loop: name,
  quantities: ['resistanceDc_ohm', 'inductance_H', 'q', 'insulation_ohm']
}));
export const EVERYWHERE: readonly Wanted[] = [...AT_LOOPS, AT_CABINET, AT_UNIT];

const SOUND = 5e8;

export const readingsUnder = (
  faults: readonly ConcreteFault[],
  wanted: readonly Wanted[],
  over: Partial<Reading> = {}
): Reading[] =>
  wanted.map(({ testPoint, loop: name, quantities }): Reading => {
    const asked = quantities.map((quantity) => figure(testPoint, quantity, { loop: name ?? null }));
    const predicted = prepared.predict(faults, asked);
    const values: Partial<Record<Quantity, number>> = {};
    const overRange: Quantity[] = [];
    quantities.forEach((quantity, k) => {
      const value = predicted[k]!;
      if (value === 'over range') overRange.push(quantity);
      else if (value === 'sound') values[quantity] = SOUND;
      else if (value !== null) values[quantity] = value;
    });
    return { circuit: 'C1', testPoint, ...(name ? { loop: name } : {}), ...values, overRange, ...over };
  });

export const diagnosed = (readings: readonly Reading[], circuitId = 'C1', base: Site = site): Diagnosis => {
  const answer = finish(diagnoseInSteps({ ...base, readings: [...readings] }, { circuit: circuitId }, means));
  if (!answer) throw new Error('no diagnosis');
  return answer;
};

export const kindsOf = ({ faults }: RankedCause): string =>
  faults
    .map(({ kind }) => kind)
    .sort()
    .join(' + ');

export const firstOf = ({ causes }: Diagnosis): string => kindsOf(causes[0]!);

export const probabilityOf = ({ causes }: Diagnosis, kind: string): number =>
  causes.filter((cause) => kindsOf(cause) === kind).reduce((sum, { probability }) => sum + probability, 0);
