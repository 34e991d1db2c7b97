/** Rectangle, quadrupole, diagonal: from corner to corner; shift makes a square, control starts from the centre. */
import { definitionOf, rotateShape, shapeDefinitions } from '#plan/shapes/index';
import { tidyShape } from '#plan/edits/tidy';
import { add, subtract } from '#plan/geometry/points';
import type { Point, Shape } from '#plan/schema';
import { hasTyped } from '../entry/placing';
import { clearances } from '../snapping/clearances';
import { joinedText, sizeText } from '../wording';
import { acrossCorners, cornerSizing } from './corner-sizes';
import { loopStep, withLoop } from './loop-step';
import { twoPointTool, type Stretch } from './two-points';
import type { ToolState } from './tool';

type BoxKind = 'rectangle' | 'quadrupole' | 'diagonal';

/** Metres: no saw cuts a smaller loop, and a hand that drew one slipped. */
const SMALLEST = 0.1;

/** The sides from the first corner, signs included; with one of them typed, a square has it on both. */
function sidesOf(stretch: Stretch): Point | null {
  const [x, y] = acrossCorners(stretch);
  const { shift, typed } = stretch.input;
  const isTyped = hasTyped(typed);
  if (!isTyped && Math.abs(x) < SMALLEST && Math.abs(y) < SMALLEST) return null;
  const squareSide =
    typed.width === undefined && typed.length !== undefined
      ? Math.abs(y)
      : typed.length === undefined && typed.width !== undefined
        ? Math.abs(x)
        : Math.max(Math.abs(x), Math.abs(y));
  const isSquare = shift && !typed.offset && (typed.width === undefined || typed.length === undefined);
  const least = typed.offset ? 0 : SMALLEST;
  const side = (along: number, known: number | undefined): number => {
    const size = isSquare
      ? squareSide
      : known === undefined
        ? Math.max(least, Math.abs(along))
        : Math.abs(along);
    return along < 0 ? -size : size;
  };
  return [side(x, typed.width), side(y, typed.length)];
}

function shapeOf(kind: BoxKind, stretch: Stretch): Shape | null {
  const sides = sidesOf(stretch);
  if (!sides) return null;
  const { from, input } = stretch;
  const shape = shapeDefinitions[kind].fromBox(
    input.control ? subtract(from, sides) : from,
    add(from, sides)
  );
  return tidyShape(input.typed.angle === undefined ? shape : rotateShape(shape, input.typed.angle, from));
}

export const boxShapeTool = (kind: BoxKind): ToolState =>
  twoPointTool({
    name: kind,
    sizing: cornerSizing(true),
    show(stretch, scene) {
      const { site } = scene;
      const shape = shapeOf(kind, stretch);
      const guides = stretch.snap.guides;
      if (!shape || !('width' in shape)) return { overlay: { guides, cursor: 'crosshair' } };
      const label = {
        at: stretch.to,
        text: joinedText(sizeText(site, shape.width, shape.length), stretch.snap.text)
      };
      const outline = definitionOf(shape).outline(shape);
      const free = clearances(scene, outline, [], guides);
      const overlay = { guides: [...guides, ...free], label, cursor: 'crosshair' };
      return { draft: withLoop(site, shape).site, overlay };
    },
    finish(stretch, { site }) {
      const shape = shapeOf(kind, stretch);
      return shape && loopStep(site, shape);
    }
  });
