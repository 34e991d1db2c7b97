/** The take-off of a site. */
import type { Site } from '#plan/schema';
import { sawnOn, type Sawn } from './cuts';
import { caution, count, how, smallLength } from './how';
import { itemsOf } from './items';
import { loopCrewDrafts, siteCrewDrafts } from './lines/crew';
import { circuitDrafts } from './lines/lead-in';
import { lineOf, type Draft } from './lines/line';
import { listOf } from './lines/of-loop';
import { conduitDrafts, loopPartDrafts, markDrafts } from './lines/parts';
import { slotDrafts } from './lines/slots';
import { wireDrafts } from './lines/wire';
import { loopsSawn } from './loops';
import { overreachOf } from './overreach';
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

/** More nobody reads. */
const MOST_NAMES = 8;

/** What the figures leave out, and what whoever saws has to mind. */
export function cautionsOf({ outOfReach, estimate, pieces }: Sawn): readonly How[] {
  const { bladeDiameter_m: blade } = estimate;
  const [deepest] = outOfReach;
  const { ends, into } = overreachOf(pieces);
  const names = listOf(into.slice(0, MOST_NAMES)) + (into.length > MOST_NAMES ? ', …' : '');
  return [
    ...(deepest === undefined
      ? []
      : [caution('blade', { blade: smallLength(blade), depth: smallLength(deepest) })]),
    ...(ends > 0 ? [caution('reach', { ends: count(ends), others: names })] : [])
  ];
}

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
    cautions: cautionsOf(sawn)
  };
}
