/** What is sawn, in which order, and from where each cut is set out. */
import { cautionText } from '#analysis/takeoff/how';
import { referencePointsOf, type ReferencePoint } from '#analysis/takeoff/reference-points';
import type { CoreHole, Cut, CuttingPlan, SetOut } from '#analysis/takeoff/results';
import { valueSaid } from '#analysis/takeoff/said-values';
import { inRow } from '#i18n/locale';
import { t } from '#i18n/message';
import { estimateOf } from '#plan/catalogue/estimate';
import type { Point, Site } from '#plan/schema';
import { format } from '#units/format';
import { clean } from '../sheet/text/clean';
import { number, quantity, tableOf, text, withoutEmpty, type Field } from './fields';
import { loopName, markName } from './names';
import type { Table } from './table';

type System = Site['displayUnits'];

/** As a tape finds it; by the plan's own coordinates where there is no baseline. */
function placeFields<Row>(
  which: 'start' | 'end' | 'centre',
  system: System,
  hasBaseline: boolean,
  of: (row: Row) => { readonly at: Point | null; readonly setOut: SetOut | null }
): readonly Field<Row>[] {
  const end = t(`tables.${which}`);
  return hasBaseline
    ? [
        quantity<Row>(t('tables.station', { end }), 'length', system, (row) => of(row).setOut?.station),
        quantity<Row>(t('tables.offset', { end }), 'length', system, (row) => of(row).setOut?.offset)
      ]
    : [
        quantity<Row>(t('tables.x', { end }), 'length', system, (row) => of(row).at?.[0]),
        quantity<Row>(t('tables.y', { end }), 'length', system, (row) => of(row).at?.[1])
      ];
}

const baselineNotes = ({ baseline }: CuttingPlan): readonly string[] =>
  baseline ? [t('tables.baseline', { name: clean(baseline.name) })] : [t('tables.noBaseline')];

/** How far a cut runs on hangs on the blade: who has another one must know. */
const bladeNotes = (site: Site, { cuts }: CuttingPlan): readonly string[] =>
  cuts.some(({ overcut }) => overcut.from > 0 || overcut.to > 0)
    ? [
        t('tables.bladeNote', {
          blade: format(estimateOf(site).bladeDiameter_m, 'smallLength', site.displayUnits).text
        })
      ]
    : [t('tables.cuttingNote')];

function cutsTable(site: Site, plan: CuttingPlan): Table {
  const { displayUnits: system } = site;
  const { cuts, baseline } = plan;
  const fields = [
    number<Cut>(t('tables.order'), 0, ({ order }) => order),
    text<Cut>(t('tables.loop'), ({ loop }) => loopName(site, loop)),
    text<Cut>(t('tables.cut'), ({ kind }) => t(`tables.cut.${kind}`)),
    ...placeFields<Cut>('start', system, baseline !== null, ({ from, setOut }) => ({
      at: from,
      setOut: setOut?.from ?? null
    })),
    ...placeFields<Cut>('end', system, baseline !== null, ({ to, setOut }) => ({
      at: to,
      setOut: setOut?.to ?? null
    })),
    quantity<Cut>(t('tables.radius'), 'length', system, ({ circle }) => circle?.radius),
    quantity<Cut>(t('tables.cutLength'), 'length', system, ({ length }) => length),
    quantity<Cut>(t('tables.beforeStart'), 'depth', system, ({ overcut }) => overcut.from),
    quantity<Cut>(t('tables.pastEnd'), 'depth', system, ({ overcut }) => overcut.to),
    quantity<Cut>(t('tables.slotDepth'), 'depth', system, ({ depth }) => depth),
    quantity<Cut>(t('tables.slotWidth'), 'thickness', system, ({ width }) => width),
    text<Cut>(t('tables.sharedWith'), ({ sharedWith }) => inRow(sharedWith.map((id) => loopName(site, id))))
  ];
  return tableOf({
    title: t('tables.cutting'),
    rows: cuts,
    fields: withoutEmpty(fields, cuts),
    notes: [...baselineNotes(plan), ...bladeNotes(site, plan)]
  });
}

