/** What the gesture in hand shows: guides with their lengths, the box, the text beside the pointer. */
import { between, distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { boxAround, boxCorners } from '#editor/geometry/box';
import type { Overlay, Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, line, textWidth, type Drawing } from './drawing';
import { onScreen, type Frame } from './frame';
import { BOLD, boxOfWriting, type Obstacle } from './obstacles';
import type { Theme } from './theme';

const TEXT_SIZE = 12;
/** Pixels from the pointer to its text. */
const ASIDE = 16;
const TICK = 4;
/** Width of what writing leaves free for the tape. */
const TAPE = 5;
/** Pixels from the middle of the cross to where its arms begin and end. */
const CROSS = { gap: 5, arm: 16 } as const;

/** Lines of help with their lengths. */
export const guidesScene = (guides: Overlay['guides'], view: Viewport, theme: Theme): Drawing[] =>
  guides.flatMap(({ from, to, label }): Drawing[] => {
    const [a, b] = [planToScreen(view, from), planToScreen(view, to)];
    const stroke = { colour: theme.guide, width: 1 };
    if (label === '') return [line([a, b], { ...stroke, dash: [5, 4] })];
    const at = between(a, b);
    const text = { kind: 'text', at, text: label, colour: theme.guide, size: TEXT_SIZE } as const;
    return [
      line([a, b], stroke),
      ...ticks(a, b, theme.guide),
      { ...text, align: 'center', plate: theme.plate }
    ];
  });

const guideDrawings = ({ state, theme }: Frame): Drawing[] =>
  guidesScene(state.overlay.guides, state.viewport, theme);

/** Short strokes across the ends of a dimension line. */
function ticks(a: Point, b: Point, colour: string): Drawing[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  if (length < 1e-6) return [];
  const x = (-(b[1] - a[1]) / length) * TICK;
  const y = ((b[0] - a[0]) / length) * TICK;
  return [a, b].map(
    (end) =>
    line([[end[0] - x, end[1] - y], [end[0] + x, end[1] + y]], { colour, width: 1 }) // prettier-ignore
  );
}

function boxDrawings({ state, theme }: Frame): Drawing[] {
  const { box } = state.overlay;
  if (!box) return [];
  const corners = onScreen(state.viewport, boxCorners(boxAround([box.from, box.to])!));
  const stroke = { colour: theme.accent, width: 1.5 };
  return [area(corners, theme.accentSoft, box.touching ? { ...stroke, dash: [6, 4] } : stroke)];
}

function labelDrawings({ state, theme }: Frame): Drawing[] {
  const { label } = state.overlay;
  if (!label || label.text === '') return [];
  const [x, y] = planToScreen(state.viewport, label.at);
  const width = textWidth(label.text, TEXT_SIZE) * BOLD * theme.textScale;
  const room = state.viewport.width - ASIDE;
  const fits = x + ASIDE + width < room;
  // One that is too long for either side lies across the pointer, above it.
  const fitsBefore = x - 2 * ASIDE > width;
  const left = fits ? x + ASIDE : fitsBefore ? x - ASIDE : Math.max(ASIDE, room - width);
  const at: Point = [left, y > 2 * ASIDE ? y - ASIDE : y + ASIDE];
  const align = fits || !fitsBefore ? 'left' : 'right';
  return [
    {
      kind: 'text',
      at,
      text: label.text,
      colour: theme.ink,
      size: TEXT_SIZE,
      bold: true,
      align,
      plate: theme.plate
    }
  ];
}

/** The pointer that the arrow keys move: a cross with an open middle, on a rim that stands off any ground. */
function crossDrawings({ state, theme }: Frame): Drawing[] {
  if (!state.keyboardPoint) return [];
  const [x, y] = planToScreen(state.viewport, state.keyboardPoint);
  const arms = ([[1, 0], [-1, 0], [0, 1], [0, -1]] as const).map(([dx, dy]): Point[] => [
    [x + dx * CROSS.gap, y + dy * CROSS.gap],
    [x + dx * CROSS.arm, y + dy * CROSS.arm]
  ]); // prettier-ignore
  const drawn = (colour: string, width: number): Drawing[] => [
    ...arms.map((arm) => line(arm, { colour, width })),
    { kind: 'circle', at: [x, y], radius: CROSS.gap, stroke: { colour, width } }
  ];
  return [...drawn(theme.plate, 5), ...drawn(theme.accent, 2)];
}

/** What a tape with something between its ends takes: its line, its lengths and the text at its last end. */
export function tapeObstacles(frame: Frame): readonly Obstacle[] {
  const { state, theme } = frame;
  const sides = state.overlay.guides.filter(({ label, from, to }) => label !== '' && distance(from, to) > 0);
  if (state.tool !== 'measure' || sides.length === 0) return [];
  return [
    ...sides.map(({ from, to }) => ({
      from: planToScreen(state.viewport, from),
      to: planToScreen(state.viewport, to),
      width: TAPE
    })),
    ...[...guidesScene(sides, state.viewport, theme), ...labelDrawings(frame)].flatMap((each) =>
      each.kind === 'text' ? [boxOfWriting(each, theme.textScale)] : []
    )
  ];
}

export const helpScene = (frame: Frame): Drawing[] => [
  ...boxDrawings(frame),
  ...guideDrawings(frame),
  ...labelDrawings(frame),
  ...crossDrawings(frame)
];
