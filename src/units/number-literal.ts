import { quoted, Refusal } from './refusal';

const PLAIN = /^(\d+\.?\d*|\.\d+)$/;
const DECIMAL_COMMA = /^\d*,\d+$/;
const COMMA_OR_GROUP = /^\d*,\d{3}$/;
const GROUPED_BY_COMMA = /^\d{1,3}(,\d{3})+\.\d+$|^\d{1,3}(,\d{3}){2,}$/;
const GROUPED_BY_DOT = /^\d{1,3}(\.\d{3})+,\d+$|^\d{1,3}(\.\d{3}){2,}$/;

/**
 * Reads digits with dots and commas, and an exponent if there is one. A single dot is always the decimal sign.
 * A single comma is, too, unless exactly three digits follow it: half of the world reads 1,234 as a thousand and
 * the other half as one and a bit, so it is refused. Where both signs stand, or one of them more than once, only
 * one reading is left. Throws a Refusal.
 */
export function readNumber(text: string): number {
  const [digits = '', exponent] = text.split(/e/i);
  const value = Number(exponent === undefined ? withDot(digits) : `${withDot(digits)}e${exponent}`);
  if (!Number.isFinite(value)) throw new Refusal(`${quoted(text)} is too large`);
  if (value === 0 && /[1-9]/.test(digits)) throw new Refusal(`${quoted(text)} is too small`);
  return value;
}

function withDot(digits: string): string {
  if (PLAIN.test(digits)) return digits;
  if (COMMA_OR_GROUP.test(digits)) {
    const asDecimal = digits.replace(',', '.').replace(/^\./, '0.');
    const asWhole = digits.replace(',', '');
    throw new Refusal(
      `${quoted(digits)} can be read in two ways; write ${asDecimal} with a dot, or ${asWhole} without a comma`
    );
  }
  if (DECIMAL_COMMA.test(digits)) return digits.replace(',', '.');
  if (GROUPED_BY_COMMA.test(digits)) return digits.replaceAll(',', '');
  if (GROUPED_BY_DOT.test(digits)) return digits.replaceAll('.', '').replace(',', '.');
  throw new Refusal(`${quoted(digits)} is not a number`);
}
