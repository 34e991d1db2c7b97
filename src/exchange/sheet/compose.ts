/** The pages of a sheet. */
import type { DesignResults } from '#analysis/designs/results';
import type { CuttingPlan } from '#analysis/takeoff/results';
import { t } from '#i18n/message';
import { paperSize, sheetOf, type SheetScale, type StatedSheet } from '#plan/catalogue/sheet';
import { SCALES } from '#plan/schema/sheet';
import type { Site } from '#plan/schema';
import type { Drawing } from '#scenes/drawing';
import { boxOfPlan } from '#scenes/paper';
import type { ExportSource } from '../files/exported';
import { columnsOf, divide, tallest, type Division } from './layout/columns';
import { flow, type Placed } from './layout/flow';
import { contentArea, frame, type Area } from './layout/frame';
import { namedCuttingPlan } from './parts/cutting-plan';
import { designBlocks } from './parts/designs';
import { blocksOf } from './parts/index';
import { planDrawings, type PlanBox } from './parts/plan';
import { fitsOn, largestScale, needed, type Extent } from './parts/plan-fit';
import { refusal } from './parts/refusal';
import type { Page, Sheet } from './page';

const extentOf = (box: PlanBox | null): Extent =>
  box ? { width: box.right - box.left, height: box.top - box.bottom } : { width: 0, height: 0 };

function scaleFor(extent: Extent, stated: StatedSheet): SheetScale | undefined {
  if (stated.scale === null) return largestScale(extent, stated);
  return fitsOn(extent, stated.scale, stated) ? stated.scale : undefined;
}

/** As the site states it; where it says nothing of how the paper lies, it is turned if only so the plan fits. */
function laidFor(extent: Extent, site: Site): StatedSheet {
  const stated = sheetOf(site);
  if (site.sheet?.orientation !== undefined || scaleFor(extent, stated) !== undefined) return stated;
  const turned: StatedSheet = { ...stated, orientation: 'portrait' };
  return scaleFor(extent, turned) === undefined ? stated : turned;
}

interface Plan extends Division {
  readonly drawings: readonly Drawing[];
}

function planOf(
  site: Site,
  box: PlanBox | null,
  area: Area,
  scale: SheetScale,
  cutting: CuttingPlan | null
): Plan {
  const division = divide(area, needed(extentOf(box), scale));
  return { ...division, drawings: planDrawings(site, box, division.plan, scale, cutting) };
}

/** What is on the page, from its headings. */
const contentOf = (hasPlan: boolean, placed: readonly Placed[]): string =>
  [...new Set([...(hasPlan ? [t('sheet.plan')] : []), ...placed.flatMap(({ title }) => title ?? [])])].join(
    ', '
  );

interface SheetSource extends ExportSource {
  /** As `designsOnSheet` asks for them; null or absent while they are not known. */
  readonly designs?: readonly DesignResults[] | null;
}

const pagesIn = (placed: readonly Placed[], least: number): number =>
  Math.max(least, ...placed.map(({ page }) => page + 1));

/** Quick enough for a preview that follows an edit. */
export function composeSheet(source: SheetSource): Sheet {
  const { site } = source;
  const box = boxOfPlan(site);
  const stated = laidFor(extentOf(box), site);
  const paper = paperSize(stated);
  const area = contentArea(paper);
  const isPlanned = stated.parts.includes('plan');
  const scale = scaleFor(extentOf(box), stated);
  if (isPlanned && scale === undefined) return refusal(extentOf(box), stated, site.displayUnits);
  const cutting = stated.parts.includes('cutting') ? namedCuttingPlan(site) : null;
  const plan = isPlanned ? planOf(site, box, area, scale!, cutting) : null;
  const drawn = flow(blocksOf({ ...source, cutting }, stated.parts), columnsOf(area, plan), tallest(area));
  const before = pagesIn(drawn, plan ? 1 : 0);
  const compared = flow(designBlocks(site, source.designs ?? null), columnsOf(area, null), tallest(area)).map(
    (each) => ({ ...each, page: each.page + before })
  );
  const placed: readonly Placed[] = [...drawn, ...compared];
  const count = pagesIn(placed, 1);
  const pages = Array.from({ length: count }, (_, at): Page => {
    const own = placed.filter(({ page }) => page === at);
    const hasPlan = plan !== null && at === 0;
    const title = contentOf(hasPlan, own);
    const about = {
      site,
      title,
      number: at + 1,
      count,
      scale: hasPlan ? t('sheet.scaleOn', { scale: scale!, paper: t(`sheet.paper.${stated.paper}`) }) : ''
    };
    return {
      ...paper,
      title,
      drawings: [
        ...frame(paper, about, hasPlan ? scale! : null),
        ...(hasPlan ? plan.drawings : []),
        ...own.flatMap(({ drawings }) => drawings)
      ]
    };
  });
  return { kind: 'pages', pages, scale: scale ?? SCALES.at(-1)!, site };
}
