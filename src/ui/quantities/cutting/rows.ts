/** Numbers of a cutting plan as a crew reads them with a tape: to the centimetre, or the hundredth of a foot. */
import type { Cut, CuttingPlan, Place, SetOut } from '#analysis/takeoff/results';
import { formatForSetOut } from './set-out-text';
import type { Site } from '#plan/schema';
import type { UnitSystem } from '#units/kind';
import { markName } from '../../wiring/marks';

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

/** Metres that the blade travels, overcuts included. */
export const bladeWay = ({ totals }: CuttingPlan): number =>
  totals.reduce((sum, { length, overcut }) => sum + length + overcut, 0);
