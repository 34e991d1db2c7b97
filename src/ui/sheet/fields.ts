/** What can be set of a sheet: the options of its fields, and an undo step for each change. */
import { t } from '#i18n/message';
import { SHEET_PARTS, PAPERS, SCALES } from '#plan/schema/sheet';
import { sheetOf, type Paper, type SheetPart, type SheetScale } from '#plan/catalogue/sheet';
import { updateSheet } from '#plan/edits/estimate';
import type { SheetLayout, Site } from '#plan/schema';
import type { Bench } from '../bench';
import { commitField } from '../details/commit';
import { nameOf } from '../names';
import { markName } from '../wiring/marks';

type SheetPatch = Parameters<typeof updateSheet>[1];

/** `field`: what was changed, as its label says it. */
export function changeSheet(bench: Bench, field: string, patch: SheetPatch): void {
  commitField(bench, { field, subject: t('sheetView.subject') }, (site) => updateSheet(site, patch));
}

export const paperOptions = (): readonly { readonly value: Paper; readonly label: string }[] =>
  PAPERS.map((value) => ({ value, label: t(`sheet.paper.${value}`) }));

const LARGEST = 'largest';
export const scaleValue = (scale: SheetScale | null): string => (scale === null ? LARGEST : String(scale));
export const scaleOf = (value: string): SheetScale | undefined =>
  SCALES.find((scale) => String(scale) === value);

/** `fitting`: the scale that is taken while none is asked for, where it is known. */
export const scaleOptions = (fitting: SheetScale | null) => [
  {
    value: LARGEST,
    label: fitting === null ? t('sheetView.largest') : t('sheetView.largestNow', { scale: fitting })
  },
  ...SCALES.map((scale) => ({ value: String(scale), label: t('sheetView.scaleOf', { scale }) }))
];

/** All that is on the sheet once a part is put on it or taken off; undefined for all of them, which is the usual. */
export function partsWith(site: Site, part: SheetPart, isOn: boolean): SheetLayout['parts'] {
  const { parts } = sheetOf(site);
  const next = SHEET_PARTS.filter((each) => (each === part ? isOn : parts.includes(each)));
  return next.length === SHEET_PARTS.length ? undefined : next;
}

type Baseline = SheetLayout['baseline'];
const USUAL = 'usual';
/** Lines on the road that a tape can be laid along. */
const LINES: readonly string[] = ['stop-line', 'kerb', 'joint', 'island'];

export const baselineValue = (baseline: Baseline): string => {
  if (!baseline) return USUAL;
  return baseline.kind === 'lane' ? `lane ${baseline.lane}` : `mark ${baseline.mark}`;
};

/** One that a file has chosen counts whatever it is. */
export function baselineOptions(site: Site): readonly { readonly value: string; readonly label: string }[] {
  const chosen = baselineValue(site.sheet?.baseline);
  return [
    { value: USUAL, label: t('sheetView.usualBaseline') },
    ...site.lanes.map((lane) => ({
      value: `lane ${lane.id}`,
      label: t('sheetView.lane', { name: nameOf(lane) })
    })),
    ...site.marks
      .filter(
        ({ id, kind, points }) => `mark ${id}` === chosen || (points.length > 1 && LINES.includes(kind))
      )
      .map((mark) => ({ value: `mark ${mark.id}`, label: markName(mark, site.marks) }))
  ];
}

export function baselineOf(value: string): Baseline {
  const at = value.indexOf(' ');
  const [kind, id] = [value.slice(0, at), value.slice(at + 1)];
  if (kind === 'lane') return { kind, lane: id };
  return kind === 'mark' ? { kind, mark: id } : undefined;
}

/** As dates on drawings are written: the same in every country. */
export function today(now = new Date()): string {
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
