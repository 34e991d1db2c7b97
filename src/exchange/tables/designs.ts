/**
 * Designs side by side: every result that differs, better and worse told by a sign and a word; the findings; and what differs
 * in the drawing, in words. The same for a sheet, a text file and a workbook.
 */
import { comparedName } from '#analysis/designs/compared';
import { findingRows, type FindingRow } from '#analysis/designs/finding-rows';
import type { DesignResults } from '#analysis/designs/results';
import { designRows, ROW_FIGURES, type DesignRow, type Mark, type RowFigure } from '#analysis/designs/rows';
import { t } from '#i18n/message';
import { differencesBetween, type Difference } from '#plan/differences/index';
import { partsOf, subjectText } from '#plan/differences/words';
import type { Site } from '#plan/schema';
import { designSite } from '#plan/variants';
import { clean } from '../sheet/text/clean';
import { tableOf, text, withoutEmpty, type Field } from './fields';
import { measureOf, type MeasureName } from './measures';
import { circuitName, laneName, vehicleName } from './names';
import type { Table } from './table';

const MEASURES: Partial<Readonly<Record<RowFigure, MeasureName>>> = {
  inductance: 'inductance',
  resistance: 'resistance',
  frequency: 'frequency',
  response: 'response',
  bestResponse: 'response',
  neighbour: 'response',
  separation: 'frequency',
  wire: 'length',
  sawCut: 'length',
  leadIn: 'length',
  sealant: 'volume'
};

/** More nobody reads. */
const MOST_PLACES = 6;

interface Names {
  readonly site: Site;
  readonly results: readonly DesignResults[];
}

/** As the first of the designs calls it that has it. */
function nameIn({ site, results }: Names, find: (design: Site) => string, id: string): string {
  for (const { design } of results) {
    const own = designSite(site, design);
    const name = own && find(own);
    if (name && name !== clean(id)) return name;
  }
  return clean(id);
}

function subjectOf(names: Names, { circuit, other }: DesignRow): string {
  const called = (id: string) => nameIn(names, (own) => circuitName(own, id), id);
  if (circuit === null) return '';
  return other === null ? called(circuit) : `${called(circuit)} + ${called(other)}`;
}

function figureOf(names: Names, { figure, vehicle: id, lane }: DesignRow): string {
  const vehicle = id === null ? '' : nameIn(names, (own) => vehicleName(own, id), id);
  switch (figure) {
    case 'margin':
    case 'response':
    case 'bestResponse':
      return t(`designs.figure.${figure}`, { vehicle });
    case 'neighbour':
      return t('designs.figure.neighbour', {
        vehicle,
        lane: lane === null ? '' : nameIn(names, (own) => laneName(own, lane), lane)
      });
    default:
      return t(`designs.figure.${figure}`);
  }
}

function unitOf({ site, results }: Names, { figure }: DesignRow): string {
  const measure = MEASURES[figure];
  if (measure) return measureOf(measure, site.displayUnits).symbol;
  if (figure === 'work') return 'h';
  if (figure === 'cost') return clean(results.find(({ quantities }) => quantities?.currency)?.quantities?.currency ?? ''); // prettier-ignore
  return figure === 'margin' || figure === 'beatRatio' ? '×' : '';
}

const shown = ({ displayUnits }: Site, { figure }: DesignRow, value: number | null): number | null => {
  const measure = MEASURES[figure];
  if (measure) return measureOf(measure, displayUnits).of(value);
  return value !== null && Number.isFinite(value) ? value : null;
};

/** As fine as the figure is worth reading, the same for all designs: two that differ never look alike. */
function placesOf(site: Site, row: DesignRow): number {
  const sizes = row.values.flatMap((value) => {
    const size = Math.abs(shown(site, row, value) ?? 0);
    return size > 0 ? [size] : [];
  });
  if (sizes.length === 0) return 0;
  const least = Math.floor(Math.log10(Math.min(...sizes)));
  return Math.min(MOST_PLACES, Math.max(0, ROW_FIGURES[row.figure].digits - 1 - least));
}

