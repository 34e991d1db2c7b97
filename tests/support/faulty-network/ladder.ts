/**
 * A line as what it is made of: many short sections, each a resistance and an inductance in series between two halves of
 * a capacitance. 2¹² sections by squaring the section's chain matrix twelve times: the error of a lumped section falls with the
 * square of their number, here under 10⁻⁷ for any line shorter than a wavelength.
 */
import { c, plus, times, type C, type Chain } from './nodal';

const DOUBLINGS = 12;

/** Go and return together, per metre: Ω/m, H/m, F/m. */
export interface PerMetre {
  readonly resistance: number;
  readonly inductance: number;
  readonly capacitance: number;
}

const inRow = (first: Chain, second: Chain): Chain => ({
  a: plus(times(first.a, second.a), times(first.b, second.c)),
  b: plus(times(first.a, second.b), times(first.b, second.d)),
  c: plus(times(first.c, second.a), times(first.d, second.c)),
  d: plus(times(first.c, second.b), times(first.d, second.d))
});

/** One section: half the capacitance, the series part, half the capacitance. */
const section = (series: C, shunt: C): Chain => {
  const half = c(shunt.re / 2, shunt.im / 2);
  const a = plus(c(1), times(series, half));
  return { a, b: series, c: times(half, plus(a, c(1))), d: a };
};

/** `length` in metres, `omega` in radians a second; 0 for direct current. */
export const ladder = (
  { resistance, inductance, capacitance }: PerMetre,
  length: number,
  omega: number
): Chain => {
  const share = length / 2 ** DOUBLINGS;
  let chain = section(c(resistance * share, omega * inductance * share), c(0, omega * capacitance * share));
  for (let k = 0; k < DOUBLINGS; k++) chain = inRow(chain, chain);
  return chain;
};
