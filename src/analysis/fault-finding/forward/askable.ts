/** Every figure that can be asked of a circuit's meters. */
import type { Quantity, TestPoint } from '#plan/schema';
import type { AskedFigure } from './contract';
import type { Core } from './core';

const AT_LOOP: readonly Quantity[] = ['resistanceDc_ohm', 'inductance_H', 'q', 'insulation_ohm'];
const AT_CABINET: readonly Quantity[] = [
  'resistanceDc_ohm',
  'inductance_H',
  'q',
  'insulation_ohm',
  'insulationBetween_ohm'
];
const AT_UNIT: readonly Quantity[] = ['frequency_Hz', 'inductance_H', 'q'];

const asked = (testPoint: TestPoint, loop: string | null, quantity: Quantity): AskedFigure => ({
  ...{ testPoint, loop, quantity },
  meterFrequency_Hz: null,
  temperature_C: null,
  setting: null,
  vehicle: null
});

/** Under the usual conditions. */
export const askableFigures = ({ circuit, nominal, vehicles }: Core): readonly AskedFigure[] => {
  const hasUnit = circuit.channel !== null;
  return [
    ...nominal.design.loops.flatMap(({ id }) => AT_LOOP.map((quantity) => asked('loop', id, quantity))),
    ...AT_LOOP.map((quantity) => asked('pull-box', null, quantity)),
    ...AT_CABINET.map((quantity) => asked('cabinet', null, quantity)),
    ...(hasUnit ? AT_UNIT.map((quantity) => asked('unit', null, quantity)) : []),
    ...(hasUnit ? vehicles.map((vehicle) => ({ ...asked('unit', null, 'deltaLOverL'), vehicle })) : [])
  ];
};

/** Those worth a way: with one loop the pull box says what the loop says, and no unit shows its Q. */
export const worthMeasuring = (core: Core): readonly AskedFigure[] => {
  const isAlone = core.nominal.design.loops.length === 1;
  return askableFigures(core).filter(
    ({ testPoint, quantity }) =>
      !(isAlone && testPoint === 'pull-box') && !(testPoint === 'unit' && quantity === 'q')
  );
};
