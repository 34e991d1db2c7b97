/** Another design laid over the plan: what it has otherwise, in a line style of its own, with its name. */
import type { Place } from '#analysis/takeoff/results';
import { leadInPath, tailPath } from '#plan/lead-out';
import type { Point, Site } from '#plan/schema';
import { outlineOf, pathOf } from '#plan/shapes/index';
import type { Viewport } from '#editor/types';
import { boxAround } from '#editor/geometry/box';
import { planToScreen } from '#editor/viewport';
import { shortened, type Drawing, type Stroke } from './drawing';
import { drawnBox, isInSight, onScreen } from './frame';
import { reachOf } from './places';
import type { Theme } from './theme';

export interface GhostPicture {
  readonly name: string;
  readonly places: readonly Place[];
}

const WIDTH = 2;
/** Unlike any other line of the plan: dots between dashes. */
const DASH: readonly number[] = [8, 3, 2, 3];
/** Pixels: what it is laid on, so that it is told from the line under it. */
const RIBBON = 5;
const TEXT_SIZE = 11;
/** Letters of its name. */
const LONGEST = 32;
/** A vehicle, a pull box, a note: a ring. */
const RING = 9;

const line = (points: readonly Point[]): Place => ({ kind: 'line', points });
const closed = (points: readonly Point[]): Place =>
  line(points.length > 0 ? [...points, points[0]!] : points);
const wayOf = (points: readonly Point[]): Place =>
  points.length === 1 ? { kind: 'point', at: points[0]! } : line(points);

/** Where the thing of this id lies in a drawing: a circuit by its lead-in and its loops. Nothing for what is not there. */
export function placesOfThing(site: Site, id: string): readonly Place[] {
  const loop = site.loops.find((each) => each.id === id);
  if (loop) {
    const tail = tailPath(site, loop);
    const { cells } = pathOf(loop.shape);
    const slots = cells.map((cell): Place =>
      cell.kind === 'circle'
        ? { kind: 'circle', centre: cell.centre, radius: cell.radius }
        : closed(cell.edges.map(({ from }) => from))
    );
    return tail ? [...slots, line(tail)] : slots;
  }
  const circuit = site.circuits.find((each) => each.id === id);
  if (circuit) {
    const lead = leadInPath(site, circuit);
    const members = new Set(circuit.strings.flat().map((member) => member.loop));
    const loops = site.loops
      .filter((each) => members.has(each.id))
      .map(({ shape }) => closed(outlineOf(shape)));
    return lead ? [...loops, line(lead)] : loops;
  }
  const lane = site.lanes.find((each) => each.id === id);
  if (lane) return [line(lane.centreline)];
  const steel = site.steel.find((each) => each.id === id);
  if (steel) return [closed(steel.outline)];
  const drawn = [...site.marks, ...site.paths].find((each) => each.id === id);
  return drawn ? [wayOf(drawn.points)] : [];
}

function drawn(place: Place, view: Viewport, stroke: Stroke): Drawing {
  if (place.kind === 'line') return { kind: 'line', points: onScreen(view, place.points), stroke };
  const at = planToScreen(view, place.kind === 'circle' ? place.centre : place.at);
  return { kind: 'circle', at, radius: place.kind === 'circle' ? place.radius * view.scale : RING, stroke };
}

/** Its name stands at the upper right corner of what is in sight. */
export function ghostScene({ name, places }: GhostPicture, view: Viewport, theme: Theme): Drawing[] {
  const sight = drawnBox(view);
  const seen = places.filter((place) => isInSight(reachOf([place]), sight));
  const box = boxAround(reachOf(seen));
  if (!box) return [];
  const [x, y] = planToScreen(view, [box.right, box.top]);
  return [
    ...seen.map((place) => drawn(place, view, { colour: theme.plate, width: RIBBON })),
    ...seen.map((place) => drawn(place, view, { colour: theme.mapLine, width: WIDTH, dash: DASH })),
    {
      kind: 'text',
      at: [x + 6, y - TEXT_SIZE],
      text: shortened(name, LONGEST),
      colour: theme.mapLine,
      size: TEXT_SIZE,
      bold: true,
      align: 'left',
      plate: theme.plate
    }
  ];
}
