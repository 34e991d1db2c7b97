/** Where to cut: a picture a loop. */
import { cautionText } from '#analysis/takeoff/how';
import { valueSaid } from '#analysis/takeoff/said-values';
import type { Cut, CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
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

export const cuttingFigures = (site: Site, { cuts, holes }: CuttingPlan): Block =>
  figuresBlock(
    t('sheet.cutting'),
    () =>
      inOrder(site, cuts).map(({ loop, own }) =>
        cutFigure(
          nameOf(loop),
          own,
          holes.filter((hole) => hole.loop === loop.id)
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
