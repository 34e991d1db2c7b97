/**
 * What a number stands for. The kind decides which units may be typed, which one a bare number has, and how
 * the number is shown. `smallLength` is for pitches, slot widths and depths, where metres and feet read badly.
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
  'time',
  'ratio',
  'temperature',
  'volume',
  'speed',
  'plain'
] as const;

export type QuantityKind = (typeof QUANTITY_KINDS)[number];

/** Changes what is shown and what a bare number means, never what is stored. */
export type UnitSystem = 'metric' | 'imperial';
