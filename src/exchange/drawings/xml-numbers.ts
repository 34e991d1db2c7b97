/** Numbers as drawings for others have them. */

/** Ten-thousandths: of a millimetre, thinner than any line. */
const FINENESS = 1e4;

/** Without an exponent and without a minus sign before nothing. Throws RangeError for what is no finite number. */
export function plainNumber(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`not a length: ${value}`);
  return String(Math.round(value * FINENESS) / FINENESS || 0);
}
