/** The take-off line by line, what is bought for it, and what that costs. */
import { howText } from '#analysis/takeoff/how';
import { groupName, itemName, lineName } from '#analysis/takeoff/names';
import type { Takeoff, TakeoffItem, TakeoffLine, TakeoffUnit } from '#analysis/takeoff/results';
import { valueSaid } from '#analysis/takeoff/said-values';
import { listed } from '#i18n/locale';
import { t } from '#i18n/message';
import { estimateOf } from '#plan/catalogue/estimate';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import { clean } from '../sheet/text/clean';
import { exact, mixed, number, quantity, tableOf, text, withoutEmpty } from './fields';
import { measureOf, type Measure } from './measures';
import { circuitName, loopName, markName, nameOf } from './names';
import type { Table } from './table';

const MONEY = 2;
const PRICE = 3;
const AMOUNT = 2;

const isPieces = ({ unit }: { readonly unit: TakeoffUnit }): boolean => unit === 'each';

const asIs = (symbol: string): Measure => ({ symbol, digits: AMOUNT, of: (stored) => stored ?? null });

/** How an amount of a line is shown: the rows of one column have different units, which stand beside them. */
function shownIn(unit: TakeoffUnit, system: UnitSystem): Measure {
  if (unit === 'm') return measureOf('length', system);
  if (unit === 'm3') return measureOf('volume', system);
  return asIs(t(`tables.unit.${unit}`));
}

const item = (site: Site, id: string): string =>
  clean(itemName(site, id, (metres) => format(metres, 'smallLength', site.displayUnits).text));

/** What a line is for. */
function subjectName(site: Site, subject: string): string {
  if (subject === '') return t('tables.wholeSite');
  if (site.loops.some(({ id }) => id === subject)) return loopName(site, subject);
  if (site.circuits.some(({ id }) => id === subject)) return circuitName(site, subject);
  const mark = site.marks.find(({ id }) => id === subject);
  if (mark) return markName(site, mark);
  const conduit = site.conduits.find(({ id }) => id === subject);
  if (conduit) return nameOf(conduit);
  const extra = site.estimate?.extras?.find(({ id }) => id === subject);
  return extra ? nameOf(extra) : clean(subject);
}

export function takeoffTable(site: Site, { lines }: Takeoff): Table {
  const { displayUnits: system } = site;
  const say = valueSaid(system);
  const amount = (line: TakeoffLine, value: number): number | null => shownIn(line.unit, system).of(value);
  return tableOf({
    title: t('tables.takeoff'),
    rows: lines,
    fields: [
      text<TakeoffLine>(t('tables.group'), ({ group }) => groupName(group)),
      text<TakeoffLine>(t('tables.subject'), ({ subject }) => subjectName(site, subject)),
      text<TakeoffLine>(t('tables.what'), lineName),
      text<TakeoffLine>(t('tables.item'), (line) => item(site, line.item)),
      mixed<TakeoffLine>(t('tables.amount'), AMOUNT, (line) => amount(line, line.amount), isPieces),
      exact(quantity<TakeoffLine>(t('tables.waste'), 'share', system, ({ waste }) => waste)),
      mixed<TakeoffLine>(t('tables.gross'), AMOUNT, (line) => amount(line, line.gross), isPieces),
      text<TakeoffLine>(t('tables.unitOfAmount'), ({ unit }) => shownIn(unit, system).symbol),
      text<TakeoffLine>(t('tables.how'), ({ how }) => clean(howText(how, say)))
    ],
    notes: [t('tables.takeoffNote')]
  });
}

const money = (head: string, currency: string | null): string =>
  currency === null ? head : `${head} (${currency})`;

