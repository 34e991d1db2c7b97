/** Hours of one crew, by the site's rates. */
import type { StatedEstimate } from '#plan/catalogue/estimate';
import { count, how, length, pace, smallLength, time } from '../how';
import type { How, Place, TakeoffKind } from '../results';
import type { Draft } from './line';
import { sum, type OfLoop } from './of-loop';

const HOUR = 3_600;

/** Depth that the pace of sawing holds for, metres; a deeper slot takes longer in proportion. */
const SAWING_DEPTH = 0.025;

export function loopCrewDrafts({
  of,
  own,
  places,
  holes,
  unplaced,
  estimate,
  hasLeadIn
}: OfLoop): readonly Draft[] {
  const { rates } = estimate;
  const slots = [
    ...own.map(({ length: run, depth, overcut }) => ({ run: run + overcut.from + overcut.to, depth })),
    ...(unplaced ? [{ run: unplaced.length, depth: unplaced.depth }] : [])
  ];
  const sawn = sum(slots, ({ run }) => run);
  const equal = sum(slots, ({ run, depth }) => (run * depth) / SAWING_DEPTH);
  const inSlot = of.loop.turns * of.turn + 2 * (of.tail ? of.tailWay : (unplaced?.length ?? 0));
  const draft = (what: TakeoffKind, amount: number, hours: How, where: readonly Place[] = places): Draft => ({
    subject: of.loop.id,
    what,
    item: 'crew',
    amount,
    unit: 'h',
    how: hours,
    places: where
  });
  return [
    draft('preparing', rates.preparing_s / HOUR, how('preparing', { time: time(rates.preparing_s) })),
    draft(
      'sawing',
      equal / rates.sawing_m_per_h,
      how('sawing', {
        length: length(sawn),
        equal: length(equal),
        reference: smallLength(SAWING_DEPTH),
        pace: pace(rates.sawing_m_per_h)
      })
    ),
    draft(
      'coring',
      (holes.length * rates.coring_s) / HOUR,
      how('coring', { holes: count(holes.length), time: time(rates.coring_s) }),
      holes.map(({ at }): Place => ({ kind: 'point', at }))
    ),
    draft(
      'laying',
      inSlot / rates.laying_m_per_h,
      how('laying', { length: length(inSlot), pace: pace(rates.laying_m_per_h) })
    ),
    draft(
      'sealing',
      sawn / rates.sealing_m_per_h,
      how('sealing', { length: length(sawn), pace: pace(rates.sealing_m_per_h) })
    ),
    draft(
      'splicing',
      hasLeadIn ? rates.splice_s / HOUR : 0,
      how('splicing', { kits: count(1), time: time(rates.splice_s) })
    ),
    draft('testing', rates.test_s / HOUR, how('testingLoop', { time: time(rates.test_s) }))
  ];
}

/** Once, where there is anything to cut. */
export const siteCrewDrafts = (loops: number, { rates }: StatedEstimate): readonly Draft[] =>
  loops === 0
    ? []
    : [
        {
          subject: '',
          what: 'setting up',
          item: 'crew',
          amount: rates.setUp_s / HOUR,
          unit: 'h',
          how: how('settingUp', { time: time(rates.setUp_s) }),
          places: []
        }
      ];
