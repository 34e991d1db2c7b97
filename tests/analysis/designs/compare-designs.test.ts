import { describe, expect, it } from 'vitest';
import { createAssessor } from '#analysis/assess';
import { compareDesignsInSteps } from '#analysis/designs/compare-designs';
import { createMeans, type Means } from '#analysis/means';
import { curvesInSteps } from '#analysis/passing/curves';
import type { PassWish } from '#analysis/passing/results';
import { finish } from '#analysis/steps';
import { createSurveyor } from '#analysis/survey';
import { designSite } from '#plan/variants';
import { samples } from '../../plan/samples';

const { site } = samples.find(({ name }) => name.includes('two-ways'))!;
const { bodies } = createMeans();
/** Vehicles are made ready once; nothing else is shared. */
const fresh = (): Means => ({ surveyor: createSurveyor(), bodies });
const PASS: PassWish = { way: { kind: 'lane', id: 'lane1' }, vehicles: ['car'], offset_m: 0.4 };

describe('designs compared', () => {
  const means = fresh();
  const shares: number[] = [];
  const steps = compareDesignsInSteps(site, { designs: ['V1', null], pass: PASS }, means);
  let step = steps.next();
  for (; !step.done; step = steps.next()) if (typeof step.value === 'number') shares.push(step.value);
  const results = step.value;

  it('are each what a report of the design alone says, to the last digit', () => {
    expect(results.map(({ design }) => design)).toEqual(['V1', null]);
    for (const { design, pass, ...found } of results) {
      const own = designSite(site, design)!;
      const alone = fresh();
      const { circuits, beats, quantities, findings } = createAssessor(alone).assess(own, 'complete');
      expect(found).toEqual({ circuits, beats, quantities, findings });
      expect(pass).toEqual(finish(curvesInSteps(own, PASS, alone)));
      expect(circuits[0]!.ranges).not.toBeNull();
    }
  });

  it('say how far they are, from nothing to all, and never less than before', () => {
    expect(shares[0]).toBe(0);
    expect(shares.every((share, at) => share <= 1 && share >= (shares[at - 1] ?? 0))).toBe(true);
    expect(Math.max(...shares)).toBeGreaterThan(0.5);
  });

  it('leave out a design that is not there, and a pass along a way that is not there', () => {
    const wish = { way: { kind: 'path', id: 'nowhere' }, vehicles: ['car'], offset_m: 0 } as const;
    const found = finish(compareDesignsInSteps(site, { designs: ['V9', 'V2'], pass: wish }, means));
    expect(found.map(({ design, pass }) => [design, pass])).toEqual([['V2', null]]);
  });

  it('have no pass where none is asked for', () => {
    const [found] = finish(compareDesignsInSteps(site, { designs: [null], pass: null }, means));
    expect(found?.pass).toBeNull();
  });

  it('find there what was found of the drawing already: nothing of it is made a second time', () => {
    const stepsFor = (own: Means): number => {
      const asked = compareDesignsInSteps(site, { designs: [null], pass: null }, own);
      let count = 0;
      while (!asked.next().done) count++;
      return count;
    };
    const seen = fresh();
    const page = createAssessor(seen);
    while (page.prepareNext(site));
    page.assess(site, 'prepared');
    while (page.followNext(site));
    // one to begin with, and one for each circuit that is looked up
    expect(stepsFor(seen)).toBe(1 + site.circuits.length);
    expect(stepsFor(fresh())).toBeGreaterThan(10);
    const [shared] = finish(compareDesignsInSteps(site, { designs: [null], pass: null }, seen));
    const [alone] = finish(compareDesignsInSteps(site, { designs: [null], pass: null }, fresh()));
    expect(shared).toEqual(alone);
  });
});
