/** The plan alone as a picture of real size: its heading, the plan at a scale, the bars below. Millimetres. */
import { t } from '#i18n/message';
import { sheetOf } from '#plan/catalogue/sheet';
import type { Point, Site } from '#plan/schema';
import { area, boxAt, type Drawing } from '#scenes/drawing';
import { boxOfPlan, planLayers } from '#scenes/paper';
import { bars, BARS_HEIGHT } from '../sheet/layout/bars';
import { INK, LINE, TYPE, WHITE } from '../sheet/layout/look';
import { written, writtenWithin } from '../sheet/layout/writing';
import { largestScale, needed } from '../sheet/parts/plan-fit';
import { clean } from '../sheet/text/clean';
import type { Layer } from './svg';

export interface PlanPicture {
  readonly width: number;
  readonly height: number;
  /** One to so many. */
  readonly scale: number;
  readonly layers: readonly Layer[];
}

const MARGIN = 5;
const HEADING = 8;
/** The check bar, a scale bar and the north find room beside each other. */
const NARROWEST = 190;
/** Where the plan fits on no sheet at a usual scale, the first of these at which no side is longer than `LONGEST`. */
const SMALL_SCALES = [1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000, 200_000];
const LONGEST = 400;

type Extent = Parameters<typeof needed>[0];

/** The sheet's own scale where it states one; else the largest at which the plan would fit on the sheet. */
function scaleFor(site: Site, extent: Extent): number {
  const stated = sheetOf(site);
  const fits = (scale: number): boolean => {
    const { width, height } = needed(extent, scale);
    return Math.max(width, height) <= LONGEST;
  };
  return stated.scale ?? largestScale(extent, stated) ?? SMALL_SCALES.find(fits) ?? SMALL_SCALES.at(-1)!;
}

/** Null for a site on which nothing is drawn or everything is hidden. */
export function planPicture(site: Site): PlanPicture | null {
  const box = boxOfPlan(site);
  if (!box) return null;
  const extent = { width: box.right - box.left, height: box.top - box.bottom };
  const scale = scaleFor(site, extent);
  const plan = needed(extent, scale);
  const inner = Math.max(NARROWEST, plan.width);
  const [width, height] = [inner + 2 * MARGIN, HEADING + plan.height + BARS_HEIGHT + 2 * MARGIN];
  const top = MARGIN + HEADING;
  const frame = { left: MARGIN, top, width: inner, height: plan.height };
  const centre: Point = [(box.left + box.right) / 2, (box.bottom + box.top) / 2];
  const border: Drawing = {
    kind: 'line',
    points: boxAt([MARGIN + inner / 2, top + plan.height / 2], inner / 2, plan.height / 2),
    closed: true,
    stroke: { colour: INK, width: LINE.normal }
  };
  const named = { size: TYPE.name, bold: true };
  const parts = { labels: true, vehicles: false };
  return {
    width,
    height,
    scale,
    layers: [
      { kind: 'layer', name: 'paper', drawings: [area(boxAt([width / 2, height / 2], width / 2, height / 2), WHITE)] }, // prettier-ignore
      ...planLayers(site, { ...frame, scale, centre }, parts).map(({ name, drawings }): Layer => ({
        kind: 'layer',
        name,
        drawings
      })),
      {
        kind: 'layer',
        name: 'frame',
        drawings: [
          border,
          ...writtenWithin(clean(site.name), [MARGIN, MARGIN + 2.5], inner - 30, named),
          written(`1:${scale}`, [MARGIN + inner, MARGIN + 2.5], { size: TYPE.title, align: 'right' }),
          ...bars({ scale, units: site.displayUnits }, MARGIN, top + plan.height, inner)
        ]
      }
    ]
  };
}

/** What is said where there is no picture. */
export const nothingDrawn = (): string => t('sheet.nothing');
