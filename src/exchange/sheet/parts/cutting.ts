/** Where to cut: a picture a loop. */
import { cautionText } from '#analysis/takeoff/how';
import { valueSaid } from '#analysis/takeoff/said-values';
import type { CoreHole, Cut, CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import { distance } from '#plan/geometry/points';
import type { Loop, Site } from '#plan/schema';
import { format } from '#units/format';
import type { Block } from '../layout/block';
import { figuresBlock } from '../layout/grid';
import { textsBlock } from '../layout/texts-block';
import { cutFigure } from './cut-figure';
import { lengthText } from '#scenes/tape';
import { loopName, nameOf } from '../../tables/names';

/** Loops as one comes to them when sawing. */
const inOrder = (
  site: Site,
  cuts: readonly Cut[]
): readonly { readonly loop: Loop; readonly own: readonly Cut[] }[] =>
  site.loops
    .map((loop) => ({
      loop,
      own: cuts.filter((cut) => cut.loop === loop.id || cut.sharedWith.includes(loop.id))
    }))
    .filter(({ own }) => own.length > 0)
    .toSorted((a, b) => a.own[0]!.order - b.own[0]!.order);

/** Metres: ends as near as this to the middle of a hole are in one corner with it. */
const ONE_CORNER = 0.005;

/** A hole counts with one loop; it is in the corner of every loop that meets there. */
const endsAt = ({ from, to }: Cut, { at }: CoreHole): boolean =>
  distance(from, at) <= ONE_CORNER || distance(to, at) <= ONE_CORNER;

export const cuttingFigures = (site: Site, { cuts, holes }: CuttingPlan): Block =>
  figuresBlock(
    t('sheet.cutting'),
    () =>
      inOrder(site, cuts).map(({ loop, own }) =>
        cutFigure(
          nameOf(loop),
          own,
          holes.filter((hole) => hole.loop === loop.id || own.some((cut) => endsAt(cut, hole)))
        )
      ),
    t('sheet.cuttingHint')
  );

/** What is sawn without being drawn, and what the figures leave out. */
export function notPlaced(site: Site, { unplaced, cautions }: CuttingPlan): Block {
  const { displayUnits } = site;
  const depthText = (depth: number): string => format(depth, 'smallLength', displayUnits).text;
  return textsBlock(
    t('sheet.notPlaced'),
    [
      ...unplaced.map(({ loop, length, depth }) =>
        t('sheet.homeRun', {
          name: loopName(site, loop),
          length: lengthText(length, displayUnits),
          depth: depthText(depth)
        })
      ),
      ...cautions.map((each) => cautionText(each, valueSaid(displayUnits)))
    ],
    '•'
  );
}
