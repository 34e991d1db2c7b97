/** How far figures move together for the design's tolerances, about what faults make of the circuit. */
import { DEVIATIONS } from '../../tolerance/range';
import type { ToleranceInput } from '../../results';
import { stateWith } from '../network/faults';
import type { State } from '../network/state';
import type { AskedFigure, ConcreteFault, Predicted, Spread } from './contract';
import type { Core, Shifted, ShiftedEnds } from './core';
import { MODEL_ERROR } from './model-error';

/** A thermometer in the cabinet or on the road is off from the wire in the slot by so many kelvins, nineteen times in twenty; common practice. */
const METER_TEMPERATURE = 3;

/** What acts on the loops: of another circuit's loops it is taken to act alike. */
const OF_LOOPS: ReadonlySet<ToleranceInput> = new Set<ToleranceInput>([
  'dimensions',
  'depth',
  'wirePitch',
  'permittivity'
]);

export interface ReadEnd {
  readonly share: number;
  readonly value: Predicted;
}

/** A design's end with faults in it. */
interface FaultyEnd {
  readonly end: Shifted;
  readonly state: State;
}

const faulty = (end: Shifted, faults: readonly ConcreteFault[]): FaultyEnd => ({
  end,
  state: stateWith(end.design, faults)
});

/** `sign`: which end it is. The temperature is known better where the reading tells it. */
const readEnd = (
  input: ToleranceInput,
  { end, state }: FaultyEnd,
  sign: 1 | -1,
  asked: AskedFigure
): ReadEnd => {
  if (input !== 'temperature' || asked.temperature_C === null)
    return { share: end.share, value: end.meter.read(state, asked) };
  const temperature_C = asked.temperature_C + sign * METER_TEMPERATURE;
  // at a temperature that is told, a design of another temperature is this one
  return { share: sign, value: end.meter.read(state, { ...asked, temperature_C }) };
};

/** What a figure of the sound circuit is with one input off, below and above. */
export const readEnds = (
  { input, below, above }: ShiftedEnds,
  asked: AskedFigure
): { readonly below: ReadEnd; readonly above: ReadEnd } => ({
  below: readEnd(input, faulty(below, []), -1, asked),
  above: readEnd(input, faulty(above, []), 1, asked)
});

const isInsulation = ({ quantity }: AskedFigure): boolean =>
  quantity === 'insulation_ohm' || quantity === 'insulationBetween_ohm';

/** These bend: of the others one end tells as much as both. */
const BENDS: ReadonlySet<ToleranceInput> = new Set<ToleranceInput>(['permittivity', 'vehicleHeight']);

interface FaultyEnds {
  readonly input: ToleranceInput;
  readonly below: FaultyEnd | null;
  readonly above: FaultyEnd;
}

const withFaults = ({ input, below, above }: ShiftedEnds, faults: readonly ConcreteFault[]): FaultyEnds => ({
  input,
  below: !BENDS.has(input) && above.share !== 0 ? null : faulty(below, faults),
  above: faulty(above, faults)
});

/** For one standard deviation. */
const derivative = ({ input, below, above }: FaultyEnds, asked: AskedFigure, value: Predicted): number => {
  const known = [
    ...(below ? [readEnd(input, below, -1, asked)] : []),
    { share: 0, value },
    readEnd(input, above, 1, asked)
  ].filter(
    (end): end is { share: number; value: number } => typeof end.value === 'number' && end.value !== 0
  );
  const [first, last] = [known[0], known.at(-1)];
  if (!first || !last || first.share === last.share) return 0;
  return Math.log(Math.abs(last.value / first.value)) / (last.share - first.share) / DEVIATIONS;
};

export const spreadOf = (
  { nominal, ends }: Core,
  faults: readonly ConcreteFault[],
  asked: readonly AskedFigure[]
): Spread => {
  const hasOther = faults.some(({ kind }) => kind === 'other loop');
  const isOwn = ({ input }: ShiftedEnds): boolean => hasOther && OF_LOOPS.has(input);
  const faultyEnds = ends.map((each) => withFaults(each, isOwn(each) ? [] : faults));
  const state = stateWith(nominal.design, faults);
  const sound = stateWith(nominal.design, []);
  const derivatives = asked.map((figure) => {
    if (isInsulation(figure)) return ends.map(() => 0);
    const value = nominal.meter.read(state, figure);
    const own = hasOther ? nominal.meter.read(sound, figure) : value;
    return faultyEnds.map((each, k) => derivative(each, figure, isOwn(ends[k]!) ? own : value));
  });
  return {
    inputs: ends.map(({ input }) => input),
    derivatives,
    model: asked.map(({ quantity }) => MODEL_ERROR[quantity])
  };
};
