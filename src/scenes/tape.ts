/** Lengths on a sheet, as fine as a tape tells them: a centimetre, or half an inch. */
import type { DisplayUnits } from '#plan/schema';
import { INCH } from '#units/constants';
import { format } from '#units/format';

const STEP: Readonly<Record<DisplayUnits, number>> = { metric: 0.01, imperial: INCH / 2 };

export const lengthText = (metres: number, units: DisplayUnits): string =>
  format(Math.round(metres / STEP[units]) * STEP[units], 'length', units).text;