/** A sign and a word: nobody has to know colours or signs. */
function markText(mark: Mark, isDifferent: boolean): string {
  if (mark === 'better') return `▲ ${t('designs.better')}`;
  if (mark === 'worse') return `▼ ${t('designs.worse')}`;
  return isDifferent && mark === null ? `≠ ${t('designs.different')}` : '';
}

/** No head stands twice in a table: a name that is there already is told apart by its design's id. */
function nameAt({ site, results }: Names, index: number): string {
  const { design } = results[index]!;
  const name = clean(comparedName(site, design));
  const fixed = [
    t('tables.circuit'),
    t('designs.figure'),
    t('record.table.unit'),
    t('designs.group.findings')
  ];
  const isTaken =
    fixed.includes(name) ||
    results.some((each, at) => at !== index && clean(comparedName(site, each.design)) === name);
  return isTaken ? `${name} (${design === null ? t('designs.present') : clean(design)})` : name;
}

function resultsTable(names: Names): Table {
  const { site, results } = names;
  const rows = designRows(results).filter(({ differs }) => differs);
  const fields = [
    text<DesignRow>(t('tables.circuit'), (row) => subjectOf(names, row)),
    text<DesignRow>(t('designs.figure'), (row) => figureOf(names, row)),
    text<DesignRow>(t('record.table.unit'), (row) => unitOf(names, row)),
    ...results.flatMap((_, at): readonly Field<DesignRow>[] => [
      {
        column: { head: nameAt(names, at), kind: 'number' },
        cell: (row) => shown(site, row, row.values[at] ?? null),
        places: (row) => placesOf(site, row)
      },
      ...(at === 0
        ? []
        : [
            text<DesignRow>(t('tables.versus', { name: nameAt(names, at) }), (row) =>
              markText(row.marks[at] ?? null, row.values[at] !== row.values[0])
            )
          ])
    ])
  ];
  return tableOf({
    title: t('designs.take'),
    rows,
    fields: rows.length === 0 ? fields : withoutEmpty(fields, rows),
    notes: [rows.length === 0 ? t('designs.noDifference') : t('designs.legend', { name: nameAt(names, 0) })]
  });
}

function findingsTable(names: Names): Table {
  const rows = findingRows(names.results).filter(({ differs }) => differs);
  const fields = [
    text<FindingRow>(t('designs.group.findings'), ({ findings }) =>
      clean(findings.find((finding) => finding !== null)?.message ?? '')
    ),
    ...names.results.map((_, at) =>
      text<FindingRow>(nameAt(names, at), ({ findings, marks }) => {
        const finding = findings[at];
        const said = finding ? t(`finding.${finding.severity}`) : t('designs.none');
        return [said, markText(marks[at] ?? null, false)].filter(Boolean).join(', ');
      })
    )
  ];
  return tableOf({ title: t('designs.group.findings'), rows, fields });
}

interface DrawnRow {
  readonly name: string;
  readonly difference: Difference;
}

function drawingTable(names: Names): Table {
  const { site, results } = names;
  const first = designSite(site, results[0]?.design ?? null);
  const rows = results.slice(1).flatMap(({ design }, index): readonly DrawnRow[] => {
    const own = designSite(site, design);
    if (!first || !own) return [];
    return differencesBetween(first, own).map((difference) => ({
      name: nameAt(names, index + 1),
      difference
    }));
  });
  const fields = [
    text<DrawnRow>(t('designs.design'), ({ name }) => name),
    text<DrawnRow>(t('tables.thing'), ({ difference }) => clean(subjectText(difference))),
    text<DrawnRow>(t('tables.otherwise', { name: nameAt(names, 0) }), ({ difference }) =>
      clean(partsOf(difference, site.displayUnits).join('; '))
    )
  ];
  return tableOf({ title: t('designs.drawing'), rows, fields });
}

/** Of the site's designs in the order given, the first being the one that the others are held against; at least one. */
export function designsTables(site: Site, results: readonly DesignResults[]): readonly Table[] {
  const names = { site, results };
  const [figures, ...further] = [resultsTable(names), findingsTable(names), drawingTable(names)];
  return [figures, ...further.filter(({ rows }) => rows.length > 0)];
}
