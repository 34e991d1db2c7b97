/** The title of a block, with a line beneath it. */
import { t } from '#i18n/message';
import { line } from '#scenes/drawing';
import { clean } from '../text/clean';
import type { Piece } from './block';
import { INK, LINE, TYPE } from './look';
import { writtenWithin } from './writing';

const HEIGHT = 7;

function titled(title: string, shown: string, width: number): Piece {
  return {
    height: HEIGHT,
    title,
    staysWithNext: true,
    draw: (left, top) => [
      ...writtenWithin(shown, [left, top + 2.6], width, { size: TYPE.title, bold: true }),
      line([[left, top + 5.2], [left + width, top + 5.2]], { colour: INK, width: LINE.strong }) // prettier-ignore
    ]
  };
}

export const heading = (title: string, width: number): Piece => titled(clean(title), clean(title), width);

/** Above what goes on from the column before. */
export const headingAgain = (title: string, width: number): Piece =>
  titled(clean(title), clean(t('sheet.continued', { title: clean(title) })), width);
