/** From the centre to the rim. */
import { distance } from '#plan/geometry/points';
import type { Shape } from '#plan/schema';
import { BOUNDS } from '#plan/bounds';
import { joinedText, lengthText } from '../wording';
import { loopStep, withLoop } from './loop-step';
import { twoPointTool, type Stretch } from './two-points';

const SMALLEST = 0.1;

function circleOf({ from, to }: Stretch): Extract<Shape, { kind: 'circle' }> | null {
  const diameter = Math.min(BOUNDS.side.max, 2 * distance(from, to));
  return diameter < SMALLEST ? null : { kind: 'circle', centre: from, diameter };
}

export const circleTool = twoPointTool({
  name: 'circle',
  show(stretch, { site }) {
    const circle = circleOf(stretch);
    if (!circle) return { overlay: { guides: stretch.snap.guides, cursor: 'crosshair' } };
    const text = joinedText(`⌀ ${lengthText(site, circle.diameter)}`, stretch.snap.text);
    const guides = [...stretch.snap.guides, { from: stretch.from, to: stretch.to, label: '' }];
    const overlay = { guides, label: { at: stretch.to, text }, cursor: 'crosshair' };
    return { draft: withLoop(site, circle).site, overlay };
  },
  finish(stretch, { site }) {
    const circle = circleOf(stretch);
    return circle && loopStep(site, circle);
  }
});
