/** How long a frequency plan takes, and how many of them are proven best. Wall time; a quiet machine is assumed. */
import { searchPlan } from '#analysis/frequency-plan/search';
import { createFrequencyPlanner } from '#analysis/frequency-plan/plan-in-steps';
import type { PlanProblem } from '#analysis/frequency-plan/problem';
import { finish } from '#analysis/steps';
import type { Site } from '#plan/schema';
import { arbitraryProblem, crowd, roadProblem } from '../analysis/frequency-plan/problems';
import { bigSite, withMats } from '../support/big-site';

const CALM = 0.25;
const SEEDS = [1, 2, 3, 4, 5, 6, 7, 8];

interface Run {
  readonly time: number;
  readonly isProven: boolean;
}

const timed = (work: () => { readonly isProven: boolean }): Run => {
  const start = performance.now();
  const { isProven } = work();
  return { time: performance.now() - start, isProven };
};

const say = (what: string, runs: readonly Run[], budget: string): void => {
  const times = runs.map(({ time }) => time).sort((a, b) => a - b);
  const at = (share: number) => `${times[Math.floor(share * (times.length - 1))]!.toFixed(0)} ms`;
  const proven = runs.filter(({ isProven }) => isProven).length;
  console.log(
    `${what.padEnd(58)} median ${at(0.5)}  worst ${at(1)}  proven ${proven}/${runs.length}  (budget ${budget})`
  );
};

const searches = (what: string, make: (seed: number) => PlanProblem, budget: string): void => {
  say(
    what,
    SEEDS.map((seed) => {
      const problem = make(seed);
      return timed(() => finish(searchPlan(problem, { calm: CALM })));
    }),
    budget
  );
};

/** All channels at once, eight settings. */
const siteOf = (count: number): Site => {
  const site = bigSite(count);
  const settings_F = Array.from({ length: 8 }, (_, k) => 2.6e-7 / 1.22 ** k);
  return { ...site, units: site.units.map((unit) => ({ ...unit, scansInTurn: false, settings_F })) };
};

const wholeSite = (what: string, site: Site, budget: string): void => {
  const shifts = Object.fromEntries(
    site.circuits.map(({ id }) => [id, { deltaLOverL: -0.03, vehicle: 'car' }])
  );
  const wish = { aim: 'smallest ripple', shifts } as const;
  say(
    what,
    [1, 2, 3].map(() => timed(() => finish(createFrequencyPlanner()(site, wish)))),
    budget
  );
};

export const measureFrequencyPlans = (): void => {
  console.log('\nfrequency plans: the search alone, 8 settings');
  searches('12 channels on a road', (seed) => roadProblem(12, 8, seed), '200 ms');
  searches('12 channels, every ratio by itself', (seed) => arbitraryProblem(12, 8, seed), '200 ms');
  searches('12 equal channels in a crowd', (seed) => crowd(12, 8, 0, seed), '200 ms');
  searches('12 nearly equal channels in a crowd', (seed) => crowd(12, 8, 0.2, seed), '200 ms');
  searches('60 channels on a road', (seed) => roadProblem(60, 8, seed), '3 s');
  searches('60 channels on a road, units of 4 in turn', (seed) => roadProblem(60, 8, seed, 4), '3 s');
  searches('60 channels, every ratio by itself', (seed) => arbitraryProblem(60, 8, seed), '3 s');
  searches('60 equal channels in a crowd', (seed) => crowd(60, 8, 0, seed), '3 s');
  searches('60 nearly equal channels in a crowd', (seed) => crowd(60, 8, 0.2, seed), '3 s');
  console.log('from the drawing: circuits solved on every setting, pairs rated, the search');
  wholeSite('12 circuits', siteOf(12), '200 ms');
  wholeSite('60 circuits', siteOf(60), '3 s');
  wholeSite('60 circuits over mats of bars', withMats(siteOf(60)), '3 s');
};
