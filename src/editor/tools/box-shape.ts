/** Rectangle, quadrupole, diagonal: from corner to corner; shift makes a square, control starts from the centre. */
import { definitionOf, shapeDefinitions } from '#plan/shapes/index';
import type { Point, Shape } from '#plan/schema';
import { boxAround } from '../geometry/box';
import { joinedText, sizeText } from '../wording';
import { loopStep, withLoop } from './loop-step';
import { twoPointTool, type Stretch } from './two-points';
import type { ToolState } from './tool';

type BoxKind = 'rectangle' | 'quadrupole' | 'diagonal';

/** Metres: no saw cuts a smaller loop, and a hand that drew one slipped. */
const SMALLEST = 0.1;

function cornersOf({ from, to, input }: Stretch): readonly [Point, Point] | null {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  if (Math.abs(dx) < SMALLEST && Math.abs(dy) < SMALLEST) return null;
  const square = Math.max(Math.abs(dx), Math.abs(dy));
  const side = (along: number): number =>
    (along < 0 ? -1 : 1) * (input.shift ? square : Math.max(SMALLEST, Math.abs(along)));
  const reach: Point = [side(dx), side(dy)];
  const opposite: Point = input.control ? [from[0] - reach[0], from[1] - reach[1]] : from;
  return [opposite, [from[0] + reach[0], from[1] + reach[1]]];
}

function shapeOf(kind: BoxKind, stretch: Stretch): Shape | null {
  const corners = cornersOf(stretch);
  return corners && shapeDefinitions[kind].fromBox(...corners);
}

export const boxShapeTool = (kind: BoxKind): ToolState =>
  twoPointTool({
    name: kind,
    show(stretch, { site }) {
      const shape = shapeOf(kind, stretch);
      const guides = stretch.snap.guides;
      if (!shape) return { overlay: { guides, cursor: 'crosshair' } };
      const box = boxAround(definitionOf(shape).outline(shape))!;
      const size = sizeText(site, box.right - box.left, box.top - box.bottom);
      const label = { at: stretch.to, text: joinedText(size, stretch.snap.text) };
      return { draft: withLoop(site, shape).site, overlay: { guides, label, cursor: 'crosshair' } };
    },
    finish(stretch, { site }) {
      const shape = shapeOf(kind, stretch);
      return shape && loopStep(site, shape);
    }
  });
