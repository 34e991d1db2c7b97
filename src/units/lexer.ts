import { t } from '#i18n/message';
import type { QuantityKind } from './kind';
import { readNumber } from './number-literal';
import { notAUnit, quoted, Refusal } from './refusal';
import { findUnit, type Unit } from './unit';

/** `text` is as typed after normalising; `spaced` says that a space stands before the token. */
export type Token = { readonly text: string; readonly spaced: boolean } & (
  | { readonly type: 'number'; readonly value: number }
  | { readonly type: 'unit'; readonly unit: Unit }
  | { readonly type: 'sign' }
);

const NUMBER = /[\d.,]+(?:e[+-]?\d+)?/iy;
const VULGAR_ALONE = /[½⅓⅔¼¾⅛⅜⅝⅞]/y;
const MIXED = /(\d+)(?: (\d+) ?\/ ?(\d+)(?![\d.,])| ?([½⅓⅔¼¾⅛⅜⅝⅞]))/y;
const HYPHENED = /\d+-(?:(\d+)\/(\d+)(?![\d.,])|[½⅓⅔¼¾⅛⅜⅝⅞])/y;
/** The only units with a stroke in them are speeds. */
const WORD = /['"%]|\p{L}+\/[hsHS](?!\p{L})|[\p{L}°³]+(?:\.(?!\d))?/uy;

/** Cuts normalised text into tokens. Throws a Refusal that names what is not understood. */
export function tokenise(text: string, kind: QuantityKind): Token[] {
  const tokens: Token[] = [];
  let position = 0;
  while (position < text.length) {
    const spaced = text[position] === ' ';
    if (spaced) position += 1;
    const token = tokenAt(text, position, spaced, kind);
    tokens.push(token);
    position += token.text.length;
  }
  return tokens;
}

function tokenAt(text: string, position: number, spaced: boolean, kind: QuantityKind): Token {
  if (kind === 'length' || kind === 'smallLength') refuseHyphenedFraction(text, position);
  const mixed = match(MIXED, text, position);
  if (mixed !== null && isProper(mixed[2], mixed[3])) {
    const part = mixed[4] === undefined ? Number(mixed[2]) / Number(mixed[3]) : vulgarFraction(mixed[4]);
    return { type: 'number', text: mixed[0], spaced, value: Number(mixed[1]) + part };
  }
  const number = match(NUMBER, text, position);
  if (number !== null) return { type: 'number', text: number[0], spaced, value: readNumber(number[0]) };
  const vulgar = match(VULGAR_ALONE, text, position);
  if (vulgar !== null) return { type: 'number', text: vulgar[0], spaced, value: vulgarFraction(vulgar[0]) };
  const word = match(WORD, text, position);
  if (word !== null) return unitToken(word[0], spaced, kind);
  const sign = String.fromCodePoint(text.codePointAt(position) ?? 0);
  if ('+-*/()'.includes(sign)) return { type: 'sign', text: sign, spaced };
  throw new Refusal(t('refusal.sign', { text: quoted(sign) }));
}

function unitToken(word: string, spaced: boolean, kind: QuantityKind): Token {
  const spelling = word.replace(/\.$/, '');
  const unit = findUnit(kind, spelling);
  if (unit === undefined) throw new Refusal(notAUnit(kind, spelling));
  return { type: 'unit', text: word, spaced, unit };
}

/** Unicode's compatibility form of ½ is 1, a fraction slash, 2. */
function vulgarFraction(sign: string): number {
  const [numerator, denominator] = sign.normalize('NFKD').split('\u2044');
  return Number(numerator) / Number(denominator);
}

/** On drawings 6-1/2 is six and a half, in sums it is five and a half. */
function refuseHyphenedFraction(text: string, position: number): void {
  const found = match(HYPHENED, text, position);
  if (found === null || !isProper(found[1], found[2])) return;
  const joined = found[0].replace('-', ' ');
  const apart = found[0].replace('-', ' - ');
  throw new Refusal(t('refusal.hyphen', { text: quoted(found[0]), joined, apart }));
}

/** Also true for the ready-made fractions, which have no parts. */
function isProper(numerator: string | undefined, denominator: string | undefined): boolean {
  return numerator === undefined || Number(numerator) < Number(denominator);
}

function match(pattern: RegExp, text: string, position: number): RegExpExecArray | null {
  pattern.lastIndex = position;
  return pattern.exec(text);
}
