import type { DisplayUnits } from '#plan/schema';
import { format } from '#units/format';

/** A round figure, as on an axis: no noughts behind it. */
export const levelText = (units: DisplayUnits, level: number): string => {
  const percent = Number((100 * level).toPrecision(3));
  const digits = percent.toExponential().replace(/e.*$/, '').replace(/\D/g, '').length;
  return format(level, 'ratio', units, { digits }).text;
};

export const thresholdText = (units: DisplayUnits, threshold: number): string =>
  format(threshold, 'ratio', units, { digits: 2 }).text;
