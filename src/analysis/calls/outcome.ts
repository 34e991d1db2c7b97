/** The output machine led along a whole response: its events, its detections and its calls. */
import type { Steps } from '../steps';
import { AT_REST, advance, type OutputState, type TunedOutBy } from './output';
import type { ChannelEvent, EventKind } from './results';
import type { Rules } from './rules';
import type { Curve } from './signal';

export interface Detection {
  readonly from: number;
  readonly to: number;
  /** 'end': the simulation ended first. */
  readonly by: 'leaving' | TunedOutBy | 'end';
}

export interface MadeCall {
  readonly from: number;
  readonly to: number;
  /** Number of the detection that made it. */
  readonly detection: number;
}

export interface Outcome {
  readonly events: readonly ChannelEvent[];
  readonly detections: readonly Detection[];
  readonly calls: readonly MadeCall[];
  /** States from time to time, from which a part can be led again: each with the number of the next node. */
  readonly waypoints: readonly { readonly state: OutputState; readonly node: number }[];
}

/** Nodes from one waypoint to the next. */
const WAYPOINT = 256;
/** Nodes between two places where a newer drawing may come in. */
const AT_ONCE = 1 << 14;

export function* outcomeInSteps({ at, values }: Curve, rules: Rules): Steps<Outcome> {
  const events: ChannelEvent[] = [];
  const detections: Detection[] = [];
  const calls: MadeCall[] = [];
  const waypoints: { state: OutputState; node: number }[] = [];
  let since = 0;
  let onSince = 0;
  let maker = 0;
  const event = (time: number, kind: EventKind, by?: TunedOutBy): void => {
    events.push({ time_s: time, kind });
    if (kind === 'detected') since = time;
    else if (kind === 'left' || kind === 'tuned-out')
      detections.push({ from: since, to: time, by: by ?? 'leaving' });
    else if (kind === 'on') [onSince, maker] = [time, detections.length];
    else calls.push({ from: onSince, to: time, detection: maker });
  };
  let state: OutputState = { ...AT_REST, time: at[0] ?? 0, response: values[0] ?? 0 };
  for (let node = 1; node < at.length; node++) {
    if (node % WAYPOINT === 1) waypoints.push({ state, node });
    state = advance(state, at[node]!, values[node]!, rules, { event });
    if (node % AT_ONCE === 0) yield;
  }
  if (state.isDetecting) detections.push({ from: since, to: state.time, by: 'end' });
  if (state.isOn) calls.push({ from: onSince, to: state.time, detection: maker });
  return { events, detections, calls, waypoints };
}
