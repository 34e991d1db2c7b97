/** Numbers in what is said, with what they are. */
import type { ToldAmount, ToldValue } from '../fault-finding/results';

const of =
  (kind: ToldAmount['kind']) =>
  (value: number): ToldValue => ({ value, kind });

export const ohms = of('resistance');
export const insulation = of('insulation');
export const henries = of('inductance');
export const hertz = of('frequency');
export const ratio = of('ratio');
export const metres = of('length');
export const seconds = of('time');
export const count = of('count');

/** "1.3 times": two significant digits say enough. */
export const times = (value: number): ToldValue => of('plain')(Number(value.toPrecision(2)));
