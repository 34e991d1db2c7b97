/**
 * The report's quantities: every line of the take-off, and four totals as the drawing says, without waste. Wire: turns in
 * the slot and both wires of the tails, with their slack, without what twisting takes up. Saw cut: slots of loops and home
 * runs, shared ones once, without what runs past their ends. Sealant: what these hold less the wires in them. Lead-in: all
 * its cables, with the slack.
 */
import { estimateOf } from '#plan/catalogue/estimate';
import type { Site } from '#plan/schema';
import type { Quantities } from '../results';
import { SEALANT_OF_ENDS } from './names';
import type { TakeoffKind, TakeoffLine } from './results';
import { takeoffOf } from './takeoff';

export function quantitiesOf(site: Site): Quantities {
  const { lines, items, hours, currency, cost, contingency, costWithContingency } = takeoffOf(site);
  const total = (...kinds: TakeoffKind[]): number =>
    lines.reduce((sum, { what, amount }) => (kinds.includes(what) ? sum + amount : sum), 0);
  const ofEnds = ({ id, what }: TakeoffLine): boolean => what === 'sealant' && id.endsWith(SEALANT_OF_ENDS);
  const bought = new Map(items.map((item) => [item.item, item]));
  /** The line's share of what its item costs: with whole packs the lines still add up to the total. */
  const costOf = ({ item, gross }: TakeoffLine): number | null => {
    const all = bought.get(item);
    if (all === undefined || all.cost === null) return null;
    return all.gross > 0 ? (all.cost * gross) / all.gross : 0;
  };
  return {
    wire_m: total('loop wire', 'tail wire', 'tail slack'),
    sawCut_m: total('loop saw cut', 'home run saw cut'),
    sealant_m3: lines.reduce(
      (sum, line) => (line.what === 'sealant' && !ofEnds(line) ? sum + line.amount : sum),
      0
    ),
    leadIn_m: total('lead-in', 'lead-in slack'),
    crew_h: hours,
    work_h: hours * estimateOf(site).crewSize,
    currency,
    cost,
    contingency,
    costWithContingency,
    lines: lines.map((line) => {
      const { id, subject, what, item, amount, unit, gross } = line;
      return { id, subject, what, item, amount, unit, gross, cost: costOf(line) };
    })
  };
}
