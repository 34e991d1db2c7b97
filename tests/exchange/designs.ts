/** A site with two kept designs and a third in hand, and what each of them comes to. */
import { createAssessor } from '#analysis/assess';
import type { DesignResults, DesignsWish } from '#analysis/designs/results';
import { demoSite } from '#plan/demo';
import { keepVariant, updateLoop } from '#plan/edits/index';
import type { Site } from '#plan/schema';
import { designSite } from '#plan/variants';

/** The second design has more turns and a deeper slot, the present one thinner wire on top. */
export function siteWithDesigns(
  base: Site = demoSite(),
  [first, second]: readonly [string, string] = ['As tendered', 'Deeper']
): Site {
  const loop = base.loops[0]!;
  const kept = keepVariant(base, first);
  const changed = updateLoop(kept, loop.id, {
    turns: loop.turns + 2,
    slot: { ...loop.slot, depth: loop.slot.depth + 0.03 }
  });
  return updateLoop(keepVariant(changed, second), loop.id, { wire: 'awg16' });
}

const assessor = createAssessor();
const known = new Map<string, ReturnType<typeof assessor.assess>>();

/** As the worker answers, found once: names move no figure. */
export const resultsOf = (site: Site, { designs }: DesignsWish): readonly DesignResults[] =>
  designs.flatMap((design) => {
    const own = designSite(site, design);
    if (!own) return [];
    const key = JSON.stringify(own.loops.map(({ turns, wire, slot }) => [turns, wire, slot]));
    const assessment = known.get(key) ?? assessor.assess(own, 'complete');
    known.set(key, assessment);
    const { circuits, beats, quantities, findings } = assessment;
    return [{ design, circuits, beats, quantities, findings, pass: null }];
  });
