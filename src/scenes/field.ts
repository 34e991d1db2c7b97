/** What is looked at of a field, on the plan: the line of a section with its letters, and the currents in a vehicle. */
import { distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { area, line, type Drawing } from './drawing';
import { onScreen, type FieldOverlay, type Frame } from './frame';
import { guidesScene, tapeObstacles } from './help';
import { boxAbout } from './label-places';
import type { Obstacle } from './obstacles';
import {
  GRIP,
  gripPlaces,
  letterBox,
  LETTER_SIZE,
  sectionOnScreen,
  type SectionOnScreen
} from './section-line';
import type { Theme } from './theme';

/** Dots and dashes, as sections are marked on drawings. */
const DASH = [14, 4, 3, 4] as const;
const LINE = 1.5;
/** Width of what writing leaves free for the line. */
const CLEAR = 6;
const LOOK = { length: 22, head: 5 } as const;
const CURRENT = 1.4;
const HEAD = 4;
/** Pixels of a line of current between two arrowheads. */
const PER_HEAD = 160;
/** Shorter lines than this have no head, nearer points no direction: pixels. */
const SHORT = 14;
const SAME = 1e-9;

const stroke = (theme: Theme) => ({ colour: theme.ink, width: LINE });

/** The section that is looked at, clear of a tape's texts; null for none. */
function sectionOf(frame: Frame): SectionOnScreen | null {
  const section = frame.field?.section;
  return section
    ? sectionOnScreen(section, frame.state.viewport, frame.theme.textScale, tapeObstacles(frame))
    : null;
}

const tipOf = ([x, y]: Point, [sx, sy]: Point): Point => [x + LOOK.length * sx, y + LOOK.length * sy];

/** Beneath labels, so that one without another place can still be read; what it snaps to goes with it. */
export function sectionLineScene(frame: Frame): Drawing[] {
  const seen = sectionOf(frame);
  const { viewport } = frame.state;
  return [
    ...(seen ? [line(seen.ends, { ...stroke(frame.theme), dash: DASH })] : []),
    ...guidesScene(frame.field?.section?.guides ?? [], viewport, frame.theme)
  ];
}

/** Over labels: at each end an arrow in the direction of sight, and the letter. */
export function sectionMarksScene(frame: Frame): Drawing[] {
  const seen = sectionOf(frame);
  if (!seen) return [];
  const { theme } = frame;
  const { along, sight } = seen;
  return seen.ends.flatMap((end, n): Drawing[] => {
    const tip = tipOf(end, sight);
    const at = (back: number, beside: number): Point => [
      tip[0] - back * sight[0] + beside * along[0],
      tip[1] - back * sight[1] + beside * along[1]
    ];
    return [
      line([end, tip], stroke(theme)),
      area([at(0, 0), at(2 * LOOK.head, LOOK.head), at(2 * LOOK.head, -LOOK.head)], theme.ink),
      {
        kind: 'text',
        at: seen.letters[n]!,
        text: 'A',
        colour: theme.ink,
        size: LETTER_SIZE,
        bold: true,
        align: 'center',
        plate: theme.plate
      }
    ];
  });
}

/** What a section takes, pixels: labels on the plan keep clear of its line, arrows, letters and grips. */
export function sectionObstacles(frame: Frame): readonly Obstacle[] {
  const seen = sectionOf(frame);
  const section = frame.field?.section;
  if (!seen || !section) return [];
  const [from, to] = seen.ends;
  const grip = { width: 2 * GRIP.half, height: 2 * GRIP.half };
  return [
    { from, to, width: CLEAR },
    ...seen.ends.map((end) => ({ from: end, to: tipOf(end, seen.sight), width: 2 * LOOK.head })),
    ...seen.letters.map((at) => letterBox(at, frame.theme.textScale)),
    ...gripPlaces(section, frame.state.viewport, null).map(({ at }) => boxAbout(at, grip))
  ];
}

/** Heads along a closed line, in its direction. */
function headsOf(points: readonly Point[], colour: string): Drawing[] {
  const heads: Drawing[] = [];
  const whole = points.slice(1).reduce((sum, point, k) => sum + distance(points[k]!, point), 0);
  if (whole < SHORT) return [];
  let next = Math.min(whole, PER_HEAD) / 2;
  let gone = 0;
  for (let k = 1; k < points.length; k++) {
    const [from, to] = [points[k - 1]!, points[k]!];
    const step = distance(from, to);
    if (step > SAME && next <= gone + step) {
      const [ux, uy] = [(to[0] - from[0]) / step, (to[1] - from[1]) / step];
      const at = (ahead: number, beside: number): Point => [
        from[0] + (next - gone + ahead) * ux - beside * uy,
        from[1] + (next - gone + ahead) * uy + beside * ux
      ];
      heads.push(area([at(HEAD, 0), at(-HEAD, HEAD), at(-HEAD, -HEAD)], colour));
      next += PER_HEAD;
    }
    gone += step;
  }
  return heads;
}

/** Beneath labels. */
export const currentsScene = ({ currents }: FieldOverlay, view: Viewport, theme: Theme): Drawing[] =>
  currents.flatMap((points): Drawing[] => {
    const ring = onScreen(view, points);
    return [
      { kind: 'line', points: ring, closed: true, stroke: { colour: theme.guide, width: CURRENT } },
      ...headsOf(ring, theme.guide)
    ];
  });
