/** Places of a quantity or a cut that somebody looks at: dashed over a pale ribbon, so that they stand off any line. */
import type { Place } from '#analysis/takeoff/results';
import type { Point } from '#plan/schema';
import type { Viewport } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import type { Drawing } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import type { Theme } from './theme';

/** Pixels. */
const RIBBON = 9;
const LINE = 3;
const DASH: readonly number[] = [9, 4];
/** Round a single point; a hole smaller than it could not be told from the lines that meet there. */
const RING = 8;

const around = ([x, y]: Point, radius: number): readonly Point[] => [
  [x - radius, y - radius],
  [x + radius, y + radius]
];

const reach = (place: Place): readonly Point[] =>
  place.kind === 'line'
    ? place.points
    : place.kind === 'circle'
      ? around(place.centre, place.radius)
      : [place.at];

/** Of all of them, for whoever moves the view there. */
export const reachOf = (places: readonly Place[]): readonly Point[] => places.flatMap(reach);

function drawn(
  place: Place,
  view: Viewport,
  colour: string,
  width: number,
  dash?: readonly number[]
): Drawing[] {
  const stroke = { colour, width, ...(dash ? { dash } : {}) };
  if (place.kind === 'line') return [{ kind: 'line', points: onScreen(view, place.points), stroke }];
  const at = planToScreen(view, place.kind === 'circle' ? place.centre : place.at);
  const radius = place.kind === 'circle' ? Math.max(RING, place.radius * view.scale) : RING;
  return [{ kind: 'circle', at, radius, stroke }];
}

export function placesScene(places: readonly Place[], view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  const seen = places.filter((place) => isInSight(reach(place), sight));
  return [
    ...seen.flatMap((place) => drawn(place, view, theme.plate, RIBBON)),
    ...seen.flatMap((place) =>
      drawn(place, view, theme.guide, LINE, place.kind === 'line' ? DASH : undefined)
    )
  ];
}
