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

function frameAround(underlay: Underlay, fault: string, { state, theme }: Frame): Drawing[] {
  const corners = onScreen(state.viewport, underlayOutline(underlay)) as [Point, Point, Point, Point];
  const [lowerLeft, lowerRight, upperRight, upperLeft] = corners;
  const stroke = { colour: theme.guide, width: 1.5, dash: [8, 6] };
  const text = fault === '' ? t('underlay.notToScale') : fault;
  return [
    { kind: 'line', points: corners, closed: true, stroke },
    ...(fault === '' ? [] : [line([lowerLeft, upperRight], stroke), line([lowerRight, upperLeft], stroke)]),
    {
      kind: 'text',
      at: [lowerLeft[0] + INSET, lowerLeft[1] - INSET - TEXT / 2],
      text,
      colour: theme.guide,
      size: TEXT,
      bold: true,
      align: 'left',
      plate: theme.plate
    }
  ];
}

export function underlaysScene(frame: Frame): Drawing[] {
  const sight = drawnBox(frame.state.viewport);
  return visibleUnderlays(frame.site)
    .filter((underlay) => isInSight(underlayOutline(underlay), sight))
    .flatMap((underlay) => {
      const state = underlay.picture ? frame.pictures.get(underlay.picture) : undefined;
      const fault = faultOf(underlay, state);
      const isFramed = fault !== '' || !isToScale(underlay);
      return [...imageOf(underlay, state, frame), ...(isFramed ? frameAround(underlay, fault, frame) : [])];
    });
}
