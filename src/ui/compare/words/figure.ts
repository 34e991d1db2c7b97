/** A result of the drawing in words, and its values as people read them. */
import { withoutRemainder } from '#analysis/sweep/remainder';
import { FIGURES_OF_LOOPS, type Figure, type FigureKind, type FigureLimit } from '#analysis/sweep/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import type { QuantityKind } from '#units/kind';
import { times } from '../../frequencies/remedies';
import { circuitName, loopName, vehicleName } from '../../names';
import { tight } from '../../passing/speed/words';
import { moneyText } from '../../quantities/wording';

const KINDS: Readonly<Record<FigureKind, QuantityKind>> = {
  loopInductance: 'inductance',
  loopResistance: 'resistance',
  selfResonance: 'frequency',
  cover: 'smallLength',
  inductance: 'inductance',
  resistance: 'resistance',
  resistanceDc: 'resistance',
  q: 'plain',
  frequency: 'frequency',
  response: 'ratio',
  margin: 'plain',
  neighbour: 'ratio',
  mutual: 'inductance',
  coupling: 'ratio',
  separation: 'frequency',
  ripple: 'ratio',
  beatRatio: 'plain',
  wire: 'length',
  sawCut: 'length',
  cost: 'plain'
};
const IN_THRESHOLDS: ReadonlySet<FigureKind> = new Set(['margin', 'beatRatio']);

export const figureKey = ({ kind, subject, other, vehicle, path }: Figure): string =>
  JSON.stringify([kind, subject, other ?? null, vehicle ?? null, path ?? null]);

export const quantityOfFigure = ({ kind }: Figure): QuantityKind => KINDS[kind];

/** A loop and a circuit may have the same id. */
const nameIn = (site: Site, kind: FigureKind, id: string): string =>
  FIGURES_OF_LOOPS.has(kind) ? loopName(site, id) : circuitName(site, id);

/** "Response −ΔL/L to Car, worst path". */
function resultName(site: Site, figure: Figure): string {
  const vehicle = figure.vehicle === undefined ? t('sweep.someVehicle') : vehicleName(site, figure.vehicle);
  const path = t(`sweep.path.${figure.path ?? 'worst'}`);
  const other = nameIn(site, figure.kind, figure.other ?? '');
  switch (figure.kind) {
    case 'response':
    case 'margin':
      return t(`sweep.figure.${figure.kind}`, { vehicle, path });
    case 'neighbour':
      return t('sweep.figure.neighbour', { vehicle });
    case 'mutual':
    case 'coupling':
    case 'separation':
    case 'ripple':
    case 'beatRatio':
      return t(`sweep.figure.${figure.kind}`, { other });
    default:
      return t(`sweep.figure.${figure.kind}`);
  }
}

/** The same without a path, where that is chosen beside it. */
export function resultChoice(site: Site, figure: Figure): string {
  const { kind, vehicle } = figure;
  if ((kind !== 'response' && kind !== 'margin') || vehicle === undefined) return resultName(site, figure);
  return t(`sweep.choice.${kind}`, { vehicle: vehicleName(site, vehicle) });
}

/** "Stop line left": what it is a result of. */
export const resultSubject = (site: Site, { kind, subject }: Figure): string =>
  subject === null ? t('sweep.wholeSite') : nameIn(site, kind, subject);

/** "Inductance of Stop line left". */
export const figureName = (site: Site, figure: Figure): string =>
  figure.subject === null
    ? resultName(site, figure)
    : t('sweep.figureOf', { result: resultName(site, figure), subject: resultSubject(site, figure) });

/** Not broken between a number and its unit. */
export function figureText(site: Site, figure: Figure, value: number | null): string {
  if (value === null) return t('sweep.noValue');
  if (IN_THRESHOLDS.has(figure.kind)) return tight(times(value));
  if (figure.kind === 'cost') return tight(moneyText(value, site.estimate?.currency ?? null));
  const quantity = quantityOfFigure(figure);
  return tight(
    format(quantity === 'ratio' ? withoutRemainder(value) : value, quantity, site.displayUnits).text
  );
}

export const limitText = (site: Site, figure: Figure, { kind, value }: FigureLimit): string =>
  t(`sweep.limit.${kind}`, { value: figureText(site, figure, value) });
