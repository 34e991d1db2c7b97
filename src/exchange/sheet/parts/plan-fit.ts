/** At which scale, and on which paper, a plan finds room. */
import { type Paper, type SheetScale, type StatedSheet, paperSize } from '#plan/catalogue/sheet';
import { SCALES } from '#plan/schema/sheet';
import { contentArea, type Area } from '../layout/frame';

/** Metres. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

export type LaidPaper = Pick<StatedSheet, 'paper' | 'orientation'>;

/** Millimetres, free on every side of what is drawn: labels and dimensions reach beyond it. */
const AROUND = 8;

/** Millimetres that the plan takes. */
export const needed = ({ width, height }: Extent, scale: number): Extent => ({
  width: (width * 1000) / scale + 2 * AROUND,
  height: (height * 1000) / scale + 2 * AROUND
});

function fitsIn(extent: Extent, scale: number, area: Area): boolean {
  const { width, height } = needed(extent, scale);
  return width <= area.width + 1e-9 && height <= area.height + 1e-9;
}

export const fitsOn = (extent: Extent, scale: number, paper: LaidPaper): boolean =>
  fitsIn(extent, scale, contentArea(paperSize(paper)));

/** The largest at which it fits; undefined where none does. */
export const largestScale = (extent: Extent, paper: LaidPaper): SheetScale | undefined =>
  SCALES.find((scale) => fitsOn(extent, scale, paper));

const FAMILIES: Readonly<Record<Paper, readonly Paper[]>> = {
  A4: ['A4', 'A3', 'letter', 'tabloid'],
  A3: ['A4', 'A3', 'letter', 'tabloid'],
  letter: ['letter', 'tabloid', 'A4', 'A3'],
  tabloid: ['letter', 'tabloid', 'A4', 'A3']
};

/**
 * The smallest paper on which it fits at that scale: of the family of the one that is in use before those of the other, the
 * way it lies before the other way. Undefined where none is large enough.
 */
export function smallestPaper(
  extent: Extent,
  scale: number,
  { paper, orientation }: LaidPaper
): LaidPaper | undefined {
  const other = orientation === 'portrait' ? 'landscape' : 'portrait';
  return FAMILIES[paper]
    .flatMap((each): LaidPaper[] => [
      { paper: each, orientation },
      { paper: each, orientation: other }
    ])
    .find((each) => fitsOn(extent, scale, each));
}
