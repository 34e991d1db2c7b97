/** The take-off of a site. */
import type { StatedEstimate } from '#plan/catalogue/estimate';
import type { Site } from '#plan/schema';
import { sawnOn } from './cuts';
import { caution, how, smallLength } from './how';
import { itemsOf } from './items';
import { loopCrewDrafts, siteCrewDrafts } from './lines/crew';
import { circuitDrafts } from './lines/lead-in';
import { lineOf, type Draft } from './lines/line';
import { conduitDrafts, loopPartDrafts, markDrafts } from './lines/parts';
import { slotDrafts } from './lines/slots';
import { wireDrafts } from './lines/wire';
import { loopsSawn } from './loops';
import type { How, Takeoff, TakeoffLine } from './results';

const extraDrafts = ({ estimate }: Site): readonly Draft[] =>
  (estimate?.extras ?? []).map(({ id, amount, unit }) => ({
    subject: id,
    what: 'extra',
    item: `extra:${id}`,
    amount,
    unit,
    how: how('extra'),
    places: []
  }));

/** What the figures leave out. */
export const cautionsOf = (
  outOfReach: readonly number[],
  { bladeDiameter_m: blade }: StatedEstimate
): readonly How[] => {
  const [deepest] = outOfReach;
  if (deepest === undefined) return [];
  return [caution('blade', { blade: smallLength(blade), depth: smallLength(deepest) })];
};

/** Pure geometry and counting, quick enough to follow a gesture. */
export function takeoffOf(site: Site): Takeoff {
  const sawn = sawnOn(site);
  const { estimate, wound } = sawn;
  const lines: TakeoffLine[] = [];
  const add = (drafts: readonly Draft[]): void => {
    for (const draft of drafts) {
      const line = lineOf(estimate, draft);
      if (line) lines.push(line);
    }
  };
  for (const each of loopsSawn(site, sawn)) {
    add(wireDrafts(each));
    add(slotDrafts(each));
    add(loopPartDrafts(each));
    add(loopCrewDrafts(each));
  }
  for (const circuit of site.circuits) add(circuitDrafts(site, circuit, estimate));
  add(conduitDrafts(site));
  add(markDrafts(site));
  add(siteCrewDrafts(wound.length, estimate));
  add(extraDrafts(site));
  const items = itemsOf(site, lines);
  const cost = items.reduce((sum, item) => sum + (item.cost ?? 0), 0);
  return {
    lines,
    items,
    currency: estimate.currency,
    cost,
    contingency: estimate.contingency,
    costWithContingency: Math.round(cost * (1 + estimate.contingency) * 100) / 100,
    unpriced: items.filter(({ price }) => price === null).map(({ item }) => item),
    hours: lines.reduce((sum, line) => (line.group === 'crew' ? sum + line.amount : sum), 0),
    cautions: cautionsOf(sawn.outOfReach, estimate)
  };
}
