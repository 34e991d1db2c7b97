import { expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { createMeans } from '#analysis/means';
import { evaluate } from '#analysis/sweep/figures/index';
import { experimentOn } from '#plan/variables/index';
import { smallSite } from './support';

it('of lanes on both sides, the one that is picked up most counts', () => {
  const three = smallSite(3);
  const site = { ...three, circuits: three.circuits.slice(1, 2), loops: three.loops.slice(1, 2) };
  const drops = createAssessor()
    .assess(site)
    .circuits[0]!.neighbours.map(({ deltaLOverL }) => -deltaLOverL);
  expect(new Set(drops).size).toBeGreaterThan(1);
  const figure = { kind: 'neighbour', subject: 'C2' } as const;
  expect(evaluate(experimentOn(site), figure, createMeans())).toBe(Math.max(...drops));
});
