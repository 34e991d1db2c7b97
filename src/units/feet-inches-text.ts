import { INCH } from './constants';

/**
 * Metres as feet and inches: 6'-6", 6'-6 1/2", 3/4". The inches have a fraction down to 1/16 where that is
 * within `tolerance` metres of the value, and otherwise `decimals` decimals.
 */
export function feetInchesText(metres: number, tolerance: number, decimals: number): string {
  const inches = Math.abs(metres) / INCH;
  const sixteenths = Math.round(inches * 16);
  const isFraction = Math.abs(sixteenths / 16 - inches) * INCH <= tolerance;
  const parts = isFraction ? 16 : 10 ** decimals;
  const total = Math.round(inches * parts);
  const feet = Math.floor(total / (12 * parts));
  const rest = total - feet * 12 * parts;
  const written = isFraction ? withFraction(rest, feet > 0) : String(rest / parts);
  const sign = metres < 0 && total > 0 ? '-' : '';
  return feet > 0 ? `${sign}${feet}'-${written}"` : `${sign}${written}"`;
}

function withFraction(sixteenths: number, keepZero: boolean): string {
  const whole = Math.floor(sixteenths / 16);
  let numerator = sixteenths % 16;
  let denominator = 16;
  if (numerator === 0) return String(whole);
  while (numerator % 2 === 0) {
    numerator /= 2;
    denominator /= 2;
  }
  return whole > 0 || keepZero ? `${whole} ${numerator}/${denominator}` : `${numerator}/${denominator}`;
}
