/** A lesson's experiment as it stands at one value: what its plan shows and its field is drawn of. */
import { spoken } from '#analysis/lessons/told';
import { variableOf } from '#analysis/lessons/wish';
import type { Lesson } from '#plan/lesson';
import type { Site } from '#plan/schema';
import { experimentOn, rangeOf, withValue } from '#plan/variables/index';
import type { Experiment } from '#plan/variables/variable';
import { designSite } from '#plan/variants';
import { numberName, readableText } from '../compare/words/variable';

/** Who asks, so that the questions of the open site go on. */
export const LESSON_DESK = 'lesson';

/** `curve`: which value of the family, or which design; `at`: which value of x. Null where the drawing cannot be so. */
export function experimentAt(
  { experiment }: Pick<Lesson, 'experiment'>,
  site: Site,
  curve: number,
  at: number
): Experiment | null {
  const { x, family, designs, place } = experiment;
  const drawn = designs ? designSite(site, designs[curve]?.variant ?? null) : site;
  if (!drawn) return null;
  const start = experimentOn(drawn, place);
  const ofCurve = family ? withValue(start, variableOf(family.variable), family.values[curve]!) : start;
  return ofCurve && withValue(ofCurve, variableOf(x.variable), x.values[at]!);
}

/** What the curves are called; of a single one nothing. */
export function curvesOf(
  { experiment: { family, designs } }: Pick<Lesson, 'experiment'>,
  site: Site
): readonly string[] {
  if (designs) return designs.map(({ label }) => spoken(label, site.displayUnits));
  if (!family) return [''];
  const variable = variableOf(family.variable);
  const choices = rangeOf(experimentOn(site), variable)?.choices ?? null;
  const number = numberName(site, variable);
  // a number and its unit stay on one line
  const say = (value: number): string =>
    readableText(site, variable, value, choices).replaceAll(' ', '\u00a0');
  return family.values.map((value) => `${number}: ${say(value)}`);
}

/** The place of the value nearest to one; the middle where there is none. */
export function nearestTo(values: readonly number[], wanted: number | null): number {
  if (wanted === null) return Math.floor((values.length - 1) / 2);
  let best = 0;
  values.forEach((value, at) => {
    if (Math.abs(value - wanted) < Math.abs(values[best]! - wanted)) best = at;
  });
  return best;
}
