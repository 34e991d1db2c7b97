/**
 * A unit's output in time, as a pure machine that is led along a response which is straight between its nodes. x is the
 * response −ΔL/L against the empty road, R the reference: what the unit takes for the road at that time; it begins at
 * nothing, tuned on an empty road. d = x − R. Every event's time is a root in closed form; nothing is sampled.
 *
 * - A detection begins when d exceeds the trip threshold and ends when d falls below the release threshold (hysteresis). A
 *   release ratio of 1 counts as 0.999.
 * - Reference. In a detection R follows x with the time constant of the adaptation: dR/dt = (x − R)/τ. While x is below R
 *   it falls back to x, 99 % of the way in the recovery time: τ = recovery/ln 100. Else it stays: that a unit follows the
 *   weather between detections, over minutes to hours, is left out. A detection that ends because R has come up, and not
 *   because the vehicle moves on, is told as tuned out.
 * - Delay. The call begins when a detection has lasted for the delay without a break. One that ends at that very moment
 *   makes no call.
 * - Extension (presence). It counts from the end of the detection. A detection within it holds the call without a delay of
 *   its own; one that begins at its very end does not.
 * - Longest presence. It counts from the beginning of the detection; at its end the call ends at once, without extension,
 *   and R becomes x: the vehicle is tuned out. It comes before a delay that would end at the same time.
 * - Pulse. A pulse of fixed length begins when the delay has run out, whatever happens during it; extension and longest
 *   presence do not count. When the vehicle is still detected the re-arming time after that, R becomes x: it is tuned out
 *   and a further one makes a further pulse. A pulse that would begin during another is not given.
 *
 * Common practice throughout ([P]: pulse of 125 ms, re-arming after about 2 s, full sensitivity within 0.5 s of leaving,
 * presence held for at least 4 min, delay and extension as above). The time that a unit takes to measure is left out.
 */
import type { EventKind } from './results';
import type { Rules } from './rules';

/** Why the unit took a vehicle for the road. */
export type TunedOutBy = 'adaptation' | 're-arming' | 'longest presence';

export interface OutputState {
  readonly time: number;
  readonly response: number;
  readonly reference: number;
  readonly isDetecting: boolean;
  readonly isOn: boolean;
  /** When the delay runs out, the output goes off, the vehicle is tuned out; Infinity for never. */
  readonly callAt: number;
  readonly offAt: number;
  readonly tuneOutAt: number;
}

export const AT_REST: OutputState = {
  time: 0,
  response: 0,
  reference: 0,
  isDetecting: false,
  isOn: false,
  callAt: Infinity,
  offAt: Infinity,
  tuneOutAt: Infinity
};

export interface Witness {
  readonly event: (time: number, kind: EventKind, by?: TunedOutBy) => void;
  /** Where the reference bends within a piece, after the event too where it jumps. */
  readonly node?: (state: OutputState) => void;
}

/** d after `t` seconds of dd/dt = slope − d/τ. */
const relaxed = (d: number, slope: number, tau: number, t: number): number =>
  d + (d - slope * tau) * Math.expm1(-t / tau);

/** When that reaches a level which lies on its way, s. */
const timeTo = (level: number, d: number, slope: number, tau: number): number =>
  -tau * Math.log1p((level - d) / (d - slope * tau));

type Phase = 'detecting' | 'recovering' | 'waiting';

const phaseOf = ({ isDetecting }: OutputState, d: number, slope: number): Phase => {
  if (isDetecting) return 'detecting';
  return d < 0 || (d === 0 && slope < 0) ? 'recovering' : 'waiting';
};

/** When d leaves its phase within `span` seconds; Infinity if it does not. */
function crossing(phase: Phase, d: number, slope: number, span: number, rules: Rules): number {
  const { trip, release, adaptation, recovery } = rules;
  if (phase === 'detecting') {
    if (d < release) return 0;
    return relaxed(d, slope, adaptation, span) < release ? timeTo(release, d, slope, adaptation) : Infinity;
  }
  if (phase === 'recovering')
    return slope > 0 && relaxed(d, slope, recovery, span) > 0 ? timeTo(0, d, slope, recovery) : Infinity;
  if (d > trip) return 0;
  if (slope > 0 && d + slope * span > trip) return (trip - d) / slope;
  return slope < 0 && d + slope * span < 0 ? -d / slope : Infinity;
}

