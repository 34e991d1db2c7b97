/** What somebody chose to look at of a field: kept while other views are open, stored nowhere. */
import type { Point } from '#plan/schema';
import type { Overlay } from '#editor/types';
import type { Ends } from './ends';

export const PICTURES = ['section', 'plan', 'currents'] as const;
export type PictureKind = (typeof PICTURES)[number];
export const LINES = ['across', 'along', 'angle', 'ends', 'tape'] as const;
export type LineKind = (typeof LINES)[number];

/** Metres over the road that a view from above begins at. */
const USUAL_HEIGHT = 0.3;

class FieldChoices {
  picture = $state<PictureKind>('section');
  /** "loop L1" or "circuit C1"; null: what is selected. */
  source = $state<string | null>(null);
  /** The loop that was looked at last: a vehicle that is then selected changes nothing. */
  lastLoop: string | null = null;
  line = $state<LineKind>('across');
  /** Degrees counter-clockwise from +x, of a line with an angle of its own. */
  angle = $state(0);
  /** Metres beside the loop's middle, to the left of the line's direction. */
  offset = $state(0);
  /** Two points that the tape had between them. */
  tape = $state.raw<readonly [Point, Point] | null>(null);
  /** A line that somebody drew by its ends: metres from the loop's middle. */
  ends = $state.raw<Ends | null>(null);
  /** Of the loop that the picture is about; null while none is shown. */
  middle = $state.raw<Point | null>(null);
  /** What the line snaps to while a hand moves it. */
  guides = $state.raw<Overlay['guides']>([]);
  height = $state(USUAL_HEIGHT);
  /** "probe 0" or "over car"; null: the one that is looked at. */
  vehicle = $state<string | null>(null);
  hasVehicle = $state(true);
  /** The strength over the plan, or the currents over the vehicle. */
  isLaid = $state(true);
}

export const choices = new FieldChoices();
