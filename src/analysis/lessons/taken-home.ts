/** A lesson's site to go on working with: named after the lesson, its variants after their curves, in the language spoken. */
import type { Lesson } from '#plan/lesson';
import type { Site } from '#plan/schema';
import { spoken } from './told';

export function siteTakenHome({ title, experiment }: Lesson, site: Site): Site {
  const labels = new Map((experiment.designs ?? []).map(({ variant, label }) => [variant, label]));
  const named = { ...site, name: spoken(title, site.displayUnits) };
  if (!site.variants) return named;
  const variants = site.variants.map((each) => {
    const label = labels.get(each.id);
    return label ? { ...each, name: spoken(label, site.displayUnits) } : each;
  });
  return { ...named, variants };
}
