/** Responses written down node by node, and what the output machine makes of them. */
import { outcomeInSteps } from '#analysis/calls/outcome';
import type { Rules } from '#analysis/calls/rules';
import type { Curve } from '#analysis/calls/signal';
import { finish } from '#analysis/steps';

/** Powers of two, so that times worked out by hand are exact. */
export const TRIP = 2 ** -10;
export const RELEASE = 2 ** -11;
/** Four times the trip threshold. */
export const FULL = 2 ** -8;

/** No adaptation to speak of, and a power of two for the same reason. */
const NEVER = 2 ** 900;

export const rules = (given: Partial<Rules> = {}): Rules => ({
  trip: TRIP,
  release: RELEASE,
  isPulse: false,
  delay: 0,
  extension: 0,
  longest: Infinity,
  pulse: 0.125,
  rearm: 2,
  adaptation: NEVER,
  recovery: 0.5 / Math.log(100),
  ...given
});

export const curve = (...nodes: readonly (readonly [number, number])[]): Curve => ({
  at: Float64Array.from(nodes, ([time]) => time),
  values: Float64Array.from(nodes, ([, value]) => value)
});

/** Up to the full response within a second, and down within another: four seconds from one to the other. */
export const visit = (from: number, base = 0): readonly (readonly [number, number])[] => [
  [from, base],
  [from + 1, base + FULL],
  [from + 4, base + FULL],
  [from + 5, base]
];

/** "kind time", in order. */
export const said = (response: Curve, given: Rules): readonly string[] =>
  finish(outcomeInSteps(response, given)).events.map(({ kind, time_s }) => `${kind} ${time_s}`);
