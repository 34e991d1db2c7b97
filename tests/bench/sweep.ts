/** Sweeps of 60 points and three results on a site of six loops, everything prepared: what a chart waits for. */
import { createMeans } from '#analysis/means';
import { finish } from '#analysis/steps';
import type { Figure } from '#analysis/sweep/results';
import { sweepInSteps } from '#analysis/sweep/sweep';
import type { Variable } from '#plan/variables/variable';
import { bigSite } from '../support/big-site';

const POINTS = 60;
const BUDGET = 400;
const ROUNDS = 5;

const FIGURES: readonly Figure[] = [
  { kind: 'inductance', subject: 'C1' },
  { kind: 'q', subject: 'C1' },
  { kind: 'response', subject: 'C1', vehicle: 'car', path: 'worst' }
];

const SWEEPS: readonly (readonly [string, Variable, number, number])[] = [
  ['width of a loop', { kind: 'width', subject: 'L1' }, 0.8, 3],
  ['depth of its slot', { kind: 'slotDepth', subject: 'L1' }, 0.03, 0.2],
  ['length of its lead-in', { kind: 'leadInLength', subject: 'C1' }, 0, 300],
  ['distance of two loops', { kind: 'gap', subject: 'L2', other: 'L1' }, 0.2, 4],
  ['height of a car', { kind: 'vehicleHeight', subject: 'car' }, 0.25, 1.2]
];

export const measureSweeps = (): void => {
  console.log('');
  const site = bigSite(6);
  for (const [what, variable, from, to] of SWEEPS) {
    const times = Array.from({ length: ROUNDS }, (_, round) => {
      const means = createMeans();
      const run = (first: number): number => {
        const values = Array.from({ length: POINTS }, (_k, k) => first + ((to - first) * k) / (POINTS - 1));
        const wish = {
          x: { variable, values },
          ...{ family: null, designs: null, figures: FIGURES },
          place: { offset_m: 0, along_m: 0 }
        };
        const start = performance.now();
        finish(sweepInSteps(site, wish, means));
        return performance.now() - start;
      };
      // a page has the drawing's own figures before anybody sweeps; no point of this run is one of the next
      finish(
        sweepInSteps(
          site,
          {
            x: { variable: { kind: 'temperature', subject: null }, values: [20] },
            ...{ family: null, designs: null, figures: FIGURES },
            place: { offset_m: 0, along_m: 0 }
          },
          means
        )
      );
      return run(from + 0.001 * (round + 1));
    }).sort((a, b) => a - b);
    const median = times[Math.floor(ROUNDS / 2)]!;
    const ratio = (median / BUDGET).toFixed(2);
    console.log(
      `${`sweep of ${POINTS} points × 3 results: ${what}`.padEnd(58)} median ${median.toFixed(0)} ms  ` +
        `(budget ${BUDGET} ms, ratio ${ratio})`
    );
  }
};