/** The state at `to`, where the response is `response`, without an event on the way. */
function moved(
  from: OutputState,
  phase: Phase,
  slope: number,
  to: number,
  response: number,
  rules: Rules
): OutputState {
  let { reference } = from;
  if (phase !== 'waiting') {
    const tau = phase === 'detecting' ? rules.adaptation : rules.recovery;
    reference = response - relaxed(from.response - reference, slope, tau, to - from.time);
  }
  // field by field: this is done for every node, and spreading is ten times slower
  const { isDetecting, isOn, callAt, offAt, tuneOutAt } = from;
  return { time: to, response, reference, isDetecting, isOn, callAt, offAt, tuneOutAt };
}

/** Where d has come to the end of its phase. */
function passed(
  state: OutputState,
  phase: Phase,
  slope: number,
  rules: Rules,
  witness: Witness
): OutputState {
  const d = state.response - state.reference;
  if (phase === 'detecting') {
    // what the adaptation takes from d in a second, against what the vehicle's moving on takes
    const isAdapted = d / rules.adaptation > -slope;
    if (isAdapted) witness.event(state.time, 'tuned-out', 'adaptation');
    else witness.event(state.time, 'left');
    return ended(state, rules, witness);
  }
  if (phase === 'waiting' && (slope > 0 || d > rules.trip)) return detected(state, rules, witness);
  return { ...state, reference: state.response };
}

function detected(state: OutputState, rules: Rules, witness: Witness): OutputState {
  const { time } = state;
  witness.event(time, 'detected');
  const detecting = { ...state, isDetecting: true };
  if (rules.isPulse) return { ...detecting, callAt: time + rules.delay };
  const limited = { ...detecting, tuneOutAt: time + rules.longest };
  return state.isOn ? { ...limited, offAt: Infinity } : { ...limited, callAt: time + rules.delay };
}

function ended(state: OutputState, rules: Rules, witness: Witness): OutputState {
  const rest = { ...state, isDetecting: false, callAt: Infinity, tuneOutAt: Infinity };
  if (rules.isPulse || !state.isOn) return rest;
  return rules.extension > 0 ? { ...rest, offAt: state.time + rules.extension } : off(rest, witness);
}

function off(state: OutputState, witness: Witness): OutputState {
  witness.event(state.time, 'off');
  return { ...state, isOn: false, offAt: Infinity };
}

function on(state: OutputState, rules: Rules, witness: Witness): OutputState {
  const { time } = state;
  if (!state.isOn) witness.event(time, 'on');
  const called = { ...state, isOn: true, callAt: Infinity };
  if (!rules.isPulse) return called;
  return { ...called, offAt: state.isOn ? state.offAt : time + rules.pulse, tuneOutAt: time + rules.rearm };
}

function tunedOut(state: OutputState, rules: Rules, witness: Witness): OutputState {
  witness.event(state.time, 'tuned-out', rules.isPulse ? 're-arming' : 'longest presence');
  const rest = {
    ...state,
    reference: state.response,
    isDetecting: false,
    callAt: Infinity,
    tuneOutAt: Infinity
  };
  return state.isOn && !rules.isPulse ? off(rest, witness) : rest;
}

/**
 * Led straight to `response` at `to`, which is not before the state's time. What happens at the very end of a piece is
 * part of the next one.
 */
export function advance(
  from: OutputState,
  to: number,
  response: number,
  rules: Rules,
  witness: Witness
): OutputState {
  if (!(to > from.time)) return { ...from, response };
  const slope = (response - from.response) / (to - from.time);
  let state = from;
  for (;;) {
    const d = state.response - state.reference;
    const phase = phaseOf(state, d, slope);
    const cross = state.time + crossing(phase, d, slope, to - state.time, rules);
    const next = Math.min(cross, state.offAt, state.tuneOutAt, state.callAt);
    if (next >= to) return moved(state, phase, slope, to, response, rules);
    const x = from.response + slope * (next - from.time);
    if (next > state.time) state = moved(state, phase, slope, next, x, rules);
    witness.node?.(state);
    // at one and the same time the end of a detection comes first and the beginning of one last
    if (cross === next && phase === 'detecting') state = passed(state, phase, slope, rules, witness);
    else if (state.offAt === next) state = off(state, witness);
    else if (state.tuneOutAt === next) state = tunedOut(state, rules, witness);
    else if (state.callAt === next) state = on(state, rules, witness);
    else state = passed(state, phase, slope, rules, witness);
    witness.node?.(state);
  }
}
