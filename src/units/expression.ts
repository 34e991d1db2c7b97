import { t } from '#i18n/message';
import { negated, product, quotient, sum, withUnit, type Amount } from './amount';
import { joinInches, takesInches } from './feet-and-inches';
import type { QuantityKind } from './kind';
import { tokenise, type Token } from './lexer';
import { quoted, Refusal } from './refusal';
import { TokenReader } from './token-reader';

/**
 * Reads a sum by recursive descent: terms joined by + and -, factors by * and /, signs, parentheses, and a
 * number or a parenthesis with a unit behind it. Throws a Refusal for everything else.
 */
export function readExpression(text: string, kind: QuantityKind): Amount {
  const reader = new TokenReader(tokenise(text, kind));
  const result = readSum(reader, kind);
  const left = reader.peek();
  if (left !== undefined) throw new Refusal(leftOver(left));
  return result;
}

function readSum(reader: TokenReader, kind: QuantityKind): Amount {
  const terms = [readTerm(reader, kind)];
  for (let sign = reader.takeSign('+', '-'); sign !== undefined; sign = reader.takeSign('+', '-')) {
    const term = readTerm(reader, kind);
    terms.push(sign === '-' ? negated(term) : term);
  }
  return sum(terms);
}

function readTerm(reader: TokenReader, kind: QuantityKind): Amount {
  let result = readFactor(reader, kind);
  for (let sign = reader.takeSign('*', '/'); sign !== undefined; sign = reader.takeSign('*', '/')) {
    const factor = readFactor(reader, kind);
    result = sign === '*' ? product(result, factor, kind) : quotient(result, factor, kind);
  }
  return result;
}

function readFactor(reader: TokenReader, kind: QuantityKind): Amount {
  const sign = reader.takeSign('+', '-');
  if (sign === '-') return negated(readFactor(reader, kind));
  if (sign === '+') return readFactor(reader, kind);
  if (reader.takeSign('(') !== undefined) return readParenthesis(reader, kind);
  const number = reader.peek();
  if (number?.type !== 'number') throw new Refusal(missingNumber(number));
  reader.advance();
  return readUnit(number.value, reader);
}

function readParenthesis(reader: TokenReader, kind: QuantityKind): Amount {
  const inner = readSum(reader, kind);
  if (reader.takeSign(')') === undefined) {
    const found = reader.peek();
    throw new Refusal(found === undefined ? t('refusal.noParenthesis') : leftOver(found));
  }
  return inner.units.length === 0
    ? readUnit(inner.value, reader)
    : { value: inner.value, units: inner.units };
}

function readUnit(value: number, reader: TokenReader): Amount {
  const token = reader.peek();
  if (token?.type !== 'unit') return { value, units: [] };
  reader.advance();
  const amount = withUnit(value, token.unit);
  return takesInches(token) ? joinInches(amount, token, reader) : amount;
}

function missingNumber(found: Token | undefined): string {
  return found === undefined
    ? t('refusal.noNumberAtEnd')
    : t('refusal.noNumberBefore', { text: quoted(found.text) });
}

function leftOver(token: Token): string {
  const text = quoted(token.text);
  if (token.type === 'sign') return t('refusal.unexpected', { text });
  return token.type === 'unit' ? t('refusal.secondUnit', { text }) : t('refusal.unrelated', { text });
}
