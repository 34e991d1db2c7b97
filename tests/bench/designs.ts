/**
 * Designs side by side for the first time, as a page asks: the present one has been assessed with all that follows, and one
 * loop has another size in the design that was kept.
 */
import { readFileSync } from 'node:fs';
import { createAssessor } from '#analysis/assess';
import { compareDesignsInSteps } from '#analysis/designs/compare-designs';
import { createMeans } from '#analysis/means';
import { demoSite } from '#plan/demo';
import { keepVariant } from '#plan/edits/index';
import { readSite } from '#plan/read';
import type { Site } from '#plan/schema';
import { bigSite, withLoopAt } from '../support/big-site';

const SAMPLE = 'samples/two-ways-to-guard-a-gate.kerfline.json';

const sample = (): Site => {
  const reading = readSite(readFileSync(SAMPLE, 'utf8'));
  if (!reading.ok) throw new Error(`${SAMPLE} cannot be read`);
  return reading.site;
};

/** Kept, then one loop moved. */
const moved = (site: Site): Site => withLoopAt(keepVariant(site, 'As it was'), 0, [0.1, 0.2]);

export const measureDesigns = (): void => {
  console.log('');
  for (const [what, site] of [
    ['demo, one loop moved', moved(demoSite())],
    ['sample of two designs', sample()],
    ['24 loops, one of them moved', moved(bigSite())]
  ] as const) {
    const means = createMeans();
    const assessor = createAssessor(means);
    const page = performance.now();
    while (assessor.prepareNext(site));
    assessor.assess(site, 'prepared');
    while (assessor.followNext(site));
    const known = performance.now() - page;
    const compared = (): { readonly all: number; readonly longest: number } => {
      const steps = compareDesignsInSteps(
        site,
        { designs: [site.variants![0]!.id, null], pass: null },
        means
      );
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
    const first = compared();
    const again = compared();
    console.log(
      `${`designs side by side, ${what}`.padEnd(58)} first ${first.all.toFixed(0)} ms (longest step ` +
        `${first.longest.toFixed(0)} ms), again ${again.all.toFixed(0)} ms; the drawing alone ${known.toFixed(0)} ms`
    );
  }
};
