/** The plan at its scale, in its part of the first page, with the line that cuts are set out from. */
import type { CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import type { Point, Site } from '#plan/schema';
import { boxAt, type Drawing } from '#scenes/drawing';
import { planLayers, type PaperLayer, type PaperParts } from '#scenes/paper';
import type { Area } from '../layout/frame';
import { INK, LINE, SOFT, TYPE } from '../layout/look';
import { written } from '../layout/writing';
import { baselineDrawings } from './baseline';
import { covered, freeAmong, isOver } from './covered';

export interface PlanBox {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

/** What is written on the plan itself lies over the baseline, whose own texts give way: half a size is a wrong one. */
function withBaseline(layers: readonly PaperLayer[], baseline: readonly Drawing[]): Drawing[] {
  const isWritten = ({ name }: PaperLayer): boolean => name === 'texts' || name === 'labels';
  const flat = (some: readonly PaperLayer[]): Drawing[] => some.flatMap(({ drawings }) => drawings);
  const texts = flat(layers.filter(isWritten));
  const taken = texts.flatMap(covered);
  const seen = baseline.filter(
    (drawing) => !covered(drawing).some((own) => taken.some((other) => isOver(own, other)))
  );
  return [...flat(layers.filter((layer) => !isWritten(layer))), ...seen, ...texts];
}

/** `box`: null for a site on which nothing is drawn. `cutting`: null where its baseline is not wanted. */
export function planDrawings(
  site: Site,
  box: PlanBox | null,
  area: Area,
  scale: number,
  cutting: CuttingPlan | null
): Drawing[] {
  const [x, y]: Point = [area.left + area.width / 2, area.top + area.height / 2];
  const border: Drawing = {
    kind: 'line',
    points: boxAt([x, y], area.width / 2, area.height / 2),
    closed: true,
    stroke: { colour: INK, width: LINE.normal }
  };
  if (!box)
    return [border, written(t('sheet.nothing'), [x, y], { size: TYPE.title, align: 'center', colour: SOFT })];
  const centre: Point = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const perMetre = 1000 / scale;
  const place = ([px, py]: Point): Point => [
    x + (px - centre[0]) * perMetre,
    y - (py - centre[1]) * perMetre
  ];
  const frame = { ...area, scale, centre };
  const seen = (parts: Partial<PaperParts>): PaperLayer[] =>
    planLayers(site, frame, { labels: true, vehicles: false, ...parts });
  if (!cutting?.baseline) return [...seen({}).flatMap(({ drawings }) => drawings), border];
  // labels of loops have a choice of places, what else is written has none
  const said = seen({ labels: false }).flatMap(({ drawings }) => drawings);
  const isFree = freeAmong(cutting.cuts, said, place);
  const baseline = baselineDrawings(cutting, { area, scale, place, units: site.displayUnits, isFree });
  return [...withBaseline(seen({ keepClear: baseline.flatMap(covered) }), baseline), border];
}
