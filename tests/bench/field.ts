/** Pictures of the magnetic field: a section of 120 × 60 nodes with sixteen lines, without and with a vehicle. */
import type { FieldPlane, FieldWish } from '#analysis/field-picture/results';
import { createAnswerer } from '#analysis/questions';
import { bigSite } from '../support/big-site';

const RUNS = 15;

const SECTION: FieldPlane = { kind: 'section', from: [-2.5, 0], to: [2.5, 0], low_m: -0.7, high_m: 1.8 };
const PLAN: FieldPlane = { kind: 'plan', z_m: 0.3, from: [-2.5, -2.5], to: [2.5, 2.5] };

/** All of it, and its longest step: what a newer drawing waits for. */
const timed = (
  wish: FieldWish,
  answer: ReturnType<typeof createAnswerer>,
  site: ReturnType<typeof bigSite>
) => {
  const steps = answer('draw-field', site, wish);
  const start = performance.now();
  let longest = 0;
  for (let before = start; ;) {
    const { done } = steps.next();
    const now = performance.now();
    longest = Math.max(longest, now - before);
    before = now;
    if (done) return { all: now - start, longest };
  }
};

const middle = (values: readonly number[]): string =>
  `${[...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!.toFixed(1)} ms`;

export const measureField = (): void => {
  console.log('');
  const answer = createAnswerer();
  const site = bigSite();
  for (const [where, plane] of [
    ['section', SECTION],
    ['plan', PLAN]
  ] as const)
    for (const vehicle of [null, 'car', 'lorry', 'motorcycle'])
      for (const lines of [0, 16]) {
        const wish: FieldWish = {
          source: { kind: 'circuit', id: 'C1' },
          plane,
          columns: 120,
          rows: 60,
          vehicle: vehicle === null ? null : { vehicle, at: [0.3, 0.2], heading: 90 },
          lines
        };
        // prepared vehicles, as everywhere here
        timed(wish, answer, site);
        const runs = Array.from({ length: RUNS }, () => timed(wish, answer, site));
        const what = `field, ${where} of 120 × 60, ${vehicle ?? 'no vehicle'}, ${lines} lines`;
        console.log(
          `${what.padEnd(58)} median ${middle(runs.map(({ all }) => all))}  ` +
            `longest step ${middle(runs.map(({ longest }) => longest))}  (budget 120 ms)`
        );
      }
};
