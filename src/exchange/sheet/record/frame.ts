/** Frame of a page of the record or of the form: what to mind stands on every page, above the title block. Millimetres. */
import { t } from '#i18n/message';
import type { Site } from '#plan/schema';
import { boxAt, line, type Drawing } from '#scenes/drawing';
import { INSET, type Area, type PaperSize } from '../layout/frame';
import { INK, LINE, MARGIN, TYPE } from '../layout/look';
import { TITLE_BLOCK_HEIGHT, titleRows, type TitleField } from '../layout/title-block';
import { paragraph } from '../layout/writing';

/** Above and below what to mind. */
const ROOM = 1.4;

export interface RecordAbout {
  readonly site: Site;
  /** What is on the page. */
  readonly title: string;
  readonly number: number;
  readonly count: number;
  /** To be filled in by hand. */
  readonly isForm: boolean;
}

const safety = (width: number) =>
  paragraph(t('record.safety'), width - 2 * INSET, { size: TYPE.small, colour: INK }, 4);

const footOf = ({ width, height }: PaperSize): number =>
  height - MARGIN - TITLE_BLOCK_HEIGHT - safety(width - 2 * MARGIN).height - 2 * ROOM;

/** Inside the frame, above what to mind. */
export const contentArea = (paper: PaperSize): Area => ({
  left: MARGIN,
  top: MARGIN,
  width: paper.width - 2 * MARGIN,
  height: footOf(paper) - MARGIN
});

function fieldsOf({ site, title, number, count, isForm }: RecordAbout): readonly (readonly TitleField[])[] {
  const { date, testedBy } = site.fieldCheck?.record ?? {};
  const page = { label: t('sheet.page'), value: t('sheet.pageOf', { number, count }), share: 1.5 };
  const empty = (label: string, share: number): TitleField => ({ label, value: '', share });
  return [
    [
      { label: t('sheet.site'), value: site.name, share: 5, bold: true },
      { label: t('sheet.client'), value: site.sheet?.client ?? '', share: 3 },
      { label: t('sheet.number'), value: site.sheet?.number ?? '', share: 2 }
    ],
    isForm
      ? [
          { label: t('sheet.content'), value: title, share: 3, bold: true },
          empty(t('record.date'), 2),
          empty(t('record.time'), 1.5),
          empty(t('record.initials'), 1.5),
          page
        ]
      : [
          { label: t('sheet.content'), value: title, share: 4, bold: true },
          { label: t('record.date'), value: date ?? '', share: 2 },
          { label: t('record.testedBy'), value: testedBy ?? '', share: 2.5 },
          page
        ]
  ];
}

export function frame(paper: PaperSize, about: RecordAbout): Drawing[] {
  const { width, height } = paper;
  const inner = width - 2 * MARGIN;
  const foot = footOf(paper);
  const words = safety(inner);
  return [
    {
      kind: 'line',
      points: boxAt([width / 2, height / 2], inner / 2, height / 2 - MARGIN),
      closed: true,
      stroke: { colour: INK, width: LINE.frame }
    },
    line([[MARGIN, foot], [MARGIN + inner, foot]], { colour: INK, width: LINE.normal }), // prettier-ignore
    ...words.draw([MARGIN + INSET, foot + ROOM]),
    ...titleRows(fieldsOf(about), MARGIN, foot + words.height + 2 * ROOM, inner)
  ];
}
