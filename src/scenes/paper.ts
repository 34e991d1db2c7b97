/**
 * A plan on paper at a true scale: the scenes of the screen, drawn for a sheet in millimetres. Lines and texts are as large
 * as on a screen at its usual size (96 to the inch); lengths on the road are exact.
 */
import { visibleSite } from '#plan/layers';
import { outlineOf } from '#plan/shapes/index';
import type { Mark, Point, Site } from '#plan/schema';
import { boxAround, type Box } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { onScreen } from './frame';
import { type Drawing, type Stroke, type TextDrawing } from './drawing';
import { laneLinesScene, surfaceScene } from './lanes';
import { loopsScene } from './loops';
import { marksScene } from './marks';
import { clipped, type ClipBox } from './paper-clip';
import { boxOfText, boxOfTexts, paperLabels } from './paper-labels';
import { notesAside, type Note } from './paper-notes';
import { steelScene } from './steel';
import { PAPER } from './theme';
import { linesDrawings } from './underlay-lines';
import { visibleUnderlays } from './underlays';
import { vehiclesScene } from './vehicles';

export { boxOfPlan } from './plan-extent';

export interface PaperFrame {
  /** Millimetres from the sheet's upper left corner. */
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** One to so many. */
  readonly scale: number;
  /** Point of the plan in the middle of the frame. */
  readonly centre: readonly [number, number];
}

export interface PaperParts {
  /** Names of loops with turns and size beside them. */
  readonly labels: boolean;
  readonly vehicles: boolean;
  /** Of the sheet: what else will be written there, so that labels go elsewhere where they have a choice. */
  readonly keepClear?: readonly ClipBox[];
}

/** Millimetres of a pixel. */
const PIXEL = 25.4 / 96;
/** Millimetres: no text is smaller. */
const SMALLEST_TEXT = 2.2;
/** Marks that turn, join or part what stands beside them, and what is no character at all. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}]/gu;
const isText = (drawing: Drawing): drawing is TextDrawing => drawing.kind === 'text';
/** Of lines that were traced: paler than whatever has to be cut, and seen on paper all the same. */
const TRACED = { ...PAPER, inkSoft: '#727d7a' };
const NO_CALLS = new Map<string, never>();

/** From millimetres of the sheet to pixels of the frame. */
const toPixels = (box: ClipBox, { left, top }: PaperFrame): Box => ({
  left: (box.left - left) / PIXEL,
  right: (box.right - left) / PIXEL,
  bottom: (box.top - top) / PIXEL,
  top: (box.bottom - top) / PIXEL
});

/** Drawings of one kind of thing. */
export interface PaperLayer {
  readonly name: string;
  readonly drawings: readonly Drawing[];
}

/** Pixels of the frame. */
function scenes(site: Site, view: Viewport, frame: PaperFrame, parts: PaperParts): PaperLayer[] {
  const { labels, vehicles, keepClear = [] } = parts;
  const sheet = { left: 0, top: 0, right: view.width, bottom: view.height };
  const units = site.displayUnits;
  const isNote = ({ kind }: Mark): boolean => kind === 'note';
  const marks = marksScene(
    site.marks.filter((mark) => !isNote(mark)),
    view,
    units,
    PAPER
  );
  const notes = site.marks.filter(isNote).flatMap((mark): Note[] => {
    const lines = clipped(marksScene([mark], view, units, PAPER), sheet).filter(isText);
    return lines.length === 0 ? [] : [{ lines, box: boxOfTexts(lines) }];
  });
  const loops = site.loops.map(({ shape }) => boxAround(onScreen(view, outlineOf(shape)))!);
  const written = [
    ...clipped(marks.filter(isText), sheet),
    ...notesAside(notes, loops, { ...sheet, bottom: sheet.top, top: sheet.bottom }, PAPER)
  ];
  const taken = [...written.filter(isText).map(boxOfText), ...keepClear.map((box) => toPixels(box, frame))];
  // pictures are left out: ink for what is only traced
  const traced = visibleUnderlays(site).filter(({ lines }) => lines !== undefined);
  const road = traced.length > 0 ? { ...PAPER, asphalt: PAPER.asphaltOnPicture } : PAPER;
  const layers: readonly PaperLayer[] = [
    {
      name: 'underlay',
      drawings: traced.flatMap((underlay) => linesDrawings(underlay, view, TRACED, undefined))
    },
    { name: 'road', drawings: surfaceScene(site.lanes, view, road) },
    { name: 'steel', drawings: steelScene(site.steel, view, units, PAPER) },
    { name: 'lanes', drawings: laneLinesScene(site.lanes, view, PAPER) },
    { name: 'marks', drawings: marks.filter((drawing) => !isText(drawing)) },
    { name: 'loops', drawings: loopsScene(site, NO_CALLS, view, PAPER) },
    { name: 'vehicles', drawings: vehicles ? vehiclesScene(site, view, PAPER) : [] },
    // under a tail nobody could read it
    { name: 'texts', drawings: written },
    { name: 'labels', drawings: labels ? paperLabels(site, view, PAPER, taken) : [] }
  ];
  return layers.map(({ name, drawings }) => ({ name, drawings: clipped(drawings, sheet) }));
}

const onPaper = (stroke: Stroke): Stroke => ({
  ...stroke,
  width: stroke.width * PIXEL,
  ...(stroke.dash ? { dash: stroke.dash.map((length) => length * PIXEL) } : {})
});

/** From pixels of the frame to millimetres of the sheet. */
function placed(drawing: Drawing, { left, top }: PaperFrame): Drawing {
  const place = ([x, y]: Point): Point => [left + x * PIXEL, top + y * PIXEL];
  switch (drawing.kind) {
    case 'line':
      return {
        ...drawing,
        points: drawing.points.map(place),
        ...(drawing.stroke ? { stroke: onPaper(drawing.stroke) } : {})
      };
    case 'rings':
      return {
        ...drawing,
        rings: drawing.rings.map((ring) => ring.map(place)),
        ...(drawing.stroke ? { stroke: onPaper(drawing.stroke) } : {})
      };
    case 'circle':
      return {
        ...drawing,
        at: place(drawing.at),
        radius: drawing.radius * PIXEL,
        ...(drawing.stroke ? { stroke: onPaper(drawing.stroke) } : {})
      };
    case 'text':
      return {
        ...drawing,
        at: place(drawing.at),
        text: drawing.text.replace(UNSEEN, ''),
        size: Math.max(SMALLEST_TEXT, drawing.size * PIXEL)
      };
    case 'image':
      return {
        ...drawing,
        at: place(drawing.at),
        width: drawing.width * PIXEL,
        height: drawing.height * PIXEL
      };
  }
}

/** From the bottom to the top; drawings as those of `planOnPaper`. */
export function planLayers(site: Site, frame: PaperFrame, parts: PaperParts): PaperLayer[] {
  const view: Viewport = {
    centre: frame.centre,
    scale: 1000 / frame.scale / PIXEL,
    width: frame.width / PIXEL,
    height: frame.height / PIXEL
  };
  return scenes(visibleSite(site), view, frame, parts).map(({ name, drawings }) => ({
    name,
    drawings: drawings.map((drawing) => placed(drawing, frame))
  }));
}

/** Drawings in millimetres, cut off at the frame; two wires that are twisted come as two lines. */
export const planOnPaper = (site: Site, frame: PaperFrame, parts: PaperParts): Drawing[] =>
  planLayers(site, frame, parts).flatMap(({ drawings }) => drawings);
