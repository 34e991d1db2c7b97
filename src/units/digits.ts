import { decimalSign, type DecimalSign } from '#i18n/locale';

/** Below and from these on, exponents read better than rows of noughts. */
const SMALLEST_WRITTEN_OUT = 1e-6;
const LARGEST_WRITTEN_OUT = 1e15;

/**
 * A finite number with so many significant digits, trailing noughts kept so that columns line up: 0.032 with
 * three is 0.0320. Digits before the decimal point are never replaced by noughts: 12345 stays 12345.
 */
export function significant(value: number, digits: number): string {
  const rounded = Number(value.toPrecision(digits));
  if (rounded === 0) return '0';
  const size = Math.abs(rounded);
  if (size < SMALLEST_WRITTEN_OUT || size >= LARGEST_WRITTEN_OUT) return value.toExponential(digits - 1);
  const exponent = Math.floor(Math.log10(size));
  return value.toFixed(Math.max(0, digits - 1 - exponent));
}

/** Significant digits: beyond them a figure has only what binary fractions left. And where they are all before the point. */
const MEANT = 12;
const ALL_BEFORE_POINT = 1e9;

/** So many decimals; a half goes away from nought, also where its binary fraction lies a hair below: 17.955 is 17.96. */
export function rounded(value: number, places: number): string {
  if (Math.abs(value) >= ALL_BEFORE_POINT) return value.toFixed(places);
  return (Number(value.toPrecision(MEANT)) * (1 + Number.EPSILON)).toFixed(places);
}

/** A finite number with at least and at most so many decimals; a rounded-away minus is dropped. */
export function decimals(value: number, least: number, most: number): string {
  if (Math.abs(value) >= LARGEST_WRITTEN_OUT) return String(value);
  const fixed = rounded(value, most);
  const removable = most - least;
  const zeros = /0*$/.exec(fixed.includes('.') ? fixed : '')?.[0].length ?? 0;
  const kept = fixed.slice(0, fixed.length - Math.min(zeros, removable)).replace(/\.$/, '');
  return Number(kept) === 0 ? kept.replace('-', '') : kept;
}

/** Hyphens become minus signs, which are as wide as a digit's plus; the dot becomes the reader's decimal sign. */
export function typeset(number: string, sign: DecimalSign = decimalSign()): string {
  return number.replace('.', sign).replace(/^-|(?<=e)-/g, '−');
}

/** The same for a terminal: hyphens stay. */
export const typed = (number: string): string => number.replace('.', decimalSign());

/** So many decimals, as people read them. */
export const fixed = (value: number, decimals: number): string => typeset(rounded(value, decimals));

/** So many significant digits, as people read them. */
export const figures = (value: number, digits: number): string => typeset(value.toPrecision(digits));

/** A number with whatever digits it has, as people read it. */
export const plain = (value: number): string => typeset(String(value));
