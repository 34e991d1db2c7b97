/** The title block at the foot of every page: who, what, when, and at which scale. Millimetres. */
import { t } from '#i18n/message';
import type { Point, Site } from '#plan/schema';
import { line, type Drawing } from '#scenes/drawing';
import { clean } from '../text/clean';
import { INK, LINE, SOFT, TYPE } from './look';
import { widthOf } from '#scenes/paper-type';
import { wrapped } from '../text/wrap';
import { written, writtenWithin } from './writing';

const ROW = 9;
const PADDING = 1.4;
export const TITLE_BLOCK_HEIGHT = 2 * ROW;

export interface About {
  readonly site: Site;
  /** What is on the page. */
  readonly title: string;
  readonly number: number;
  readonly count: number;
  /** Empty for a page without a plan. */
  readonly scale: string;
}

export interface TitleField {
  readonly label: string;
  readonly value: string;
  /** Of the row. */
  readonly share: number;
  readonly bold?: boolean;
}

function rowsOf({ site, title, number, count, scale }: About): readonly (readonly TitleField[])[] {
  const { sheet = {} } = site;
  return [
    [
      { label: t('sheet.site'), value: site.name, share: 5, bold: true },
      { label: t('sheet.client'), value: sheet.client ?? '', share: 3 },
      { label: t('sheet.scale'), value: scale === '' ? t('sheet.noScale') : scale, share: 3 },
      { label: t('sheet.units'), value: t(`sheet.units.${site.displayUnits}`), share: 2.6 }
    ],
    [
      { label: t('sheet.content'), value: title, share: 3.4, bold: true },
      { label: t('sheet.drawnBy'), value: sheet.drawnBy ?? '', share: 2 },
      { label: t('sheet.checkedBy'), value: sheet.checkedBy ?? '', share: 2 },
      { label: t('sheet.date'), value: sheet.date ?? '', share: 1.8 },
      { label: t('sheet.number'), value: sheet.number ?? '', share: 1.6 },
      { label: t('sheet.revision'), value: sheet.revision ?? '', share: 1.2 },
      { label: t('sheet.page'), value: t('sheet.pageOf', { number, count }), share: 1.5 }
    ]
  ];
}

function fieldDrawings({ label, value, bold }: TitleField, [x, y]: Point, width: number): Drawing[] {
  const room = width - 2 * PADDING;
  return [
    ...writtenWithin(label, [x + PADDING, y + 2.4], room, { size: TYPE.small, colour: SOFT }),
    ...valueDrawings(clean(value), [x + PADDING, y], room, bold ?? false)
  ];
}

/** One line, or two of small type for what is too long for it. */
function valueDrawings(value: string, [x, y]: Point, room: number, bold: boolean): Drawing[] {
  const hand = { size: TYPE.value, bold };
  if (widthOf(value.slice(0, 400), hand) <= room) return writtenWithin(value, [x, y + 6.2], room, hand);
  const lines = wrapped(value, room, { size: TYPE.small, bold }, 2);
  return lines.map((text, k) => written(text, [x, y + 4.9 + 2.5 * k], { size: TYPE.small, bold }));
}

/** `top`: of the block, which reaches over the width of the frame. */
export const titleBlock = (about: About, left: number, top: number, width: number): Drawing[] =>
  titleRows(rowsOf(about), left, top, width);

/** Two rows of fields, as high as a title block. */
export function titleRows(
  rows: readonly (readonly TitleField[])[],
  left: number,
  top: number,
  width: number
): Drawing[] {
  const thin = { colour: INK, width: LINE.normal };
  return rows.flatMap((fields, row) => {
    const y = top + row * ROW;
    const unit = width / fields.reduce((sum, { share }) => sum + share, 0);
    let x = left;
    const cells = fields.flatMap((field, at): Drawing[] => {
      const from = x;
      x += field.share * unit;
      const side = at === 0 ? [] : [line([[from, y], [from, y + ROW]], thin)]; // prettier-ignore
      return [...side, ...fieldDrawings(field, [from, y], field.share * unit)];
    });
    return [line([[left, y], [left + width, y]], thin), ...cells]; // prettier-ignore
  });
}
