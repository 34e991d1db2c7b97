/** The units that a drawing may say it is in, and what is asked of one that says none. */
import { FOOT, INCH } from '#units/constants';

/** As a person chooses them, in metres. */
export const DRAWING_UNITS = { m: 1, cm: 0.01, mm: 0.001, ft: FOOT, in: INCH } as const;
export type DrawingUnit = keyof typeof DRAWING_UNITS;

/**
 * Metres of one unit by the header's $INSUNITS, after the published reference of the format; 0 and what is unknown is no
 * unit. The feet, inches, yards and miles of the survey are 1200/3937 of a metre to the foot.
 */
const SURVEY_FOOT = 1200 / 3937;
const METRES: Readonly<Record<number, number>> = {
  1: INCH,
  2: FOOT,
  3: 5280 * FOOT,
  4: 0.001,
  5: 0.01,
  6: 1,
  7: 1_000,
  8: INCH / 1e6,
  9: INCH / 1_000,
  10: 3 * FOOT,
  13: 1e-6,
  14: 0.1,
  15: 10,
  16: 100,
  21: SURVEY_FOOT,
  22: SURVEY_FOOT / 12,
  23: 3 * SURVEY_FOOT,
  24: 5280 * SURVEY_FOOT
};

export const metresOf = (insUnits: number): number | null => METRES[insUnits] ?? null;

/** The one that a person could have chosen; null for a unit that is none of these. */
export const unitOf = (metres: number): DrawingUnit | null =>
  (Object.keys(DRAWING_UNITS) as DrawingUnit[]).find((unit) => DRAWING_UNITS[unit] === metres) ?? null;
