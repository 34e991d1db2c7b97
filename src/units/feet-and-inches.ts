import { t } from '#i18n/message';
import { withUnit, sum, type Amount } from './amount';
import type { Token } from './lexer';
import { Refusal } from './refusal';
import type { TokenReader } from './token-reader';
import { FOOT_UNIT, INCH_UNIT } from './unit';

interface Inches {
  readonly value: number;
  readonly tokens: number;
  readonly marked: boolean;
}

/**
 * Reads the inches that follow `feet`, whose unit token has just been read: 6'-6", 6'6, 6 ft 6 1/2 in. Returns
 * `feet` alone when what follows belongs to the sum. The dash of 6'-6" joins and does not subtract; where it
 * could do either, or the inches do not fit into a foot, a Refusal is thrown.
 */
export function joinInches(feet: Amount, feetToken: Token, reader: TokenReader): Amount {
  const dash = isDash(reader.peek()) ? 1 : 0;
  const inches = inchesAt(reader, dash);
  if (inches === undefined || feet.written === undefined) return feet;
  const after = reader.peek(dash + inches.tokens);
  const looseDash = dash === 1 && (reader.peek()?.spaced === true || reader.peek(1)?.spaced === true);
  if (looseDash && feetToken.text !== "'") {
    throw new Refusal(t('refusal.dash'));
  }
  if (!inches.marked && after?.type === 'sign' && '*/'.includes(after.text)) {
    throw new Refusal(t('refusal.inchesWithoutMark'));
  }
  if (inches.value >= 12) throw new Refusal(t('refusal.twelveInches'));
  if (!Number.isInteger(feet.written)) throw new Refusal(t('refusal.wholeFeet'));
  reader.advance(dash + inches.tokens);
  return sum([feet, withUnit(inches.value, INCH_UNIT)]);
}

function inchesAt(reader: TokenReader, start: number): Inches | undefined {
  const first = reader.peek(start);
  if (first?.type !== 'number') return undefined;
  const slash = reader.peek(start + 1);
  const below = reader.peek(start + 2);
  const isFraction =
    slash?.type === 'sign' && slash.text === '/' && below?.type === 'number' && first.value < below.value;
  const length = isFraction ? 3 : 1;
  const value = isFraction ? first.value / below.value : first.value;
  const unit = reader.peek(start + length);
  if (unit?.type !== 'unit') return { value, tokens: length, marked: false };
  return unit.unit === INCH_UNIT ? { value, tokens: length + 1, marked: true } : undefined;
}

function isDash(token: Token | undefined): boolean {
  return token?.type === 'sign' && token.text === '-';
}

/** Whether inches may follow this unit. */
export function takesInches(unit: Token): boolean {
  return unit.type === 'unit' && unit.unit === FOOT_UNIT;
}
