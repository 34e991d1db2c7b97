/**
 * Every design of a comparison assessed whole, one after the other. What one of them has been found to be is kept under what
 * it depends on, so that a design asked about again, or one that shares circuits with another, costs little.
 */
import type { Site } from '#plan/schema';
import { designSite } from '#plan/variants';
import { createAssessor, type Assessor } from '../assess';
import type { Means } from '../means';
import { curvesInSteps } from '../passing/curves';
import type { Assessment } from '../results';
import type { Steps } from '../steps';
import type { DesignResults, DesignsWish } from './results';

/** One for all questions of a worker. */
const assessors = new WeakMap<Means, Assessor>();

const assessorOf = (means: Means): Assessor => {
  const known = assessors.get(means);
  if (known) return known;
  const made = createAssessor(means);
  assessors.set(means, made);
  return made;
};

/** Steps after which half of a design counts as done: how many there are is not known before they are taken. */
const HALF_WAY = 60;

/** The whole of a drawing, as a report has it; says which share is done, 0 to 1. */
function* assessInSteps(site: Site, means: Means): Steps<Assessment> {
  const assessor = assessorOf(means);
  let taken = 0;
  const share = () => 1 - HALF_WAY / (HALF_WAY + ++taken);
  while (assessor.prepareNext(site)) yield share();
  for (const circuit of site.circuits) {
    assessor.driveOver(site, circuit.id);
    yield share();
  }
  while (assessor.followNext(site)) yield share();
  return assessor.assess(site, 'complete');
}

/** Designs that are not there are left out. */
export function* compareDesignsInSteps(
  site: Site,
  { designs, pass }: DesignsWish,
  means: Means
): Steps<readonly DesignResults[]> {
  const results: DesignResults[] = [];
  for (const [index, design] of designs.entries()) {
    const own = designSite(site, design);
    if (!own) continue;
    const within = (share: number) => (index + share) / designs.length;
    yield within(0);
    const assessing = assessInSteps(own, means);
    let step = assessing.next();
    while (!step.done) {
      yield within(step.value ?? 0);
      step = assessing.next();
    }
    const { circuits, beats, quantities, findings } = step.value;
    const picture = pass && (yield* curvesInSteps(own, pass, means));
    results.push({ design, circuits, beats, quantities, findings, pass: picture });
  }
  return results;
}
