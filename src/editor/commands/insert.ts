/** Loops without a pointer: a shape of the usual size in the middle of the view. */
import { saying } from '#i18n/saying';
import { addWiredLoop, newLoop } from '#plan/edits/index';
import { definitionOf, moveShape, SHAPE_KINDS } from '#plan/shapes/index';
import type { DisplayUnits, Point, Shape, ShapeKind } from '#plan/schema';
import { FOOT } from '#units/constants';
import { laneAt } from '../geometry/lanes';
import { towards } from '../geometry/rays';
import { toStep } from '../snapping/snap';
import type { Command, Editor, EditorState } from '../types';

/** Side or diameter, metres: six feet, or the metric size next to it. */
const SIZE: Readonly<Record<DisplayUnits, number>> = { metric: 1.8, imperial: 6 * FOOT };
/** A quadrupole is longer than wide. */
const QUADRUPOLE_LENGTHS = 2;
const POLYGON_SIDES = 8;

function octagon([x, y]: Point, size: number): Shape {
  const radius = size / 2 / Math.cos(Math.PI / POLYGON_SIDES);
  const points = Array.from({ length: POLYGON_SIDES }, (_, index): Point => {
    const [dx, dy] = towards(((index + 0.5) * 360) / POLYGON_SIDES);
    return [x + dx * radius, y + dy * radius];
  });
  return { kind: 'polygon', points };
}

function shapeAt(kind: ShapeKind, centre: Point, size: number): Shape {
  const [x, y] = centre;
  const box = { centre, width: size, length: size, rotation: 0 };
  switch (kind) {
    case 'rectangle':
      return { kind, ...box, cornerCut: 0 };
    case 'quadrupole':
      return { kind, ...box, length: QUADRUPOLE_LENGTHS * size };
    case 'diagonal':
      return { kind, ...box };
    case 'circle':
      return { kind, centre, diameter: size };
    case 'polygon':
      return octagon([x, y], size);
  }
}

/** On the middle of the lane that the view's centre lies in, else on the grid. */
function placeFor({ site, viewport, snap }: EditorState): Point {
  const found = laneAt(site.lanes, viewport.centre);
  if (found) return found.station.at;
  const [x, y] = viewport.centre;
  return [x + toStep(x, snap.gridStep), y + toStep(y, snap.gridStep)];
}

/** Beside the loops that have their centre there already. */
function freePlace(state: EditorState, shape: Shape, size: number): Shape {
  const taken = state.site.loops.map((loop) => definitionOf(loop.shape).centre(loop.shape));
  let placed = shape;
  const isTaken = ([x, y]: Point): boolean => taken.some(([a, b]) => Math.hypot(a - x, b - y) < size / 2);
  while (isTaken(definitionOf(placed).centre(placed))) placed = moveShape(placed, [0, -1.5 * size]);
  return placed;
}

/** Draws a loop of the usual size near the middle of the view and selects it. */
function insertShape(editor: Editor, kind: ShapeKind): void {
  const { state } = editor;
  const size = SIZE[state.site.displayUnits];
  const shape = freePlace(state, shapeAt(kind, placeFor(state), size), size);
  const loop = newLoop(state.site, shape);
  editor.commit({
    label: saying(`step.loop.${kind}`),
    site: addWiredLoop(state.site, loop),
    selection: [{ kind: 'loop', id: loop.id }]
  });
}

const KEYS: Readonly<Record<ShapeKind, string>> = {
  rectangle: 'Shift+R',
  quadrupole: 'Shift+Q',
  diagonal: 'Shift+D',
  circle: 'Shift+C',
  polygon: 'Shift+P'
};

export const inserts: readonly Command[] = SHAPE_KINDS.map((kind) => ({
  id: `insert-${kind}` as const,
  keys: [KEYS[kind]],
  applies: ({ busy }) => !busy,
  run: (editor) => insertShape(editor, kind)
}));
