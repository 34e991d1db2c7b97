/** A part of a response with the reference that the unit takes it against, led again from the waypoint before. */
import { AT_REST, advance, type OutputState } from './output';
import type { Outcome } from './outcome';
import type { Rules } from './rules';
import { valueOn, type Curve } from './signal';

export interface TracedPart {
  readonly times: Float64Array;
  readonly responses: Float64Array;
  readonly references: Float64Array;
}

/** Parts of a time constant between two values of a reference that moves: the chord errs by under 1 % of what it moves. */
const PARTS = 4;
/** Of the trip threshold: what is left of a recovery below that is drawn in one go. */
const NEGLIGIBLE = 1e-3;

const waypointBefore = ({ waypoints }: Outcome, time: number) => {
  let low = 0;
  let high = waypoints.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (waypoints[middle]!.state.time <= time) low = middle;
    else high = middle - 1;
  }
  return waypoints[low] ?? { state: AT_REST, node: 1 };
};

const quiet = (): void => {};

/** From `from` to `to`, both within the response. */
export function tracedPart(
  response: Curve,
  outcome: Outcome,
  rules: Rules,
  from: number,
  to: number
): TracedPart {
  const times: number[] = [];
  const responses: number[] = [];
  const references: number[] = [];
  const node = ({ time, response: x, reference }: OutputState): void => {
    if (time < from || time > to) return;
    const last = times.length - 1;
    if (last >= 0 && times[last] === time && references[last] === reference) return;
    times.push(time);
    responses.push(x);
    references.push(reference);
  };
  const waypoint = waypointBefore(outcome, from);
  let { state } = waypoint;
  const { at } = response;
  const lead = (until: number): void => {
    state = advance(state, until, valueOn(response, until), rules, { event: quiet, node });
  };
  for (let k = waypoint.node; k < at.length && state.time < to; k++) {
    if (state.time < from && at[k]! > from) lead(from);
    node(state);
    const end = Math.min(at[k]!, to);
    while (state.time < end) {
      const isStill = !state.isDetecting && state.reference - state.response < NEGLIGIBLE * rules.trip;
      const tau = state.isDetecting ? rules.adaptation : rules.recovery;
      lead(isStill ? end : Math.min(end, state.time + tau / PARTS));
      node(state);
    }
  }
  node(state);
  return {
    times: Float64Array.from(times),
    responses: Float64Array.from(responses),
    references: Float64Array.from(references)
  };
}

/** What the unit takes for the road at a time within the response. */
export function referenceAt(response: Curve, outcome: Outcome, rules: Rules, time: number): number {
  const { references } = tracedPart(response, outcome, rules, time, time);
  return references[references.length - 1] ?? 0;
}
