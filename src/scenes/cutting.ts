/** The order in which slots are sawn, which way, and the line that they are set out from. */
import type { Cut } from '#analysis/takeoff/results';
import { between, distance } from '#plan/geometry/points';
import type { Point } from '#plan/schema';
import { boxesTouch, type Box } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { area, line, type Drawing } from './drawing';
import { drawnBox, isInSight, onScreen, type CuttingPicture } from './frame';
import type { Theme } from './theme';

const TEXT_SIZE = 11;
/** Pixels: a number stands so far off its cut, on the right of the way of the saw. */
const ASIDE = 15;
/** A cut that is shorter on the screen would lie under its own number. */
const SHORTEST = 18;
/** Of the disc that a number of one or two figures stands on. */
const DISC = 9;
/** Along the cut, clear of the handles that a selected loop has at its corners and in the middle of its sides. */
const NUMBER_AT: readonly number[] = [0.36, 0.24, 0.78];
const ARROW_AT = 0.66;
const ARROW = { length: 8, half: 4 } as const;
const BASELINE = { width: 2, dash: [16, 4, 3, 4], start: 4.5 } as const;

/** Unit vector from one place on the screen to another; null where they are one. */
function ahead(from: Point, to: Point): Point | null {
  const length = distance(from, to);
  return length < 1e-6 ? null : [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

function arrow([x, y]: Point, [dx, dy]: Point, colour: string): Drawing {
  const wing = (side: number): Point => [
    x - dx * ARROW.length - dy * side,
    y - dy * ARROW.length + dx * side
  ];
  return area([[x, y], wing(ARROW.half), wing(-ARROW.half)], colour);
}

function baselineDrawings(points: readonly Point[], view: Viewport, theme: Theme): Drawing[] {
  const { width, dash, start } = BASELINE;
  const colour = theme.accent;
  const way = onScreen(view, points);
  const first = way[0]!;
  const direction = ahead(way.at(-2) ?? first, way.at(-1)!);
  return [
    line(way, { colour: theme.plate, width: width + 4 }),
    line(way, { colour, width, dash }),
    ...(direction ? [arrow(way.at(-1)!, direction, colour)] : []),
    { kind: 'circle', at: first, radius: start, fill: theme.paper, stroke: { colour, width } },
    {
      kind: 'text',
      at: [first[0] + 2 * start, first[1] + 2 * start + TEXT_SIZE / 2],
      text: '0',
      colour,
      size: TEXT_SIZE,
      bold: true,
      align: 'left',
      plate: theme.plate
    }
  ];
}

interface Numbered {
  readonly order: number;
  /** Where its number may stand, pixels; the best place first. */
  readonly places: readonly Point[];
  readonly radius: number;
}

/** Null for a cut that is too short for a number. */
function numbered(
  { order, from, to, circle }: Cut,
  isLooked: boolean,
  view: Viewport,
  theme: Theme
): Numbered | null {
  const least = isLooked ? 0 : SHORTEST;
  const radius = (DISC + (order > 99 ? 3 : 0)) * theme.textScale;
  if (circle) {
    const [x, y] = planToScreen(view, circle.centre);
    const reach = circle.radius * view.scale;
    const places: Point[] = [[x, y - reach - ASIDE], [x, y + reach + ASIDE], [x - reach - ASIDE, y], [x + reach + ASIDE, y]]; // prettier-ignore
    return reach * 2 < least ? null : { order, places, radius };
  }
  const [start, end] = [planToScreen(view, from), planToScreen(view, to)];
  const direction = ahead(start, end);
  if (!direction || distance(start, end) < least) return null;
  const places = NUMBER_AT.flatMap((share) => {
    const [x, y] = between(start, end, share);
    // y downwards: the right of a way to the right is below it
    return [1, -1].map((side): Point => [x - direction[1] * ASIDE * side, y + direction[0] * ASIDE * side]);
  });
  return { order, places, radius };
}

/** Which way the saw goes. */
function wayOfSaw({ from, to, circle }: Cut, view: Viewport, theme: Theme): Drawing[] {
  const [start, end] = [planToScreen(view, from), planToScreen(view, to)];
  const direction = circle ? null : ahead(start, end);
  if (!direction || distance(start, end) < 2 * SHORTEST) return [];
  const [x, y] = between(start, end, ARROW_AT);
  const reach = ARROW.length / 2;
  return [arrow([x + direction[0] * reach, y + direction[1] * reach], direction, theme.accent)];
}

interface Disc extends Omit<Numbered, 'places'> {
  readonly at: Point;
}

/**
 * Where the discs stand: clear of one another and of what else is written. Where there is no room the first keep their
 * numbers, and nearer by the others show theirs too; the cut that is looked at shows its own wherever it is.
 */
function apart(numbers: readonly Numbered[], taken: readonly Box[], looked: number | null): readonly Disc[] {
  const kept: Disc[] = [];
  for (const { order, places, radius } of numbers) {
    const free = places.filter((at) =>
      kept.every((other) => distance(other.at, at) >= other.radius + radius)
    );
    const at = free.find(([x, y]) => !taken.some((box) => boxesTouch(box, { left: x - radius, right: x + radius, bottom: y - radius, top: y + radius }))) ?? (order === looked ? places[0] : undefined); // prettier-ignore
    if (at) kept.push({ order, at, radius });
  }
  return kept;
}

const reachOf = ({ from, to, circle }: Cut): readonly Point[] =>
  circle
    ? [
        [circle.centre[0] - circle.radius, circle.centre[1] - circle.radius],
        [circle.centre[0] + circle.radius, circle.centre[1] + circle.radius]
      ]
    : [from, to];

/** What lies on the road: the baseline, and which way each cut goes. */
export function setOutScene(
  { plan: { baseline, cuts } }: CuttingPicture,
  view: Viewport,
  theme: Theme
): Drawing[] {
  const sight = drawnBox(view);
  const seen = cuts.filter((cut) => isInSight(reachOf(cut), sight));
  return [
    ...(baseline ? baselineDrawings(baseline.points, view, theme) : []),
    ...seen.flatMap((cut) => wayOfSaw(cut, view, theme))
  ];
}

/** The numbers of the cuts in sight. `taken`: what is written there already, pixels. */
export function orderScene(
  { plan: { cuts }, looked }: CuttingPicture,
  view: Viewport,
  theme: Theme,
  taken: readonly Box[]
): Drawing[] {
  const sight = drawnBox(view);
  const seen = cuts.filter((cut) => isInSight(reachOf(cut), sight));
  const first = seen.toSorted((a, b) => Number(b.order === looked) - Number(a.order === looked));
  const numbers = first.flatMap((cut) => numbered(cut, cut.order === looked, view, theme) ?? []);
  return apart(numbers, taken, looked).flatMap(({ order, at, radius }): Drawing[] => {
    const isLooked = order === looked;
    const colour = isLooked ? theme.guide : theme.accent;
    return [
      {
        kind: 'circle',
        at,
        radius,
        fill: isLooked ? theme.guide : theme.paper,
        stroke: { colour, width: 1.5 }
      },
      {
        kind: 'text',
        at,
        text: String(order),
        colour: isLooked ? theme.paper : theme.ink,
        size: TEXT_SIZE,
        bold: true,
        align: 'center'
      }
    ];
  });
}
