/** Problems without a site: random ones, and every plan of a small one tried. */
import {
  isOpen,
  ratioOf,
  type PairTable,
  type Plan,
  type PlanProblem
} from '#analysis/frequency-plan/problem';

/** A linear congruential generator (Numerical Recipes' constants): the same numbers everywhere. */
export const createRandom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
};

const pairsOf = (
  choices: readonly number[],
  ratio: (a: number, b: number, x: number, y: number) => number,
  isPair: (a: number, b: number) => boolean = () => true
): PairTable[] =>
  choices.flatMap((_, a) =>
    choices.flatMap((_, b) => {
      if (b <= a || !isPair(a, b)) return [];
      const cells = Array.from({ length: choices[a]! * choices[b]! }, (_, at) =>
        ratio(a, b, Math.floor(at / choices[b]!), at % choices[b]!)
      );
      return [{ a, b, ratios: Float64Array.from(cells) }];
    })
  );

export const problemOf = (
  choices: readonly number[],
  ratio: (a: number, b: number, x: number, y: number) => number,
  isPair?: (a: number, b: number) => boolean,
  rank?: (channel: number, choice: number) => number
): PlanProblem => ({
  choices,
  present: choices.map(() => 0),
  pairs: pairsOf(choices, ratio, isPair),
  ...(rank && {
    ranks: choices.map((count, channel) =>
      Array.from({ length: count }, (_, choice) => rank(channel, choice))
    )
  })
});

/** Every ratio by itself: nothing that a search could know beforehand. */
export const arbitraryProblem = (channels: number, settings: number, seed: number): PlanProblem => {
  const random = createRandom(seed);
  return problemOf(
    Array.from({ length: channels }, () => settings),
    () => random()
  );
};

/**
 * As on a road: loops at random places of a field, coupling with the cube of their distance, frequencies spread by the
 * loops' own inductance, ripple falling with the separation; channels of a unit of `perUnit` run in turn.
 */
export const roadProblem = (channels: number, settings: number, seed: number, perUnit = 1): PlanProblem => {
  const random = createRandom(seed);
  const side = 4 * Math.sqrt(channels);
  const places = Array.from({ length: channels }, () => ({
    x: side * random(),
    y: side * random(),
    tuning: 0.9 + 0.2 * random()
  }));
  const frequency = (channel: number, setting: number): number =>
    places[channel]!.tuning * 30_000 * (1 + setting / settings);
  return problemOf(
    places.map(() => settings),
    (a, b, x, y) => {
      const [p, q] = [places[a]!, places[b]!];
      const distance = Math.max(1.9, Math.hypot(p.x - q.x, p.y - q.y));
      const separation = Math.max(0, Math.abs(frequency(a, x) - frequency(b, y)) - 600);
      return ((0.01 / (distance / 1.9) ** 3) * Math.min(1, 1 / (Math.PI * separation * 0.005))) / 0.001;
    },
    (a, b) => perUnit === 1 || Math.floor(a / perUnit) !== Math.floor(b / perUnit),
    frequency
  );
};

/**
 * Channels that all disturb one another, nearly alike, on frequencies that differ by their tuning only: more of them than
 * settings is what a search by trying alone never gets to the end of.
 */
export const crowd = (channels: number, settings: number, tuning: number, seed: number): PlanProblem => {
  const random = createRandom(seed);
  const tunings = Array.from({ length: channels }, () => 1 + tuning * (random() - 0.5));
  const couplings = Array.from({ length: channels ** 2 }, () => 1 + 0.2 * random());
  const frequency = (channel: number, setting: number): number =>
    tunings[channel]! * 30_000 * (1 + setting / settings);
  return problemOf(
    tunings.map(() => settings),
    (a, b, x, y) => {
      const separation = Math.max(0, Math.abs(frequency(a, x) - frequency(b, y)) - 600);
      return 10 * couplings[a * channels + b]! * Math.min(1, 1 / (Math.PI * separation * 0.005));
    },
    undefined,
    frequency
  );
};

export function* everyPlan({ choices }: PlanProblem): Generator<Plan> {
  const total = choices.reduce((product, count) => product * count, 1);
  for (let number = 0; number < total; number++) {
    let rest = number;
    yield choices.map((count) => {
      const choice = rest % count;
      rest = (rest - choice) / count;
      return choice;
    });
  }
}

/** Of the open pairs, the largest first. */
export const ratiosOf = (problem: PlanProblem, plan: Plan): number[] =>
  problem.pairs
    .filter((pair) => isOpen(problem, pair))
    .map((pair) => ratioOf(problem, pair, plan))
    .sort((a, b) => b - a);
