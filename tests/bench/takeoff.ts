/** The take-off and the cutting plan of an edit: what a hand that drags a loop waits for on the page. */
import { cuttingPlanOf } from '#analysis/takeoff/cutting-plan';
import { takeoffOf } from '#analysis/takeoff/takeoff';
import type { Mark, Site } from '#plan/schema';
import { followRoutes } from '#plan/lead-out';
import { bigSite, withLoopAt } from '../support/big-site';

const EDITS = 60;

/** Every loop's home run is drawn: to a box beside the road, one a row of loops, along a common way. */
const withHomeRuns = (site: Site): Site => {
  const rows = Math.ceil(site.loops.length / 4);
  const boxes = Array.from({ length: rows }, (_, row): Mark => ({
    id: `b${row}`,
    kind: 'pull-box',
    points: [[14, 5 * row - 2]]
  }));
  const loops = site.loops.map((loop, k) => {
    const row = Math.floor(k / 4);
    const via = [[3.5 * (k % 4) + 1.2, 5 * row - 2] as const];
    return { ...loop, tail: { length: 0, route: { to: `b${row}`, via, allowance: 1 } } };
  });
  return followRoutes({ ...site, marks: [...site.marks, ...boxes], loops });
};

const measure = (what: string, count: number, budget: string, work: (site: Site) => unknown): void => {
  const site = withHomeRuns(bigSite(count));
  const times = Array.from({ length: EDITS }, (_, step) => {
    const edited = withLoopAt(site, count / 3, [0.001 * (step + 1), 0.0003 * step]);
    const start = performance.now();
    work(edited);
    return performance.now() - start;
  });
  const sorted = times.slice(EDITS / 3).sort((a, b) => a - b);
  const at = (share: number): string => `${sorted[Math.floor(sorted.length * share)]!.toFixed(2)} ms`;
  console.log(
    `${`${what} of ${count} loops`.padEnd(58)} median ${at(0.5)}  p95 ${at(0.95)}  (budget median ${budget})`
  );
};

export const measureTakeoff = (): void => {
  console.log('');
  measure('take-off', 24, '2 ms', takeoffOf);
  measure('take-off', 500, '60 ms', takeoffOf);
  measure('cutting plan', 24, '2 ms', cuttingPlanOf);
  measure('cutting plan', 500, '60 ms', cuttingPlanOf);
};