export function itemsTable(site: Site, takeoff: Takeoff): Table {
  const { displayUnits: system } = site;
  const { items, currency, cost, unpriced } = takeoff;
  const { crewSize } = estimateOf(site);
  const amount = (each: TakeoffItem, value: number | null): number | null =>
    shownIn(each.unit, system).of(value);
  /** Stored for one stored unit. */
  const price = (each: TakeoffItem): number | null => {
    const units = shownIn(each.unit, system).of(1);
    return each.price === null || units === null ? null : each.price / units;
  };
  // where nothing is rounded up the column would say the same twice
  const isRounded = items.some(({ packs, bought, gross }) => packs !== null || bought !== gross);
  const isPriced = items.some((each) => each.cost !== null);
  const perUnit = currency === null ? t('tables.price') : t('tables.priceIn', { currency });
  const fields = [
    text<TakeoffItem>(t('tables.item'), (each) => item(site, each.item), t('tables.sum')),
    text<TakeoffItem>(t('tables.group'), ({ group }) => groupName(group)),
    mixed<TakeoffItem>(t('tables.amount'), AMOUNT, (each) => amount(each, each.amount), isPieces),
    mixed<TakeoffItem>(t('tables.gross'), AMOUNT, (each) => amount(each, each.gross), isPieces),
    exact(
      mixed<TakeoffItem>(
        t('tables.pack'),
        AMOUNT,
        (each) => (each.packs === null ? null : amount(each, each.pack)),
        isPieces
      )
    ),
    number<TakeoffItem>(t('tables.packs'), 0, ({ packs }) => packs),
    mixed<TakeoffItem>(
      t('tables.bought'),
      AMOUNT,
      // also without packs: whole pieces are paid for
      (each) => (isRounded ? amount(each, each.bought) : null),
      isPieces
    ),
    text<TakeoffItem>(t('tables.unitOfAmount'), ({ unit }) => shownIn(unit, system).symbol),
    exact(number<TakeoffItem>(perUnit, PRICE, price)),
    number<TakeoffItem>(
      money(t('tables.cost'), currency),
      MONEY,
      (each) => each.cost,
      ...(isPriced ? [cost] : [])
    ),
    number<TakeoffItem>(t('tables.work', { count: crewSize }), AMOUNT, ({ group, unit, gross }) =>
      group === 'crew' && unit === 'h' ? gross * crewSize : null
    ),
    quantity<TakeoffItem>(
      t('tables.copper'),
      'mass',
      system,
      ({ copper_kg }) => copper_kg,
      items.reduce((sum, { copper_kg }) => sum + (copper_kg ?? 0), 0)
    )
  ];
  return tableOf({
    title: t('tables.items'),
    rows: items,
    fields: withoutEmpty(fields, items),
    notes: [
      t('tables.itemsNote'),
      ...(unpriced.length > 0
        ? [t('tables.unpriced', { items: listed(unpriced.map((id) => item(site, id))) })]
        : [])
    ]
  });
}

interface Sum {
  readonly what: string;
  readonly amount: number;
}

/** With and without contingency; null where the price book says nothing of what is needed. */
export function costTable(takeoff: Takeoff, system: UnitSystem): Table | null {
  const { items, currency, cost, contingency, costWithContingency, unpriced } = takeoff;
  if (!items.some((each) => each.cost !== null)) return null;
  const share = format(contingency, 'ratio', system).text;
  const rows: readonly Sum[] = [
    { what: t('tables.costNet'), amount: cost },
    { what: t('tables.contingency', { share }), amount: costWithContingency - cost },
    { what: t('tables.costGross'), amount: costWithContingency }
  ];
  return tableOf({
    title: t('tables.costs'),
    rows,
    fields: [
      text<Sum>(t('tables.item'), ({ what }) => what),
      number<Sum>(money(t('tables.cost'), currency), MONEY, ({ amount }) => amount)
    ],
    notes: unpriced.length > 0 ? [t('tables.costIsPart', { count: unpriced.length })] : []
  });
}

/** What an estimator gets. */
export const takeoffTables = (site: Site, takeoff: Takeoff): readonly Table[] => {
  const costs = costTable(takeoff, site.displayUnits);
  return [takeoffTable(site, takeoff), itemsTable(site, takeoff), ...(costs ? [costs] : [])];
};
