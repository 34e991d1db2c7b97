/** Quantities and what they cost, in the report for people. */
import { typed } from '#units/digits';
import type { Quantities } from '#analysis/results';
import type { TakeoffUnit } from '#analysis/takeoff/results';
import type { Say } from './report-text-model';
import { block } from './text-table';

const amountIn = (amount: number, unit: TakeoffUnit, say: Say): string => {
  if (unit === 'm') return say(amount, 'length');
  if (unit === 'm3') return say(amount, 'volume');
  if (unit === 'each') return typed(String(Number(amount.toFixed(2))));
  return `${typed(amount.toFixed(2))} ${unit === 'h' ? 'h' : 'days'}`;
};

export const quantityBlock = (quantities: Quantities, say: Say): string[] => {
  const { lines, currency, cost, contingency, costWithContingency } = quantities;
  const isPriced = lines.some((line) => line.cost !== null);
  const money = (sum: number): string => `${typed(sum.toFixed(2))} ${currency ?? ''}`.trimEnd();
  const costs = (...cells: string[]): string[] => (isPriced ? cells : []);
  const total = (what: string, amount: string, sum = ''): string[] => ['total', what, '', amount, '', ...costs(sum)]; // prettier-ignore
  return block(
    'Quantities',
    [
      ['subject', 'what', 'item', 'amount', 'with waste', ...costs('cost')],
      ...lines.map((line) => [
        line.subject || 'site',
        line.what,
        line.item,
        amountIn(line.amount, line.unit, say),
        amountIn(line.gross, line.unit, say),
        ...costs(line.cost === null ? 'no price' : money(line.cost))
      ]),
      total('wire', say(quantities.wire_m, 'length')),
      total('saw cut', say(quantities.sawCut_m, 'length')),
      total('sealant', say(quantities.sealant_m3, 'volume')),
      total('lead-in', say(quantities.leadIn_m, 'length')),
      total('crew', amountIn(quantities.crew_h, 'h', say)),
      total('work of all in the crew', amountIn(quantities.work_h, 'h', say)),
      ...(isPriced
        ? [
            total('cost of what is bought', '', money(cost)),
            total(`with ${say(contingency, 'ratio')} contingency`, '', money(costWithContingency))
          ]
        : [])
    ],
    'nothing'
  );
};
