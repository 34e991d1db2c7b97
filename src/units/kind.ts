/**
 * What a number stands for. The kind decides which units may be typed, which one a bare number has, and how
 * the number is shown. `smallLength` is for pitches, slot widths and depths, where metres and feet read badly; `duration` for
 * work, which is told in minutes where a detector's times are told in seconds; `insulation` for a resistance of which a bare
 * number is so many megohms.
 */
export const QUANTITY_KINDS = [
  'length',
  'smallLength',
  'angle',
  'count',
  'frequency',
  'inductance',
  'capacitance',
  'resistance',
  'insulation',
  'time',
  'duration',
  'ratio',
  'temperature',
  'volume',
  'speed',
  'pace',
  'plain'
] as const;

export type QuantityKind = (typeof QUANTITY_KINDS)[number];

/** Changes what is shown and what a bare number means, never what is stored. */
export type UnitSystem = 'metric' | 'imperial';
