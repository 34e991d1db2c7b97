/** Numbers of a cutting plan as a crew reads them with a tape: to the centimetre, or the hundredth of a foot. */
import { referencePointsOf } from '#analysis/takeoff/reference-points';
import type { Cut, CuttingPlan, Place, SetOut } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { format } from '#units/format';
import type { UnitSystem } from '#units/kind';
import { loopName } from '../../names';
import { markName } from '../../wiring/marks';
import { formatForSetOut } from './set-out-text';

/** The plan calls a line without a name by its id; who reads calls it by its kind. */
export function baselineName({ marks }: Pick<Site, 'marks'>, name: string): string {
  const mark = marks.find(({ id, text }) => id === name && (text ?? '').trim() === '');
  return mark ? markName(mark, marks) : name;
}

/** Where a cut is on the plan. */
export const placeOfCut = ({ from, to, circle }: Cut): Place =>
  circle ? { kind: 'circle', ...circle } : { kind: 'line', points: [from, to] };

export interface EndText {
  readonly station: string;
  readonly offset: string;
}

const NOWHERE: EndText = { station: '–', offset: '–' };

export const endText = (end: SetOut | null | undefined, system: UnitSystem): EndText =>
  end
    ? { station: formatForSetOut(end.station, system), offset: formatForSetOut(end.offset, system) }
    : NOWHERE;

/** What is set out or found by station and offset. */
export interface SetOutRow {
  readonly key: string;
  readonly name: string;
  /** Of the drawing, selected while somebody looks at the row. */
  readonly subject: string;
  readonly place: Place;
  /** Where the tape finds it; of a line both ends. */
  readonly ends: readonly (SetOut | null)[];
  /** What else is said of it. */
  readonly further: readonly string[];
}

export function holeRows(site: Site, { holes }: CuttingPlan): readonly SetOutRow[] {
  const small = (metres: number) => format(metres, 'smallLength', site.displayUnits).text;
  return holes.map(({ loop, at, setOut, diameter, depth }, index) => ({
    key: `hole ${index}`,
    name: t('cutting.holeNumber', { number: index + 1 }),
    subject: loop,
    place: { kind: 'circle', centre: at, radius: diameter / 2 },
    ends: [setOut],
    further: [loopName(site, loop), small(diameter), small(depth)]
  }));
}

export const referenceRows = (site: Site): readonly SetOutRow[] =>
  referencePointsOf(site).map(({ mark, from, to }) => ({
    key: `reference ${mark.id}`,
    name: markName(mark, site.marks),
    subject: mark.id,
    place: to ? { kind: 'line', points: mark.points } : { kind: 'point', at: mark.points[0]! },
    ends: to ? [from, to] : [from],
    further: []
  }));

/** Metres that the blade travels, overcuts included. */
export const bladeWay = ({ totals }: CuttingPlan): number =>
  totals.reduce((sum, { length, overcut }) => sum + length + overcut, 0);
