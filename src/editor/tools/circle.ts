/** From the centre to the rim. */
import { add, distance, scale, subtract } from '#plan/geometry/points';
import { tidyShape } from '#plan/edits/tidy';
import type { Point, Shape } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { BOUNDS } from '#plan/bounds';
import type { TypedSizes } from '../dimension-entry';
import { sizeOffer } from '../entry/placing';
import { clearances } from '../snapping/clearances';
import { joinedText, lengthText } from '../wording';
import { loopStep, withLoop } from './loop-step';
import { twoPointTool, type Stretch } from './two-points';

const SMALLEST = 0.1;

function circleOf({ from, to, input }: Stretch): Extract<Shape, { kind: 'circle' }> | null {
  const diameter = Math.min(BOUNDS.side.max, input.typed.diameter ?? 2 * distance(from, to));
  if (diameter < (input.typed.diameter === undefined ? SMALLEST : BOUNDS.side.min)) return null;
  const circle = { kind: 'circle', centre: from, diameter } as const;
  return input.typed.diameter === undefined ? circle : (tidyShape(circle) as typeof circle);
}

function rimAt(from: Point, pointer: Point, { diameter, offset }: TypedSizes): Point {
  if (offset) return add(from, offset);
  if (diameter === undefined) return pointer;
  const far = distance(from, pointer);
  const ray: Point = far < 1e-9 ? [1, 0] : scale(subtract(pointer, from), 1 / far);
  return add(from, scale(ray, diameter / 2));
}

export const circleTool = twoPointTool({
  name: 'circle',
  sizing: {
    to: rimAt,
    sizes: ({ from, to }) => [sizeOffer('diameter', 2 * distance(from, to), BOUNDS.side)]
  },
  show(stretch, scene) {
    const { site } = scene;
    const circle = circleOf(stretch);
    if (!circle) return { overlay: { guides: stretch.snap.guides, cursor: 'crosshair' } };
    const text = joinedText(`⌀ ${lengthText(site, circle.diameter)}`, stretch.snap.text);
    const guides = [...stretch.snap.guides, { from: stretch.from, to: stretch.to, label: '' }];
    const free = clearances(scene, outlineOf(circle), [], guides);
    const overlay = { guides: [...guides, ...free], label: { at: stretch.to, text }, cursor: 'crosshair' };
    return { draft: withLoop(site, circle).site, overlay };
  },
  finish(stretch, { site }) {
    const circle = circleOf(stretch);
    return circle && loopStep(site, circle);
  }
});
