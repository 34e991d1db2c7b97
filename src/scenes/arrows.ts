/** Arrows painted on the road, from their tail to their head, in the directions that a lane leads to. */
import { add, distance, scale, subtract } from '#plan/geometry/points';
import type { ArrowTurn, Mark, Point } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { area, type Drawing } from './drawing';
import { onScreen } from './frame';
import type { Theme } from './theme';

/** Of the arrow's length: half the shaft, half of what the head spans, the head's length, where a branch turns off. */
const SHAFT = 0.032;
const BARB = 0.11;
const HEAD = 0.26;
const BRANCH = { from: 0.34, at: 0.62, reach: 0.3 } as const;

/** In the arrow's own frame: x to its left, y from 0 at the tail to 1 at the head. */
const AHEAD: readonly Point[] = [
  [SHAFT, 0],
  [SHAFT, 1 - HEAD],
  [BARB, 1 - HEAD],
  [0, 1],
  [-BARB, 1 - HEAD],
  [-SHAFT, 1 - HEAD],
  [-SHAFT, 0]
];

/** Turns off to the left with its head across the road. */
function leftBranch(): readonly Point[] {
  const { from, at, reach } = BRANCH;
  const neck = reach - HEAD * 0.62;
  return [
    [SHAFT, 0],
    [SHAFT, from + SHAFT],
    [neck, at - SHAFT],
    [neck, at - BARB],
    [reach, at],
    [neck, at + BARB],
    [neck, at + SHAFT],
    [-SHAFT, from + 2 * SHAFT],
    [-SHAFT, 0]
  ];
}

/** Comes back beside itself, to the left. */
const BACK: readonly Point[] = [
  [-SHAFT, 0],
  [-SHAFT, 0.86],
  [0, 0.93],
  [0.17, 0.93],
  [0.2, 0.86],
  [0.2, 0.7],
  [0.2 + BARB - SHAFT, 0.7],
  [0.2 - SHAFT, 0.7 - HEAD],
  [0.2 - SHAFT - BARB, 0.7],
  [0.2 - 2 * SHAFT, 0.7],
  [0.2 - 2 * SHAFT, 0.86],
  [SHAFT, 0.86],
  [SHAFT, 0]
];

const mirrored = (outline: readonly Point[]): readonly Point[] => outline.map(([x, y]) => [-x, y]);
const LEFT = leftBranch();
const RIGHT = mirrored(LEFT);

const OUTLINES: Readonly<Record<ArrowTurn, readonly (readonly Point[])[]>> = {
  ahead: [AHEAD],
  left: [LEFT],
  right: [RIGHT],
  'ahead-left': [AHEAD, LEFT],
  'ahead-right': [AHEAD, RIGHT],
  'left-right': [LEFT, RIGHT],
  back: [BACK]
};

/** Outlines first, then the paint of all: parts of one arrow have no lines between them. */
export function arrowDrawings({ points, turn = 'ahead' }: Mark, view: Viewport, theme: Theme): Drawing[] {
  const [tail, head] = points;
  if (!tail || !head) return [];
  const length = distance(tail, head);
  if (length === 0) return [];
  const along = subtract(head, tail);
  const left: Point = [-along[1], along[0]];
  const parts = OUTLINES[turn].map((outline) =>
    onScreen(
      view,
      outline.map(([x, y]) => add(tail, add(scale(along, y), scale(left, x))))
    )
  );
  const stroke = { colour: theme.roadLine, width: 2 };
  return [
    ...parts.map((part) => area(part, theme.paint, stroke)),
    ...(parts.length > 1 ? parts.map((part) => area(part, theme.paint)) : [])
  ];
}
