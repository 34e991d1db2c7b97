/** Quantities of the whole drawing, as the report has them. */
import type { Quantities } from '../../results';
import { quantitiesOf } from '../../takeoff/quantities';
import type { FigureMaker } from './figure';

const total =
  (field: 'wire_m' | 'sawCut_m' | 'cost'): FigureMaker =>
  ({ site }) => {
    const quantities: Quantities = quantitiesOf(site);
    return quantities[field];
  };

export const wire = total('wire_m');
export const sawCut = total('sawCut_m');
/** In the site's currency, without contingency; null where nothing has a price. */
export const cost: FigureMaker = ({ site }) => {
  const { lines, cost: sum } = quantitiesOf(site);
  return lines.some((line) => line.cost !== null) ? sum : null;
};
