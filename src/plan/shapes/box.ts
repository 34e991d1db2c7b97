/**
 * What the shapes drawn in a turned box have in common: rectangle, quadrupole, diagonal.
 *
 * In the box's own frame the width lies along x and the length along y; `rotation` turns it counter-clockwise about
 * its centre. Handles are named by compass point in that frame: 'sw' is the corner at (−w/2, −l/2), 'n' the middle of
 * the side at +l/2.
 */
import { t } from '#i18n/message';
import { BOUNDS } from '../bounds';
import { add, between, normalAngle, rotate, scale, subtract } from '../geometry/points';
import type { Point } from '../schema';
import type { Dimension, Handle, ShapeProblem } from './definition';

export interface Box {
  readonly centre: Point;
  readonly width: number;
  readonly length: number;
  readonly rotation: number;
}

export const BOX_DIMENSIONS: readonly Dimension[] = [
  { key: 'width', kind: 'length' },
  { key: 'length', kind: 'length' },
  { key: 'rotation', kind: 'angle' }
];

/** Handle name and the side of the box that it lies on, per axis. */
const COMPASS: readonly (readonly [string, Point])[] = [
  ['sw', [-1, -1]],
  ['s', [0, -1]],
  ['se', [1, -1]],
  ['e', [1, 0]],
  ['ne', [1, 1]],
  ['n', [0, 1]],
  ['nw', [-1, 1]],
  ['w', [-1, 0]]
];

/** Which sides of the box a handle moves: −1, 0 or 1 along its width and its length; [0, 0] for a name that it has not. */
export const handleSide = (handle: string): Point => COMPASS.find(([id]) => id === handle)?.[1] ?? [0, 0];

/** Within the bounds, and to a nanometre: turning back and forth must not leave 1.9999999999999998 m in the document. */
export const clampSide = (side: number): number =>
  Math.round(Math.min(BOUNDS.side.max, Math.max(BOUNDS.side.min, side)) * 1e9) / 1e9;

/** From the box's own frame to the plan. */
export const placed = (box: Box, local: Point): Point => add(box.centre, rotate(local, box.rotation));

/** The four corners counter-clockwise from 'sw'. */
export const boxCorners = (box: Box): readonly Point[] => {
  const x = box.width / 2;
  const y = box.length / 2;
  return ([[-x, -y], [x, -y], [x, y], [-x, y]] as const).map((corner) => placed(box, corner)); // prettier-ignore
};

export const boxHandles = (box: Box): readonly Handle[] =>
  COMPASS.map(([id, [sx, sy]]) => ({ id, at: placed(box, [(sx * box.width) / 2, (sy * box.length) / 2]) }));

/** The box after the handle was dragged; it stops at the smallest side and never turns inside out. */
export function dragBox<B extends Box>(box: B, handle: string, to: Point, fromCentre = false): B {
  const side = COMPASS.find(([id]) => id === handle)?.[1];
  if (!side) return box;
  const [sx, sy] = side;
  const fixed = fromCentre ? box.centre : placed(box, [(-sx * box.width) / 2, (-sy * box.length) / 2]);
  const reach = scale(rotate(subtract(to, fixed), -box.rotation), fromCentre ? 2 : 1);
  const width = sx === 0 ? box.width : clampSide(reach[0] * sx);
  const length = sy === 0 ? box.length : clampSide(reach[1] * sy);
  const centre = fromCentre
    ? box.centre
    : add(fixed, rotate([(sx * width) / 2, (sy * length) / 2], box.rotation));
  return { ...box, centre, width, length };
}

export const moveBox = <B extends { readonly centre: Point }>(box: B, by: Point): B => ({
  ...box,
  centre: add(box.centre, by)
});

export const rotateBox = <B extends Box>(box: B, degrees: number, pivot: Point): B => ({
  ...box,
  centre: rotate(box.centre, degrees, pivot),
  rotation: normalAngle(box.rotation + degrees)
});

export const boxBetween = (a: Point, b: Point): Box => ({
  centre: between(a, b),
  width: clampSide(Math.abs(b[0] - a[0])),
  length: clampSide(Math.abs(b[1] - a[1])),
  rotation: 0
});

/** A dimension outside the bounds, in words. */
export function sizeProblem(key: ShapeProblem['key'], size: number): ShapeProblem | null {
  const { min, max } = BOUNDS.side;
  if (size >= min && size <= max) return null;
  return { key, found: t('shape.size', { size }), expected: t('shape.sizes', { min, max }) };
}

export const boxProblem = (box: Box): ShapeProblem | null =>
  sizeProblem('width', box.width) ?? sizeProblem('length', box.length);
