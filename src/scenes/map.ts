/**
 * A response map under the loops: each level adds a little of one tone, thin lines carry their figure, and the trip
 * threshold stands out. What is not final yet has broken lines.
 */
import type { Box } from '#editor/geometry/box';
import type { Viewport } from '#editor/types';
import { textWidth, type Drawing } from './drawing';
import { onScreen, type Contour, type MapPicture } from './frame';
import type { Theme } from './theme';
import { placeContourLabels } from './contour-labels';

const LINE = 1;
const THRESHOLD_LINE = 2.5;
const DASH = [5, 4] as const;
const TEXT_SIZE = 11;

const ringsOf = ({ rings }: Contour, view: Viewport) => rings.map((ring) => onScreen(view, ring));

/** Tones and lines. */
export function mapScene(map: MapPicture | null, view: Viewport, theme: Theme): Drawing[] {
  if (!map) return [];
  const shown = map.contours.map((contour) => ({ contour, rings: ringsOf(contour, view) }));
  const strokeOf = ({ isThreshold }: Contour) => ({
    colour: isThreshold ? theme.call : theme.mapLine,
    width: isThreshold ? THRESHOLD_LINE : LINE,
    ...(map.isPreliminary && !isThreshold ? { dash: DASH } : {})
  });
  return [
    ...shown
      .filter(({ contour }) => !contour.isThreshold)
      .map(({ rings }): Drawing => ({ kind: 'rings', rings, fill: theme.mapFill })),
    ...shown.map(({ contour, rings }): Drawing => ({ kind: 'rings', rings, stroke: strokeOf(contour) }))
  ];
}

/** The figures of the lines, which neither loops nor vehicles may hide. */
export function mapLabelsScene(
  map: MapPicture | null,
  view: Viewport,
  theme: Theme,
  covered: readonly Box[] = []
): Drawing[] {
  // the threshold claims its place first
  const labelled = [...(map?.contours ?? [])]
    .filter(({ label }) => label !== '')
    .sort((a, b) => Number(b.isThreshold) - Number(a.isThreshold));
  const places = placeContourLabels(
    labelled.map((contour) => ({
      rings: ringsOf(contour, view),
      width: textWidth(contour.label, TEXT_SIZE) * theme.textScale + 8
    })),
    view,
    covered
  );
  return labelled.flatMap((contour, n): Drawing[] => {
    const at = places[n];
    if (!at) return [];
    const colour = contour.isThreshold ? theme.call : theme.mapLine;
    const text = { kind: 'text', align: 'center', size: TEXT_SIZE, plate: theme.plate } as const;
    return [{ ...text, at, text: contour.label, colour, bold: contour.isThreshold }];
  });
}
