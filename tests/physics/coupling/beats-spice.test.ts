/** The integrator and the law against the same circuit in SPICE; values and generator in `tests/reference`. */
import { describe, expect, it } from 'vitest';
import { averagingOf, driveOf } from '#physics/coupling/beat';
import { cycleFrequencies, measuredFrequency, swingOf } from '#physics/coupling/frequency-meter';
import type { Oscillator } from '#physics/coupling/oscillators';
import { crossingsOf, meanOf, within } from '../support/beating';
import { referenceOf, relativeError, type Reference } from '../support/reference';

interface Case {
  readonly k: number;
  readonly separation: number;
  readonly tanks: readonly [Oscillator, Oscillator];
  readonly times: readonly number[];
  readonly found: readonly {
    readonly mean: number;
    readonly swing: number;
    readonly windowed: readonly number[];
  }[];
}
type File = Omit<Reference<Case>, 'tolerance'> & {
  readonly tolerance: { readonly mean: number; readonly swing: number };
  readonly settled: number;
  readonly beats: number;
};

const { source, tolerance, settled, beats, cases } = referenceOf<Case>('beats-spice') as unknown as File;

const named = cases.map((each) => ({
  ...each,
  name: `k ${each.k}, ${each.separation} Hz, Q ${each.tanks[0].q}, L2/L1 ${each.tanks[1].inductance / 1e-4}`
}));
const strengthOf = ({ k, separation }: Case): number => (k * 50e3) / separation;

const readings = (crossings: readonly number[], time: number, separation: number, end: number): number[] => {
  const found: number[] = [];
  for (let from = crossings[0]!; from < end - time; from += 1 / (50 * separation)) {
    const reading = measuredFrequency(crossings, from, time);
    if (reading !== null) found.push(reading);
  }
  return found;
};

describe(`two oscillators integrated here and by ${source}`, () => {
  it.each(named)('$name', (pair) => {
    const { tanks, k, separation, times, found } = pair;
    const end = settled + beats / separation;
    const heard = crossingsOf(...tanks, k, end + 0.0002, 1 / (50e3 * 64));
    heard.forEach((all, side) => {
      const wanted = found[side]!;
      const crossings = within(all, settled, Infinity);
      const ours = within(crossings, settled, end);
      expect(relativeError(meanOf(ours), wanted.mean)).toBeLessThan(tolerance.mean);
      // of two that lock what is left of the swing dies away, from either's own rounding
      const enough = tolerance.swing * Math.max(wanted.swing, (k / 2) * 50e3);
      expect(Math.abs(swingOf(cycleFrequencies(ours)) - wanted.swing)).toBeLessThan(enough);
      times.forEach((time, n) => {
        const swing = swingOf(readings(crossings, time, separation, end));
        expect(Math.abs(swing - wanted.windowed[n]!)).toBeLessThan(enough);
      });
    });
  });
});

/** The law is first order in k·f/Δf: firm limiting and a low Q carry it further than that. */
const holdsFor = (pair: Case): boolean => pair.tanks[0].q === 8 || strengthOf(pair) <= 0.34;
const judged = named.filter((pair) => holdsFor(pair) || strengthOf(pair) <= 1);

describe(`the ripple law and ${source}`, () => {
  it.each(judged)('$name', (pair) => {
    const { tanks, k, separation, times, found } = pair;
    const frequencies = [50e3, 50e3 + separation];
    found.forEach(({ swing, windowed }, side) => {
      const [own, other] = side === 0 ? tanks : ([tanks[1], tanks[0]] as const);
      const [f, g] = [frequencies[side]!, frequencies[1 - side]!];
      const law = (k / 2) * f * driveOf(own.inductance, other.inductance, f, g);
      if (holdsFor(pair)) expect(relativeError(swing, law)).toBeLessThan(separation > 1000 ? 0.1 : 0.25);
      if (strengthOf(pair) <= 1)
        windowed.forEach((ripple, n) => {
          expect(ripple / (law * averagingOf(separation, times[n]!))).toBeLessThan(1.15);
        });
    });
  });

  it('has pairs enough to judge by', () => {
    expect(cases).toHaveLength(32);
    expect(judged.filter(holdsFor).length).toBeGreaterThan(20);
    expect(new Set(judged.map(({ k }) => k))).toEqual(new Set([0.005, 0.01, 0.02]));
  });
});
