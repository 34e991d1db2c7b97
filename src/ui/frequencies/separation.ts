import type { FormatOptions } from '#units/format';

/** In hertz where kilohertz would begin with a nought. */
export const separationOptions = (hertz: number): FormatOptions => ({
  digits: 3,
  unit: hertz > 0 && hertz < 1_000 ? 'Hz' : 'kHz'
});
