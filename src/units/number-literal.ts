import { decimalSign, type DecimalSign } from '#i18n/locale';
import { t } from '#i18n/message';
import { quoted, Refusal } from './refusal';

/** As written where the dot is the decimal sign. */
const OWN = /^(\d+\.?\d*|\.\d+)$/;
const OTHER = /^\d*,\d+$/;
const OTHER_OR_GROUP = /^\d*,\d{3}$/;
const GROUPED_BY_OTHER = /^\d{1,3}(,\d{3})+\.\d+$|^\d{1,3}(,\d{3}){2,}$/;
const GROUPED_BY_OWN = /^\d{1,3}(\.\d{3})+,\d+$|^\d{1,3}(\.\d{3}){2,}$/;

const swapped = (digits: string): string => digits.replace(/[.,]/g, (sign) => (sign === '.' ? ',' : '.'));

/**
 * Reads digits with dots and commas, and an exponent if there is one. A single decimal sign of the language always is
 * one. A single one of the other kind is, too, unless exactly three digits follow it: half of the world reads 1,234 as a
 * thousand and the other half as one and a bit, so it is refused and both readings are offered. Where both signs stand,
 * or one of them more than once, only one reading is left. Throws a Refusal.
 */
export function readNumber(text: string, sign: DecimalSign = decimalSign()): number {
  const [digits = '', exponent] = text.split(/e/i);
  const written = withDot(digits, sign);
  const value = Number(exponent === undefined ? written : `${written}e${exponent}`);
  if (!Number.isFinite(value)) throw new Refusal(t('refusal.tooLarge', { text: quoted(text) }));
  if (value === 0 && /[1-9]/.test(digits)) throw new Refusal(t('refusal.tooSmall', { text: quoted(text) }));
  return value;
}

function withDot(digits: string, sign: DecimalSign): string {
  const asDotted = sign === '.' ? digits : swapped(digits);
  if (OWN.test(asDotted)) return asDotted;
  if (OTHER_OR_GROUP.test(asDotted)) throw new Refusal(inTwoWays(digits, sign));
  if (OTHER.test(asDotted)) return asDotted.replace(',', '.');
  if (GROUPED_BY_OTHER.test(asDotted)) return asDotted.replaceAll(',', '');
  if (GROUPED_BY_OWN.test(asDotted)) return asDotted.replaceAll('.', '').replace(',', '.');
  throw new Refusal(t('refusal.noNumber', { text: quoted(digits) }));
}

function inTwoWays(digits: string, sign: DecimalSign): string {
  const decimal = digits.replace(/[.,]/, sign).replace(/^(?=[.,])/, '0');
  const whole = digits.replace(/[.,]/, '');
  return t(sign === '.' ? 'refusal.commaOrGroup' : 'refusal.dotOrGroup', {
    text: quoted(digits),
    decimal,
    whole
  });
}