/** Null where nothing is cored. */
function holesTable(site: Site, plan: CuttingPlan): Table | null {
  const { displayUnits: system } = site;
  const { holes, baseline } = plan;
  if (holes.length === 0) return null;
  return tableOf({
    title: t('tables.holes'),
    rows: holes,
    fields: [
      text<CoreHole>(t('tables.loop'), ({ loop }) => loopName(site, loop)),
      ...placeFields<CoreHole>('centre', system, baseline !== null, ({ at, setOut }) => ({ at, setOut })),
      quantity<CoreHole>(t('tables.diameter'), 'depth', system, ({ diameter }) => diameter),
      quantity<CoreHole>(t('tables.slotDepth'), 'depth', system, ({ depth }) => depth)
    ],
    notes: baselineNotes(plan)
  });
}

/** Null where there is nothing to measure from, or nothing that is found on the site. */
function referencesTable(site: Site): Table | null {
  const { displayUnits: system } = site;
  const points = referencePointsOf(site);
  if (points.length === 0) return null;
  const fields = [
    text<ReferencePoint>(t('tables.reference'), ({ mark }) => markName(site, mark)),
    ...placeFields<ReferencePoint>('start', system, true, ({ from }) => ({ at: null, setOut: from })),
    ...placeFields<ReferencePoint>('end', system, true, ({ to }) => ({ at: null, setOut: to }))
  ];
  return tableOf({
    title: t('tables.references'),
    rows: points,
    fields: withoutEmpty(fields, points),
    notes: [t('tables.referencesNote')]
  });
}

type Total = CuttingPlan['totals'][number];

/** How far the blade travels, by depth and width. */
function bladeTable(site: Site, { totals }: CuttingPlan): Table {
  const { displayUnits: system } = site;
  return tableOf({
    title: t('tables.blade'),
    rows: totals,
    fields: [
      quantity<Total>(t('tables.slotDepth'), 'depth', system, ({ depth }) => depth),
      quantity<Total>(t('tables.slotWidth'), 'thickness', system, ({ width }) => width),
      quantity<Total>(t('tables.bladeLength'), 'length', system, ({ length }) => length),
      quantity<Total>(t('tables.ofOvercuts'), 'length', system, ({ overcut }) => overcut),
      quantity<Total>(t('tables.bladeTravel'), 'length', system, ({ length, overcut }) => length + overcut)
    ]
  });
}

type Unplaced = CuttingPlan['unplaced'][number];

/** Null where every home run is drawn: they are part of what the blade travels. */
function unplacedTable(site: Site, { unplaced }: CuttingPlan): Table | null {
  const { displayUnits: system } = site;
  if (unplaced.length === 0) return null;
  return tableOf({
    title: t('tables.unplaced'),
    rows: unplaced,
    fields: [
      text<Unplaced>(t('tables.loop'), ({ loop }) => loopName(site, loop)),
      quantity<Unplaced>(t('tables.cutLength'), 'length', system, ({ length }) => length),
      quantity<Unplaced>(t('tables.slotDepth'), 'depth', system, ({ depth }) => depth),
      quantity<Unplaced>(t('tables.slotWidth'), 'thickness', system, ({ width }) => width)
    ],
    notes: [t('tables.unplacedNote')]
  });
}

/** A sheet says in sentences what is sawn without being drawn, and what to mind. */
export const cuttingTables = (site: Site, plan: CuttingPlan): readonly Table[] => {
  const further = [holesTable(site, plan), referencesTable(site)].filter((table) => table !== null);
  return [cutsTable(site, plan), ...further, bladeTable(site, plan)];
};

/** The same where nothing else is said beside them. */
export function cuttingFileTables(site: Site, plan: CuttingPlan): readonly Table[] {
  const cautions = plan.cautions.map((each) => clean(cautionText(each, valueSaid(site.displayUnits))));
  const unplaced = unplacedTable(site, plan);
  const tables = cuttingTables(site, plan);
  const blade = tables.at(-1)!;
  return [
    ...tables.slice(0, -1),
    ...(unplaced ? [unplaced] : []),
    cautions.length > 0 ? { ...blade, notes: [...(blade.notes ?? []), ...cautions] } : blade
  ];
}
