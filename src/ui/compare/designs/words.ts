/** What rows of a comparison say. */
import { ROW_FIGURES, type DesignRow, type Mark } from '#analysis/designs/rows';
import type { DesignResults } from '#analysis/designs/results';
import { designSite } from '#plan/variants';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import { responseText, separationText } from '../../frequencies/pairs';
import { times } from '../../frequencies/remedies';
import { circuitName, laneName, vehicleName } from '../../names';
import { amountText, moneyText, runText } from '../../quantities/wording';

/** A name as the first of the designs has it in which the thing is. */
export function nameIn(
  site: Site,
  results: readonly DesignResults[],
  find: (design: Site) => string,
  id: string
): string {
  for (const { design } of results) {
    const own = designSite(site, design);
    const name = own && find(own);
    if (name && name !== id) return name;
  }
  return id;
}

/** Of what a row is, where several rows are of it: a circuit, or a pair; empty for the whole site. */
export function subjectText(site: Site, results: readonly DesignResults[], row: DesignRow): string {
  const named = (id: string) => nameIn(site, results, (own) => circuitName(own, id), id);
  if (row.circuit === null) return '';
  return row.other === null
    ? named(row.circuit)
    : t('frequencies.pair', { a: named(row.circuit), b: named(row.other) });
}

export function figureText(site: Site, results: readonly DesignResults[], row: DesignRow): string {
  const { figure } = row;
  const { vehicle: id, lane } = row;
  const vehicle = id === null ? '' : nameIn(site, results, (own) => vehicleName(own, id), id);
  switch (figure) {
    case 'margin':
    case 'response':
    case 'bestResponse':
      return t(`designs.figure.${figure}`, { vehicle });
    case 'neighbour':
      return t('designs.figure.neighbour', {
        vehicle,
        lane: lane === null ? '' : nameIn(site, results, (own) => laneName(own, lane), lane)
      });
    default:
      return t(`designs.figure.${figure}`);
  }
}

/** A value as the rest of the page shows it. */
export function valueText(
  site: Pick<Site, 'displayUnits'>,
  { figure }: Pick<DesignRow, 'figure'>,
  value: number | null,
  currency: string | null
): string {
  if (value === null) return '–';
  const system = site.displayUnits;
  const { digits } = ROW_FIGURES[figure];
  switch (figure) {
    case 'inductance':
      return format(value, 'inductance', system, { digits }).text;
    case 'resistance':
      return format(value, 'resistance', system, { digits }).text;
    case 'frequency':
      return format(value, 'frequency', system, { digits }).text;
    case 'q':
      return format(value, 'plain', system, { digits }).text;
    case 'response':
    case 'bestResponse':
    case 'neighbour':
      return responseText(site, value);
    case 'margin':
    case 'beatRatio':
      return times(value);
    case 'separation':
      return separationText(site, value);
    case 'wire':
    case 'sawCut':
    case 'leadIn':
      return runText(value, system);
    case 'sealant':
      return amountText(value, 'm3', system);
    case 'work':
      return amountText(value, 'h', system);
    case 'cost':
      return moneyText(value, currency);
  }
}

export const MARK_SIGNS = { better: '▲', worse: '▼', different: '≠' } as const;
export type Sign = keyof typeof MARK_SIGNS;

/** What is shown beside a value; null for nothing. */
export const signOf = (mark: Mark, isDifferent: boolean): Sign | null =>
  mark === 'better' || mark === 'worse' ? mark : mark === null && isDifferent ? 'different' : null;
