/** Vehicles are prepared one by one, so that the first readout need not wait for a bus. */
import { describe, expect, it } from 'vitest';
import { createAssessor, type Assessor } from '#analysis/assess';
import { vehiclesInPlay } from '#analysis/passing/in-play';
import type { Site } from '#plan/schema';
import { PATIENCE } from '../physics/support/arbitraries';
import { lane, QUICK_VEHICLES, rowSite } from './support/sites';

const site = rowSite(
  [
    [0, 0],
    [3.5, 0]
  ],
  { lanes: [lane('a', 0), lane('b', 3.5)], probes: [{ vehicle: 'bicycle', at: [0.9, 0], heading: 90 }] }
);

/** How often `prepareNext` had something to do; gives up after `most`. */
const prepareAll = (assessor: Assessor, given: Site, most: number): number => {
  let count = 0;
  while (count < most && assessor.prepareNext(given)) count++;
  return count;
};

describe('prepared vehicles', { timeout: PATIENCE }, () => {
  it('come one by one, the placed one first, and the answer says so until all are there', () => {
    const assessor = createAssessor();
    const first = assessor.assess(site, 'prepared');
    expect(first.pending).toBe(true);
    expect(first.probes).toEqual([]);
    expect(first.circuits.flatMap(({ responses }) => responses)).toEqual([]);
    expect(first.loops).toHaveLength(2);
    expect(assessor.prepareNext(site)).toBe(true);
    const second = assessor.assess(site, 'prepared');
    expect(second.pending).toBe(true);
    expect(second.probes).toHaveLength(1);
    expect(second.circuits[0]!.responses.map(({ vehicle }) => vehicle)).toContain('bicycle');
  });

  it('and what follows are in the end what a report says', () => {
    const assessor = createAssessor();
    prepareAll(assessor, site, 100);
    let steps = 0;
    while (steps < 10_000 && assessor.followNext(site)) steps++;
    const { probes: quick, ...last } = assessor.assess(site, 'prepared');
    const { probes, ...complete } = createAssessor().assess(site, 'complete');
    expect(last).toEqual(complete);
    expect(quick.length).toBe(probes.length);
    for (const { ranges, classes } of last.circuits) {
      expect(ranges).not.toBeNull();
      expect(classes).toHaveLength(3);
    }
  });

  it('are the same as all at once when the last is there', () => {
    const assessor = createAssessor();
    assessor.assess(site, 'prepared');
    expect(prepareAll(assessor, site, 100)).toBe(vehiclesInPlay(site).length);
    const { probes, isFollowed, ...ready } = assessor.assess(site, 'prepared');
    expect(ready.pending).toBe(false);
    expect(isFollowed).toBe(true);
    const { probes: exact, isFollowed: never, ...all } = createAssessor().assess(site);
    expect(never).toBe(false);
    expect(ready).toEqual(all);
    // far from the placed vehicle the coarse mesh serves: what it gets wrong is nothing next to the loop
    probes[0]!.loops.forEach(({ id, deltaL_H }, k) => {
      expect(id).toBe(exact[0]!.loops[k]!.id);
      expect(Math.abs(deltaL_H - exact[0]!.loops[k]!.deltaL_H)).toBeLessThan(
        1e-5 * all.loops[k]!.inductance_H
      );
    });
  });

  it('answer nothing that changes when more of them come', () => {
    const assessor = createAssessor();
    const early = assessor.assess(site, 'prepared');
    const late = assessor.assess(site);
    expect(early.loops).toEqual(late.loops);
    expect(early.couplings).toEqual(late.couplings);
    expect(early.quantities).toEqual(late.quantities);
  });

  it('come to an end also when the site brings many of its own', () => {
    const own = Array.from({ length: 60 }, (_, k) => ({
      id: `v${k}`,
      parts: [
        { kind: 'ring', centre: [0, 0, 0.4], radius: 0.2 + k / 1000, conductorRadius: 0.01, axis: [1, 0, 0] }
      ]
    }));
    const many = rowSite([[0, 0]], { vehicles: [...QUICK_VEHICLES, ...own] });
    const assessor = createAssessor();
    const wanted = vehiclesInPlay(many).length;
    expect(prepareAll(assessor, many, 10 * wanted)).toBe(wanted);
    expect(assessor.assess(many, 'prepared').circuits[0]!.responses).toHaveLength(wanted);
  });
});
