/** What meters show on one design with faults in it. */
import { USUAL_METER_FREQUENCY } from '#plan/catalogue/instruments';
import { scale, type Complex } from '#physics/numeric/complex';
import type { AskedFigure, Predicted } from '../forward/contract';
import { atBox, atCabinet, ofLoop } from './box';
import { coilMatrix, windingsOf, type Point } from './coils';
import type { Added, Design } from './design';
import { dcAtBox, dcAtCabinet, dcOfLoop } from './direct-current';
import { capacitanceBehind, runningFrequency } from './frequency';
import { between, toGround } from './insulation';
import { BOX, createMemos } from './memo';
import { soundState, type State } from './state';
import type { SteelNear } from './steel-near';

/** A vehicle at a place: what it adds to the loops. */
export interface Stood {
  readonly vehicle: string;
  readonly added: Added;
}

export interface MeterMeans {
  /** Null while nobody has asked for it. */
  readonly steelNear: SteelNear | null;
  readonly otherCircuit: (id: string) => Design | null;
  /** A vehicle at each place where it may answer most; null for one that was not prepared. */
  readonly vehicle: (id: string) => readonly Stood[] | null;
  /** Of the unit's settings, F, from the first. */
  readonly settings_F: readonly number[];
  /** Setting at which the channel was designed; null for one whose frequency is given. */
  readonly designedSetting: number | null;
  /** Capacitance, F, behind a frequency that was given; null where there is no channel, or a setting. */
  readonly capacitance: number | null;
  /** Hz, as designed. */
  readonly operatingFrequency: number;
}

export interface Meter {
  readonly read: (state: State, asked: AskedFigure) => Predicted;
  /** At the terminals of the sound circuit, Ω. */
  readonly terminals: (point: Point) => Complex | null;
}

/** Ends of an open pair look like a capacitor: a meter that is set to inductance shows nothing. */
const inductanceIn = (impedance: Complex | null, frequency: number): number | null =>
  impedance && impedance.im > 0 ? impedance.im / (2 * Math.PI * frequency) : null;

const scaled =
  (added: Added, factor: number): Added =>
  (i, j) =>
    scale(added(i, j), factor);

