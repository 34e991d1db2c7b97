/** Texts that may look like formulas, and numbers with whichever decimal sign the file has. */
import { decimalSign, type DecimalSign } from '#i18n/locale';
import { defused } from '../../tables/csv';

const LEADING = /^'+/;

/** Whether a spreadsheet would run it, with or without apostrophes in front. */
const isRunnable = (text: string): boolean => {
  const bare = text.replace(LEADING, '');
  return defused(bare) !== bare;
};

/** One apostrophe more in front of what would be run: so that one less, on the way back, is exact for every text. */
export const armoured = (text: string): string => (isRunnable(text) ? `'${text}` : text);
export const bared = (text: string): string =>
  text.startsWith("'") && isRunnable(text) ? text.slice(1) : text;

const COMMA = /\d,\d/;
const DOT = /\d\.\d/;

/** The decimal sign of a file: a comma needs cells that are apart by something else; null where both are about. */
export function signOf(delimiter: string, cells: readonly string[]): DecimalSign | null {
  const hasComma = cells.some((cell) => COMMA.test(cell));
  const hasDot = cells.some((cell) => DOT.test(cell));
  if (delimiter === ',') return hasComma ? null : '.';
  if (hasComma && hasDot) return null;
  return hasComma ? ',' : '.';
}

/** A number in the file's sign, in that of the language that is spoken, which the reader of fields goes by. */
export function inSpokenSign(cell: string, sign: DecimalSign | null): string {
  const spoken = decimalSign();
  return sign === null || sign === spoken ? cell : cell.replaceAll(sign, spoken);
}
