/** What is said of a plan that does not fit, and what would fit. */
import { t } from '#i18n/message';
import type { SheetScale, StatedSheet } from '#plan/catalogue/sheet';
import type { DisplayUnits } from '#plan/schema';
import { SCALES } from '#plan/schema/sheet';
import { format } from '#units/format';
import type { Sheet } from '../page';
import { largestScale, smallestPaper, type Extent, type LaidPaper } from './plan-fit';

const paperText = ({ paper }: LaidPaper): string => t(`sheet.paper.${paper}`);

/** How it lies is said where that is another way than now. */
const otherPaperText = (paper: LaidPaper, now: LaidPaper): string =>
  paper.orientation === now.orientation
    ? paperText(paper)
    : t(`sheet.${paper.orientation}`, { paper: paperText(paper) });

/** The largest scale below the wanted one at which any paper is large enough. */
function elsewhere(
  extent: Extent,
  wanted: SheetScale,
  stated: LaidPaper
): (LaidPaper & { scale: SheetScale }) | null {
  for (const scale of SCALES.slice(SCALES.indexOf(wanted) + 1)) {
    const paper = smallestPaper(extent, scale, stated);
    if (paper) return { ...paper, scale };
  }
  return null;
}

type Unfit = Extract<Sheet, { kind: 'unfit' }>;

export function refusal(extent: Extent, stated: StatedSheet, units: DisplayUnits): Unfit {
  const smallest = SCALES.at(-1)!;
  const wanted = stated.scale ?? smallest;
  const paper = smallestPaper(extent, wanted, stated) ?? null;
  const scale = largestScale(extent, stated) ?? null;
  const together = paper || scale !== null ? null : elsewhere(extent, wanted, stated);
  const message = sentence(extent, stated, units, { paper, scale, together });
  return { kind: 'unfit', message, paper, scale, together };
}

function sentence(
  extent: Extent,
  stated: StatedSheet,
  units: DisplayUnits,
  { paper, scale, together }: Pick<Unfit, 'paper' | 'scale' | 'together'>
): string {
  const smallest = SCALES.at(-1)!;
  const wanted = { scale: stated.scale ?? smallest, paper: paperText(stated) };
  const larger = paper && otherPaperText(paper, stated);
  const size = {
    width: format(extent.width, 'length', units).text,
    height: format(extent.height, 'length', units).text
  };
  if (larger !== null && scale !== null) return t('sheet.unfit.both', { ...wanted, larger, smaller: scale });
  if (scale !== null) return t('sheet.unfit.scale', { scale: wanted.scale, smaller: scale });
  if (larger !== null)
    return stated.scale === null
      ? t('sheet.unfit.neitherHere', { ...size, ...wanted, larger })
      : t('sheet.unfit.paper', { ...wanted, larger });
  return together
    ? t('sheet.unfit.together', {
        scale: wanted.scale,
        larger: otherPaperText(together, stated),
        smaller: together.scale
      })
    : t('sheet.unfit.neither', { ...size, paper: wanted.paper, scale: smallest });
}
