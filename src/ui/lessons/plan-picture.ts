/** A small plan of a lesson's site, from the scenes of the large one: pixels of a picture that is scaled as a whole. */
import { visibleSite } from '#plan/layers';
import type { Point, Site } from '#plan/schema';
import { outlineOf } from '#plan/shapes/index';
import { boxAround, boxCentre, type Box } from '#editor/geometry/box';
import { bodyOf } from '#editor/things';
import type { Viewport } from '#editor/types';
import type { Drawing } from '#scenes/drawing';
import { onScreen } from '#scenes/frame';
import { laneLinesScene, surfaceScene } from '#scenes/lanes';
import { loopsScene } from '#scenes/loops';
import { paperLabels } from '#scenes/paper-labels';
import { steelScene } from '#scenes/steel';
import { THEMES, type Theme, type ThemeName } from '#scenes/theme';
import { twistedPair } from '#scenes/twist';
import { vehiclesScene } from '#scenes/vehicles';

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

export interface PlanPicture extends PictureSize {
  readonly paper: string;
  readonly drawings: readonly Drawing[];
}

/** Metres round loops and vehicles. */
const MARGIN = 1;
const NO_CALLS = new Map<string, never>();

/** What a picture of all these sites must show: their loops and vehicles. Metres; null for sites without any. */
export const boxOfSites = (sites: readonly Site[]): Box | null =>
  boxAround(
    sites.flatMap((site) => [
      ...site.loops.flatMap(({ shape }) => outlineOf(shape)),
      ...site.probes.flatMap((probe) => bodyOf(site, probe))
    ])
  );

/** Names alone, each in the middle of its loop. */
const namesWithin = (site: Site, view: Viewport, theme: Theme): readonly Drawing[] =>
  site.loops.flatMap((loop): Drawing[] => {
    const thing = boxAround(onScreen(view, outlineOf(loop.shape)));
    const text = loop.name.trim() || loop.id;
    return thing
      ? [
          {
            kind: 'text',
            at: boxCentre(thing),
            text,
            colour: theme.ink,
            size: 11,
            align: 'center',
            bold: true
          }
        ]
      : [];
  });

/** Lines from labels to several loops would cross: where labels find no place within, the names must do. */
function labelsOf(site: Site, view: Viewport, theme: Theme): readonly Drawing[] {
  const vehicles = site.probes.flatMap((probe) => boxAround(onScreen(view, bodyOf(site, probe))) ?? []);
  const labels = paperLabels(site, view, theme, vehicles);
  const leaders = labels.filter(({ kind }) => kind === 'line');
  if (site.loops.length > 1 && leaders.length > 0) return namesWithin(site, view, theme);
  return [...leaders, ...labels.filter(({ kind }) => kind !== 'line')];
}

/** Seen well in a low picture; a lorry and a loop one behind the other are not. */
export const isBroad = (box: Box | null): boolean =>
  box === null || box.top - box.bottom < 2 * (box.right - box.left) + 3;

const EMPTY: Box = { left: -3, right: 3, bottom: -3, top: 3 };

export function planPicture(
  site: Site,
  box: Box | null,
  themeName: ThemeName,
  { width, height }: PictureSize
): PlanPicture {
  const theme = THEMES[themeName];
  const seen = box ?? EMPTY;
  const [across, along] = [seen.right - seen.left + 2 * MARGIN, seen.top - seen.bottom + 2 * MARGIN];
  const scale = Math.min(width / across, height / along);
  const view: Viewport = { centre: boxCentre(seen), scale, width, height };
  const shown = visibleSite(site);
  return {
    width,
    height,
    paper: theme.paper,
    drawings: [
      ...surfaceScene(shown.lanes, view, theme),
      ...steelScene(shown.steel, view, shown.displayUnits, theme),
      ...laneLinesScene(shown.lanes, view, theme),
      ...loopsScene(shown, NO_CALLS, view, theme),
      ...vehiclesScene(shown, view, theme),
      ...labelsOf(shown, view, theme)
    ]
  };
}

/** The way of an SVG path. */
const way = (points: readonly Point[], closed: boolean): string =>
  points.length === 0
    ? ''
    : `M${points.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}${closed ? 'Z' : ''}`;

/** Of lines and rings; two wires that are twisted come as two ways. */
export function wayOf(drawing: Extract<Drawing, { kind: 'line' | 'rings' }>): string {
  if (drawing.kind === 'rings') return drawing.rings.map((ring) => way(ring, true)).join('');
  const { points, closed = false, stroke } = drawing;
  return (stroke?.twisted ? twistedPair(points) : [points]).map((each) => way(each, closed)).join('');
}
