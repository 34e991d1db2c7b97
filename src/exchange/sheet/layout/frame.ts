/** Frame, strip of bars and title block of a page, and what is left for its content. Millimetres. */
import { boxAt, line, type Drawing } from '#scenes/drawing';
import { BARS_HEIGHT, bars } from './bars';
import { INK, LINE, MARGIN } from './look';
import { TITLE_BLOCK_HEIGHT, titleBlock, type About } from './title-block';

export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Free between the frame and what stands in it. */
export const INSET = 4;

export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

const footOf = ({ height }: PaperSize): number => height - MARGIN - TITLE_BLOCK_HEIGHT - BARS_HEIGHT;

/** Inside the frame, above the bars. */
export const contentArea = (paper: PaperSize): Area => ({
  left: MARGIN,
  top: MARGIN,
  width: paper.width - 2 * MARGIN,
  height: footOf(paper) - MARGIN
});

/** `scale`: of the page's plan, null without one. */
export function frame(paper: PaperSize, about: About, scale: number | null): Drawing[] {
  const { width, height } = paper;
  const inner = width - 2 * MARGIN;
  const foot = footOf(paper);
  const plan = scale === null ? null : { scale, units: about.site.displayUnits };
  return [
    {
      kind: 'line',
      points: boxAt([width / 2, height / 2], inner / 2, height / 2 - MARGIN),
      closed: true,
      stroke: { colour: INK, width: LINE.frame }
    },
    line([[MARGIN, foot], [MARGIN + inner, foot]], { colour: INK, width: LINE.normal }), // prettier-ignore
    ...bars(plan, MARGIN, foot, inner),
    ...titleBlock(about, MARGIN, foot + BARS_HEIGHT, inner)
  ];
}