export const createMeter = (design: Design, means: MeterMeans): Meter => {
  const memos = createMemos((state) => {
    const other = state.other === null ? null : means.otherCircuit(state.other);
    return other ? windingsOf(other, soundState(other)) : windingsOf(design, state);
  });

  const matrixAt = (state: State, point: Point, stood: Stood | null) => {
    const added: Added[] = [];
    if (design.steelAt) added.push(design.steelAt(point.frequency));
    const { steel } = state;
    const near = steel && means.steelNear;
    if (near) added.push(near.at(steel, point.frequency));
    if (stood)
      added.push(near ? scaled(stood.added, near.vehicleShare(stood.vehicle, steel.depth)) : stood.added);
    return coilMatrix(design, state, memos.of(state).windings, point, added);
  };

  /** Of the designed circuit's loops, or of those of another that hang here instead. */
  const solvedBox = (state: State, point: Point, stood: Stood | null): Complex | null => {
    if (state.other === null) return atBox(design, state, matrixAt(state, point, stood), point);
    const other = means.otherCircuit(state.other);
    if (!other) return null;
    const sound = soundState(other);
    const added = other.steelAt ? [other.steelAt(point.frequency)] : [];
    return atBox(other, sound, coilMatrix(other, sound, memos.of(state).windings, point, added), point);
  };

  const boxAt = (state: State, point: Point, stood: Stood | null): Complex | null =>
    memos.of(state).at(BOX, point, stood, () => solvedBox(state, point, stood));

  const atTerminals = (state: State, point: Point, stood: Stood | null): Complex | null =>
    atCabinet(design, state, boxAt(state, point, stood), point);

  /** On the way to a frequency, where every point is another: the pull box from its neighbours in frequency. */
  const nearTerminals = (state: State, point: Point): Complex | null => {
    const box = memos
      .of(state)
      .smoothly(point, (frequency) => solvedBox(state, { ...point, frequency }, null));
    return atCabinet(design, state, box, point);
  };

  const capacitanceFor = (state: State, asked: AskedFigure): number | null => {
    const setting = state.setting ?? asked.setting ?? means.designedSetting;
    return setting === null ? means.capacitance : (means.settings_F[setting - 1] ?? null);
  };

  const runningOf = (state: State, asked: AskedFigure, temperature: number): number | null => {
    const capacitance = capacitanceFor(state, asked);
    if (capacitance === null) return null;
    return memos.running(state, capacitance, temperature, () =>
      runningFrequency(
        (frequency) => nearTerminals(state, { frequency, temperature }),
        capacitance,
        means.operatingFrequency
      )
    );
  };

  const temperatureOf = ({ temperature_C }: AskedFigure): number =>
    temperature_C ?? design.site.temperature_C;

  /** Hz; null where the unit finds none. */
  const frequencyOf = (state: State, asked: AskedFigure): number | null => {
    if (asked.testPoint === 'unit') {
      if (asked.meterFrequency_Hz !== null) return asked.meterFrequency_Hz;
      const isTuned = capacitanceFor(state, asked) !== null;
      return isTuned ? runningOf(state, asked, temperatureOf(asked)) : means.operatingFrequency;
    }
    return state.meterFrequency ?? asked.meterFrequency_Hz ?? USUAL_METER_FREQUENCY;
  };

  /** Whatever hangs on the lead-in, the loops of the circuit itself lie where they were. */
  const asDesigned = (state: State): State => (state.other === null ? state : { ...state, other: null });

  const impedanceFor = (
    state: State,
    asked: AskedFigure,
    point: Point,
    stood: Stood | null
  ): Complex | null => {
    if (asked.testPoint === 'loop') {
      const k = design.loops.findIndex(({ id }) => id === asked.loop);
      if (k < 0) return null;
      const own = asDesigned(state);
      return memos
        .of(own)
        .at(k, point, stood, () => ofLoop(design, own, matrixAt(own, point, stood), point, k));
    }
    if (asked.testPoint === 'pull-box') return boxAt(asDesigned(state), point, stood);
    return atTerminals(state, point, stood);
  };

  const pointFor = (state: State, asked: AskedFigure): Point | null => {
    const frequency = frequencyOf(state, asked);
    return frequency === null ? null : { frequency, temperature: temperatureOf(asked) };
  };

  const inductance = (state: State, asked: AskedFigure): Predicted => {
    const point = pointFor(state, asked);
    const value = point && inductanceIn(impedanceFor(state, asked, point, null), point.frequency);
    return value ?? 'over range';
  };

  const q = (state: State, asked: AskedFigure): Predicted => {
    const point = pointFor(state, asked);
    const impedance = point && impedanceFor(state, asked, point, null);
    return impedance && impedance.im > 0 ? impedance.im / impedance.re : 'over range';
  };

  /** Driven to where it lowers the inductance most. */
  const response = (state: State, asked: AskedFigure): Predicted => {
    const places = asked.vehicle === null ? null : means.vehicle(asked.vehicle);
    if (!places) return null;
    const point = pointFor(state, asked);
    if (!point) return 'over range';
    const henries = (stood: Stood | null): number | null =>
      inductanceIn(impedanceFor(state, asked, point, stood), point.frequency);
    const still = henries(null);
    if (!still) return 'over range';
    let least = Infinity;
    for (const stood of places) {
      const there = henries(stood);
      if (there) least = Math.min(least, there / still - 1);
    }
    return least < Infinity ? least : 'over range';
  };

  const directCurrent = (state: State, asked: AskedFigure): Predicted => {
    const temperature = temperatureOf(asked);
    const { testPoint, loop } = asked;
    const k = design.loops.findIndex(({ id }) => id === loop);
    const box = (): number => {
      const other = testPoint === 'pull-box' || state.other === null ? null : means.otherCircuit(state.other);
      return other ? dcAtBox(other, soundState(other), temperature) : dcAtBox(design, state, temperature);
    };
    if (testPoint === 'loop' && k < 0) return null;
    const value =
      testPoint === 'loop'
        ? dcOfLoop(design, state, k, temperature)
        : testPoint === 'pull-box'
          ? box()
          : dcAtCabinet(design, state, box(), temperature);
    return value === Infinity ? 'over range' : value;
  };

  const frequency = (state: State, asked: AskedFigure): Predicted => {
    if (asked.testPoint !== 'unit' || capacitanceFor(state, asked) === null) return null;
    return runningOf(state, asked, temperatureOf(asked)) ?? 'over range';
  };

  const READ: Readonly<Record<AskedFigure['quantity'], Meter['read']>> = {
    resistanceDc_ohm: directCurrent,
    inductance_H: inductance,
    q,
    frequency_Hz: frequency,
    insulation_ohm: (state, asked) => toGround(design, state, asked),
    insulationBetween_ohm: (state, asked) => between(design, state, asked, temperatureOf(asked)),
    deltaLOverL: response
  };
  return {
    read: (state, asked) => READ[asked.quantity](state, asked),
    terminals: (point) => atTerminals(soundState(design), point, null)
  };
};

/** F, of a channel whose frequency is given; null where the terminals are no inductance there. */
export const givenCapacitance = (meter: Meter, point: Point): number | null => {
  const terminals = meter.terminals(point);
  return terminals && capacitanceBehind(terminals, point.frequency);
};
