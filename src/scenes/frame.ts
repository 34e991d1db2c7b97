/** All that a picture is made from. Scenes are functions of it, layers compare it. */
import type { BeatVerdict, Severity } from '#analysis/results';
import type { CuttingPlan, Place } from '#analysis/takeoff/results';
import type { Point, Probe, Site } from '#plan/schema';
import { boxAround, boxesTouch, type Box } from '#editor/geometry/box';
import type { EditorState, Overlay, Viewport } from '#editor/types';
import { planToScreen, visibleBox } from '#editor/viewport';
import type { GhostPicture } from './designs';
import type { Pictures } from './pictures';
import type { LineTiles } from './underlay-lines';
import type { Theme } from './theme';

/** How a loop's circuit answers to the vehicles on the plan. */
export interface Call {
  /** −ΔL/L over the trip threshold: from 1 on it is a call. */
  readonly ratio: number;
}

/** Two circuits that are shown together, by their ids. */
export interface PointedPair {
  readonly a: string;
  readonly b: string;
  readonly verdict: BeatVerdict;
}

/** Closed outlines on the plan, holes included, of where a map exceeds a level. */
export interface Contour {
  /** In the map's own unit. */
  readonly level: number;
  readonly rings: readonly (readonly Point[])[];
  /** The trip threshold itself, drawn strongly. */
  readonly isThreshold: boolean;
  /** Ready to read, for a label on the line; empty for none. */
  readonly label: string;
}

/** A response map, ready to be laid under the loops; from the weakest contour to the strongest. */
export interface MapPicture {
  readonly contours: readonly Contour[];
  /** Coarse, or of an earlier drawing: a finer one is on its way. */
  readonly isPreliminary: boolean;
}

/** Where a section of a field stands, seen from left to right. */
export interface SectionLine {
  readonly from: Point;
  readonly to: Point;
  /** What it snaps to while a hand moves it. */
  readonly guides?: Overlay['guides'];
}

/** What is looked at of a field. */
export interface FieldOverlay {
  readonly section: SectionLine | null;
  /** Closed lines on the plan, each in the direction of its current. */
  readonly currents: readonly (readonly Point[])[];
}

/** What one circuit's output says at a moment. */
export type OutputState = 'off' | 'detecting' | 'on';

/** A moment of simulated traffic. */
export interface Moment {
  readonly vehicles: readonly Probe[];
  /** By circuit. */
  readonly outputs: ReadonlyMap<string, OutputState>;
  /** Signals shown at stop lines: across the lane from one edge to the other. */
  readonly signals: readonly { readonly from: Point; readonly to: Point; readonly isGreen: boolean }[];
}

/** Order of cuts and baseline. */
export interface CuttingPicture {
  readonly plan: CuttingPlan;
  /** Number of the cut that somebody looks at: it is shown however small it is. */
  readonly looked: number | null;
}

export interface Frame {
  readonly state: EditorState;
  /** The plan as the gesture in hand would leave it, without what is hidden. */
  readonly site: Site;
  readonly theme: Theme;
  /** Live figure of each loop, ready to read. */
  readonly figures: ReadonlyMap<string, string>;
  /** The worst finding about each loop. */
  readonly severities: ReadonlyMap<string, Severity>;
  readonly calls: ReadonlyMap<string, Call>;
  readonly pointed: PointedPair | null;
  readonly map: MapPicture | null;
  /** Left out, or null, for none. */
  readonly field?: FieldOverlay | null;
  /** While traffic is shown, in place of the vehicles that stand on the plan. */
  readonly moment: Moment | null;
  /** Places of a quantity or a cut that somebody looks at. */
  readonly marked: readonly Place[];
  readonly cutting: CuttingPicture | null;
  /** Another design that is laid over the plan. */
  readonly ghost?: GhostPicture | null;
  readonly showsLabels: boolean;
  readonly pictures: Pictures;
  /** Of lines that are too many for a frame; left out where every line is wanted. */
  readonly lineTiles?: LineTiles;
}

export const onScreen = (view: Viewport, points: readonly Point[]): Point[] =>
  points.map((point) => planToScreen(view, point));

/** The part of the plan that is worth drawing: what is in sight and a little around it. */
export function drawnBox(view: Viewport): Box {
  const { left, right, bottom, top } = visibleBox(view);
  const margin = 80 / view.scale;
  return { left: left - margin, right: right + margin, bottom: bottom - margin, top: top + margin };
}

export function isInSight(points: readonly Point[], sight: Box): boolean {
  const box = boxAround(points);
  return box !== null && boxesTouch(box, sight);
}
