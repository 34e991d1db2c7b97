/** Pictures and lines under the plan: pictures as they are, never inverted; a frame with a name where one is missing. */
import type { Ref } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { t } from '#i18n/message';
import { isHidden } from '#plan/layers';
import type { Point, Site, Underlay } from '#plan/schema';
import { isMissing, isToScale, pixelsOf, underlayOutline } from '#plan/underlays';
import { line, type Drawing, type ImageDrawing } from './drawing';
import { drawnBox, isInSight, onScreen, type Frame } from './frame';
import type { PictureState } from './pictures';
import { linesDrawings } from './underlay-lines';

const TEXT = 13;
/** Pixels between a corner of the picture and what is written beside it. */
const INSET = 10;
/** Pixels at the top of the plan under which the options of a tool may lie. */
const OPTIONS = 48;
/** Radius of the ends of a span, pixels. */
const END = 5;

const refOf = ({ id }: Underlay): Ref => ({ kind: 'underlay', id });

export const visibleUnderlays = (site: Site): readonly Underlay[] =>
  site.underlays.filter((underlay) => !isHidden(site, refOf(underlay)));

/** The coarsest version that still has a pixel for each one of the screen. */
export function versionFor<Image extends { readonly width: number }>(
  versions: readonly Image[],
  pixels: number
): Image | undefined {
  return versions.findLast(({ width }) => width >= pixels) ?? versions[0];
}

function imageOf(underlay: Underlay, state: PictureState | undefined, frame: Frame): ImageDrawing[] {
  if (state?.kind !== 'ready') return [];
  const { viewport } = frame.state;
  const { width, height } = pixelsOf(underlay);
  const scale = underlay.metresPerPixel * viewport.scale;
  const image = versionFor(state.versions, width * scale);
  return image
    ? [
        {
          kind: 'image',
          image,
          at: planToScreen(viewport, underlay.at),
          width: width * scale,
          height: height * scale,
          rotation: underlay.rotation,
          opacity: underlay.opacity
        }
      ]
    : [];
}

/** Where a picture is missing or is none; empty while it is only on its way. */
function faultOf(underlay: Underlay, state: PictureState | undefined): string {
  const name = underlay.name || underlay.id;
  if (isMissing(underlay)) return t('underlay.missing', { name });
  return state?.kind === 'broken' ? t('underlay.broken', { name }) : '';
}

const cornersOf = (underlay: Underlay, { state }: Frame) =>
  onScreen(state.viewport, underlayOutline(underlay)) as [Point, Point, Point, Point];

function frameAround(underlay: Underlay, fault: string, frame: Frame): Drawing[] {
  const corners = cornersOf(underlay, frame);
  const [lowerLeft, lowerRight, upperRight, upperLeft] = corners;
  const stroke = { colour: frame.theme.guide, width: 1.5, dash: [8, 6] };
  return [
    { kind: 'line', points: corners, closed: true, stroke },
    ...(fault === '' ? [] : [line([lowerLeft, upperRight], stroke), line([lowerRight, upperLeft], stroke)])
  ];
}

/** At the upper left corner, or where the picture comes into sight: below lie the scale bar and the hint. */
function labelOf(underlay: Underlay, fault: string, frame: Frame): Drawing[] {
  const { theme } = frame;
  const corners = cornersOf(underlay, frame);
  const left = Math.max(0, Math.min(...corners.map(([x]) => x)));
  const upper = Math.max(OPTIONS, Math.min(...corners.map(([, y]) => y)));
  return [
    {
      kind: 'text',
      at: [left + INSET, upper + INSET + TEXT / 2],
      text: fault === '' ? t('underlay.notToScale') : fault,
      colour: theme.guide,
      size: TEXT,
      bold: true,
      align: 'left',
      plate: theme.plate
    }
  ];
}

interface Seen {
  readonly underlay: Underlay;
  readonly state: PictureState | undefined;
  readonly fault: string;
  /** Something is to be said about it. */
  readonly isFramed: boolean;
}

function seen({ site, state: { viewport }, pictures }: Frame): Seen[] {
  const sight = drawnBox(viewport);
  return visibleUnderlays(site)
    .filter((underlay) => isInSight(underlayOutline(underlay), sight))
    .map((underlay) => {
      const state = underlay.picture ? pictures.get(underlay.picture) : undefined;
      const fault = faultOf(underlay, state);
      return { underlay, state, fault, isFramed: fault !== '' || !isToScale(underlay) };
    });
}

export const underlaysScene = (frame: Frame): Drawing[] =>
  seen(frame).flatMap(({ underlay, state, fault, isFramed }) => [
    ...(underlay.lines
      ? linesDrawings(underlay, frame.state.viewport, frame.theme, frame.lineTiles)
      : imageOf(underlay, state, frame)),
    ...(isFramed ? frameAround(underlay, fault, frame) : [])
  ]);

/** What is said about pictures, to be read over everything that is drawn on them. */
export const underlayLabelsScene = (frame: Frame): Drawing[] =>
  seen(frame).flatMap(({ underlay, fault, isFramed }) => (isFramed ? labelOf(underlay, fault, frame) : []));

/** The two points by which a picture is scaled, strong enough for any photograph. */
export function spanScene({ state, theme }: Frame): Drawing[] {
  if (state.tool !== 'calibrate') return [];
  return state.overlay.guides.flatMap(({ from, to }): Drawing[] => {
    const ends = onScreen(state.viewport, [from, to]);
    return [
      line(ends, { colour: theme.plate, width: 5 }),
      line(ends, { colour: theme.guide, width: 2 }),
      ...ends.map((at): Drawing => ({
        kind: 'circle',
        at,
        radius: END,
        fill: theme.plate,
        stroke: { colour: theme.guide, width: 2 }
      }))
    ];
  });
}
