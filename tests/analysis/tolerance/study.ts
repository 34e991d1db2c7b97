/** A circuit of a small site with vehicles driven over it, its plausible ranges, and the same by brute force. */
import { createModeller, ownMeans, solveAlone, type Alone } from '#analysis/electrical/alone';
import { createBodyStore, type VehicleBody } from '#analysis/electrical/bodies';
import { clearanceOf, raised } from '#analysis/electrical/raised';
import { vehicleEffect } from '#analysis/electrical/vehicle-effect';
import { vehicleResponses } from '#analysis/passing/responses';
import {
  TOLERANCE_INPUTS,
  type CircuitRanges,
  type PlausibleRange,
  type VehicleResponse
} from '#analysis/results';
import { createSurveyor } from '#analysis/survey';
import { built, limitsOf, type CircuitInputKey } from '#analysis/tolerance/disturb';
import { normalQuantile } from '#analysis/tolerance/normal-points';
import { DEVIATIONS } from '#analysis/tolerance/range';
import { rangesOf } from '#analysis/tolerance/ranges';
import { toleranceOf } from '#analysis/tolerance/shifts';
import { vehicleOf } from '#plan/catalogue/vehicles';
import type { Circuit, Site } from '#plan/schema';
import { channel, circuit, lane, loop, siteOf, square, unit } from '../support/sites';

type Json = Readonly<Record<string, unknown>>;

/** On a frequency setting, so that the frequency follows. */
export const onSetting: Json = { channel: channel('U1', 1, { frequency_Hz: null }) };

/** One loop unless `over` says otherwise. */
export const siteWith = (over: Json = {}): Site =>
  siteOf({
    loops: [loop('L1', square(0, 0), { tail: { length: 4 } })],
    circuits: [circuit('C1', ['L1'], onSetting)],
    units: [unit('U1')],
    lanes: [lane('a', 0)],
    ...over
  });

const bodies = createBodyStore();
const bodyOf = ({ id }: { readonly id: string }): VehicleBody => bodies.get(vehicleOf(id, { vehicles: [] })!);

export interface Study {
  readonly site: Site;
  readonly circuit: Circuit;
  readonly responses: readonly VehicleResponse[];
  readonly ranges: CircuitRanges;
  readonly alone: Alone;
}

export const FIGURES = ['inductance_H', 'resistance_ohm', 'resistanceDc_ohm', 'q', 'frequency_Hz'] as const;

export const figuresOf = ({ solved, resistanceDc }: Alone): Record<(typeof FIGURES)[number], number> => ({
  inductance_H: solved.inductance,
  resistance_ohm: solved.resistance,
  resistanceDc_ohm: resistanceDc,
  q: solved.q,
  frequency_Hz: solved.frequency
});

/** Of the site's first circuit. */
export const studyOf = (site: Site, vehicles: readonly string[] = []): Study => {
  const surveyor = createSurveyor();
  const survey = surveyor.survey(site);
  const [surveyed] = survey.circuits.values();
  const { circuit: drawn, solved, loops } = surveyed!;
  const responses = vehicleResponses(drawn, solved, loops, site, {
    bodyOf: (vehicle) => (vehicles.includes(vehicle.id) ? bodyOf(vehicle) : null),
    remember: (_, make) => make()
  });
  const means = { numberOf: (text: string) => surveyor.numberOf(text), steel: survey.means.steel, bodyOf };
  return {
    site,
    circuit: drawn,
    responses,
    ranges: rangesOf(site, drawn, solved, responses, means),
    alone: solveAlone(site, drawn)!
  };
};

/** Numbers from 0 to 1, the same every time (linear congruence, Numerical Recipes). */
const randomFrom = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
};

/** Latin hypercube: every input takes each of `count` equally likely slices once, in an order of its own. */
const hypercube = (count: number, inputs: number): number[][] => {
  const random = randomFrom(7);
  return Array.from({ length: inputs }, () => {
    const order = Array.from({ length: count }, (_, k) => k);
    for (let k = count - 1; k > 0; k--) {
      const other = Math.floor(random() * (k + 1));
      [order[k], order[other]] = [order[other]!, order[k]!];
    }
    return order.map((slice) => normalQuantile((slice + random()) / count));
  });
};

export interface BruteForce {
  readonly name: string;
  readonly value: number;
  readonly given: PlausibleRange;
  /** Where 2.5 % and 97.5 % of the samples lie below. */
  readonly low: number;
  readonly high: number;
}

/** Every sample is the whole circuit, built and solved with all inputs off at once. */
export const bruteForce = (study: Study, samples: number): readonly BruteForce[] => {
  const { site, circuit: drawn, ranges, responses, alone } = study;
  const limits = limitsOf(site, drawn);
  const draws = hypercube(samples, TOLERANCE_INPUTS.length);
  const found = new Map<string, number[]>();
  const keep = (name: string, value: number): void => {
    const kept = found.get(name) ?? [];
    found.set(name, kept);
    kept.push(value);
  };
  const means = ownMeans();
  const amountOf = (input: (typeof TOLERANCE_INPUTS)[number], n: number): number =>
    (draws[TOLERANCE_INPUTS.indexOf(input)]![n]! / DEVIATIONS) * toleranceOf(site, input);
  const inputs = TOLERANCE_INPUTS.filter((input): input is CircuitInputKey => input !== 'vehicleHeight');
  for (let n = 0; n < samples; n++) {
    const amounts = Object.fromEntries(
      inputs.map((input) => [
        input,
        Math.min(limits[input][1], Math.max(limits[input][0], amountOf(input, n)))
      ])
    );
    const other = built(site, drawn, amounts);
    const solved = solveAlone(other.site, other.circuit, means, createModeller(means))!;
    for (const [name, value] of Object.entries(figuresOf(solved))) keep(name, value);
    for (const { vehicle, worstAt, worstHeading } of responses) {
      const body = bodyOf({ id: vehicle });
      const lifted = raised(body, Math.max(-clearanceOf(body), amountOf('vehicleHeight', n)));
      keep(
        vehicle,
        vehicleEffect(solved.solved, lifted, { x: worstAt[0], y: worstAt[1], heading: worstHeading })
      );
    }
  }
  const ends = (name: string): readonly [number, number] => {
    const sorted = found.get(name)!.sort((a, b) => a - b);
    return [sorted[Math.round(0.025 * samples)]!, sorted[Math.round(0.975 * samples) - 1]!];
  };
  return [
    ...FIGURES.map((name) => ({ name, value: figuresOf(alone)[name], given: ranges[name] })),
    ...responses.map(({ vehicle: name, worst: value }) => ({
      name,
      value,
      given: ranges.responses.find(({ vehicle }) => vehicle === name)!.worst
    }))
  ].map((each) => {
    const [low, high] = ends(each.name);
    return { ...each, low, high };
  });
};
