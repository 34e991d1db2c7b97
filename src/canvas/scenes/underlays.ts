/** Pictures under the plan: as they are, never inverted; a frame with a name where one is missing. */
import type { Ref } from '#editor/types';
import { planToScreen } from '#editor/viewport';
import { t } from '#i18n/message';
import { isHidden } from '#plan/layers';
import type { Point, Site, Underlay } from '#plan/schema';
import { isToScale, pixelsOf, underlayOutline } from '#plan/underlays';
import { line, type Drawing, type ImageDrawing } from '../drawing';
import { drawnBox, isInSight, onScreen, type Frame } from '../frame';
import type { PictureState } from '../pictures';

const TEXT = 13;
/** Pixels between a corner of the picture and what is written beside it. */
const INSET = 10;
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
  if (underlay.picture === null) return t('underlay.missing', { name });
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

function labelOf(underlay: Underlay, fault: string, frame: Frame): Drawing[] {
  const { theme } = frame;
  const [lowerLeft] = cornersOf(underlay, frame);
  return [
    {
      kind: 'text',
      at: [lowerLeft[0] + INSET, lowerLeft[1] - INSET - TEXT / 2],
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
    ...imageOf(underlay, state, frame),
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
